/** Shares out the things of a stretch of talk among the places said near them, for a speaker of one habit, at the least cost. */
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import type { Phrases } from '../3-phrases/find-phrases.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import { type Mark, markOf } from './mark-places.ts';
import type { Sentence } from './sentence.ts';

/** What an arrangement costs; fitted on talks with known places, and only the order of size matters. */
const costs = {
  sentence: 0.17,
  breath: 1.7,
  breathLater: 0.2,
  lead: 0.4,
  breathShared: 0.4,
  toldNext: 0.4,
  fits: 0.4,
  misfits: 0.4,
  shared: 0.84,
  sharedWanting: 0.8,
  unusedPlace: 1.3,
  unusedBeside: 1.2,
  calledOut: 0.8,
  bothWays: 0.3,
  unplaced: 1.8,
  split: 0.2,
  told: 1.5,
  chat: 0.5,
  talk: 1.6,
  talkBreath: 0.15,
} as const;
/** So many things at most are left without a place before one is given the place before them. */
const MOST_LEFT = 6;
/** A place this many sentences away is not waited for. */
export const REACH_SENTENCES = 4;

/** "That's a wye.": what was placed a moment ago. */
const pointsBack = /^(okay |and |so |yeah |yep |oh )*(that|it|this) ('s|is|looks|would|might|could|may|must|has to) /;
const looksOn = /^(now|next|then|okay|alright|coming up on|up to|we 're at|we are at|i 'm at|at)\b/;

const turns = /^(zero|next-run|same-access|pull-back|summary)$/;
/** So near an opening's name, in sentences, the way the camera takes is said where it goes in there. */
const HEADING_SENTENCES = 1;

/** Whether the count, the way or the run changes here. "Tee on the left. Shower." names an opening and changes nothing. */
function isBoundary(sentences: readonly Sentence[], sentence: Sentence): boolean {
  const cues = phrasesOf(sentence.phrases, 'camera');
  if (cues.some((phrase) => turns.test(phrase.cue))) return true;
  return (
    cues.some((phrase) => phrase.cue === 'access') &&
    sentences
      .slice(Math.max(0, sentence.index - HEADING_SENTENCES), sentence.index + HEADING_SENTENCES + 1)
      .some((near) => near.phrases.some((phrase) => phrase.family === 'heading'))
  );
}

export interface Choice {
  readonly cost: number;
  /** How many things of each gap go to the place before it; the rest go to the one after. */
  readonly splits: readonly number[];
  /** How many of the first of those are left without a place all the same. */
  readonly left: readonly number[];
}

/** A stretch of one run, as places with the things that stand between them. */
export interface Stretch {
  readonly anchors: (Mark & { sort: 'place' | 'whole' })[];
  readonly gaps: (Mark & { sort: 'thing' })[][];
}

export function stretches(sentences: readonly Sentence[], phrases: Phrases, breaths: readonly number[]): Stretch[] {
  const found: Stretch[] = [];
  let current: Stretch = { anchors: [], gaps: [[]] };
  let lastKinds: readonly KindName[] = [];
  let seen = new Set<KindName>();
  for (const sentence of sentences) {
    if (isBoundary(sentences, sentence)) {
      found.push(current);
      current = { anchors: [], gaps: [[]] };
      seen = new Set();
      continue;
    }
    const named = phrasesOf(sentence.phrases, 'thing').map((phrase) => phrase.kind);
    const mark = markOf(sentences, sentence, phrases, current.anchors.length === 0, breaths, seen);
    for (const kind of named) seen.add(kind);
    // "Is it a wye? It's a wye.": asked, and then found.
    if (mark?.sort !== 'thing' && named.length > 0 && !sentence.isQuestion) lastKinds = named;
    if (mark === null) continue;
    if (mark.sort === 'thing') {
      // "Back pitch here. Eighteen to twenty two. The water runs the wrong way.": said twice, placed once.
      const isRepeated = mark.kinds.length > 0 && mark.kinds.every((kind) => lastKinds.includes(kind));
      if (isRepeated && !/\b(another|more|again|second|next|ends?|ended|out|over|done|stops?)\b/.test(sentence.text))
        continue;
      lastKinds = mark.kinds;
      current.gaps.at(-1)!.push(mark);
    } else {
      current.anchors.push(mark);
      current.gaps.push([]);
    }
  }
  found.push(current);
  return found.filter((stretch) => stretch.anchors.some((anchor) => anchor.sort === 'place'));
}

/** What it costs this speaker to say the place before the thing, and after it. */
export interface Habit {
  readonly before: number;
  readonly after: number;
}

/** The cheapest way to share out the things of a stretch among its places, for a speaker of some habit. */
export function arrange({ anchors, gaps }: Stretch, breaths: readonly number[], habit: Habit): Choice {
  // One column for each answer to "did the place before this gap get a thing from its other side?".
  let best: (Choice | null)[] = [{ cost: 0, splits: [], left: [] }, null];
  gaps.forEach((things, index) => {
    const before = anchors[index - 1];
    const after = anchors[index];
    const next: (Choice | null)[] = [null, null];
    for (const [isUsed, choice] of best.entries()) {
      if (choice === null) continue;
      for (let split = 0; split <= things.length; split += 1) {
        if (split < things.length && before !== undefined && !canTake(things.slice(split), after)) continue;
        const ofAfter = onCost(things.slice(split), after, habit, breaths);
        const column = split < things.length && after?.sort === 'place' ? 1 : 0;
        for (let left = 0; left <= (before?.sort === 'place' ? Math.min(split, MOST_LEFT) : 0); left += 1) {
          const ofBefore = things.slice(left, split);
          const isTaken = before?.sort === 'place' && ofBefore.length > 0;
          const cost =
            choice.cost +
            ofAfter +
            backCost(ofBefore, before, habit, breaths) +
            things.slice(0, left).reduce((sum, thing) => sum + leftCost(thing), 0) +
            (isTaken && split < things.length ? costs.split : 0) +
            (isTaken && isUsed === 1 ? costs.bothWays : 0) +
            (before?.sort === 'place' && isUsed === 0 && !isTaken
              ? unusedCost(before, things.length === 0 && after !== undefined)
              : 0);
          const held = next[column];
          if (!held || cost < held.cost)
            next[column] = { cost, splits: [...choice.splits, split], left: [...choice.left, left] };
        }
      }
    }
    best = next;
  });
  return best.filter((choice) => choice !== null).reduce((a, b) => (b.cost < a.cost ? b : a));
}

/** Whether things may have the place said after them. */
const canTake = (things: Things, after: Anchor | undefined): boolean =>
  after?.sort === 'place' ||
  (after?.lead != null && after.sentence.index - things[0]!.sentence.index <= LEAD_SENTENCES);

/** "That's the patch done. Twenty six, and it's clay again.": so near before it what else a place is of stands, in sentences. */
const LEAD_SENTENCES = 2;

/** What it costs to give a thing no place: little where the next sentence names it again with one. */
const leftCost = (thing: Mark & { sort: 'thing' }): number => (thing.isToldNext ? costs.toldNext : costs.unplaced);

/** "Thirty. Thirty one. The liner is lifted.": a number right before the next one is often only called out. */
const unusedCost = (place: Mark & { sort: 'place' }, isCalledOut: boolean): number => {
  if (!place.isLone || place.mayEnd) return 0;
  if (isCalledOut && place.place.distance.toFeet === null) return costs.calledOut;
  return place.isBesideUnread ? costs.unusedBeside : costs.unusedPlace;
};

/** A stretch is told of what has a length, and a spot of what has none. */
const fitCost = (things: Things, { place }: Mark & { sort: 'place' }): number =>
  place.distance.toFeet === null
    ? 0
    : things.some((thing) => thing.kinds.some((kind) => kindTakes(kind, 'to')))
      ? -costs.fits
      : costs.misfits;

type Things = readonly (Mark & { sort: 'thing' })[];
type Anchor = Stretch['anchors'][number];

/** How many times the speaker stops for breath between two sentences, less where every sentence is a breath of its own. */
const between = (breaths: readonly number[], one: Sentence, two: Sentence): number =>
  Math.abs((breaths[two.index] ?? 0) - (breaths[one.index] ?? 0)) * tellingOf(breaths);

const tellingOf = (breaths: readonly number[]): number =>
  Math.min(1, 2 * (1 - (breaths.at(-1) ?? 0) / Math.max(1, breaths.length - 1)));

/** What it costs to give things the place said before them. */
function backCost(things: Things, anchor: Anchor | undefined, habit: Habit, breaths: readonly number[]): number {
  const [first, ...later] = things;
  if (first === undefined) return 0;
  if (anchor === undefined) return things.reduce((sum, thing) => sum + leftCost(thing), 0);
  const apart = Math.max(0, first.sentence.index - anchor.sentence.index - 1);
  if (anchor.sort === 'whole')
    return Math.min(
      leftCost(first),
      (things.some((thing) => thing.isWanting) ? costs.sharedWanting : costs.shared) +
        apart * costs.sentence +
        between(breaths, anchor.sentence, first.sentence) * costs.breathShared,
    );
  return (
    apart * costs.sentence +
    between(breaths, anchor.sentence, first.sentence) * costs.breath +
    later.reduce((sum, thing) => sum + between(breaths, first.sentence, thing.sentence), 0) * costs.breathLater +
    habit.before +
    fitCost(things, anchor) +
    (anchor.looksBack ? costs.told : 0) -
    (apart === 0 && pointsBack.test(first.sentence.text) ? costs.chat : 0)
  );
}

/** What it costs to give things the place said after them. */
function onCost(things: Things, anchor: Anchor | undefined, habit: Habit, breaths: readonly number[]): number {
  if (things.length === 0) return 0;
  const last = things.at(-1)!;
  const spreadOver = last.sentence.index - things[0]!.sentence.index;
  const isLed = anchor?.sort === 'whole' && canTake(things, anchor);
  if (anchor === undefined || (anchor.sort === 'whole' && !isLed))
    return things.filter((thing) => thing.isWanting).length * costs.unplaced;
  const apart = Math.max(0, anchor.sentence.index - last.sentence.index - 1);
  if (anchor.sort === 'whole')
    return (
      things.reduce((sum, thing) => sum + between(breaths, thing.sentence, anchor.sentence), 0) * costs.breath +
      apart * costs.sentence +
      habit.after +
      costs.lead
    );
  if (apart >= REACH_SENTENCES) return things.length * costs.unplaced + costs.unusedPlace;
  const stops = between(breaths, last.sentence, anchor.sentence);
  return (
    (apart + spreadOver / 2) * costs.sentence +
    things.reduce((sum, thing) => sum + between(breaths, thing.sentence, anchor.sentence), 0) * costs.breath +
    habit.after +
    fitCost(things, anchor) +
    (looksOn.test(anchor.sentence.text) ? costs.chat : 0) +
    (anchor.looksBack && apart === 0 ? -costs.chat : 0) +
    (anchor.isLone ? 0 : stops > 0 ? costs.talk : costs.talkBreath)
  );
}
