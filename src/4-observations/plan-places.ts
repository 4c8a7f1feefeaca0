/**
 * Some people say the number and then the thing, some the thing and then the number, in sentences of their own:
 * "Twenty. Roots." or "Roots. Light. Twenty." Which number is whose shows only over several of them, so it is planned
 * for a whole stretch of talk at once: every number should find a thing and every thing a number, near it, and in the
 * way this speaker has.
 */
import type { Phrases } from '../3-phrases/find-phrases.ts';
import type { PhraseOf } from '../3-phrases/phrase.ts';
import { arrange, type Choice, type Habit, REACH_SENTENCES, type Stretch, stretches } from './arrange-places.ts';
import { breathsOf } from './breaths.ts';
import type { Sentence } from './sentence.ts';

export interface PlacePlan {
  /** The place that follows a sentence and belongs to the things in it. */
  readonly after: ReadonlyMap<number, { readonly place: PhraseOf<'distance'>; readonly sentence: number }>;
  /** Sentences that give a place only: whether it is for what was named before, for what comes, or for both. */
  readonly lone: ReadonlyMap<number, 'before' | 'next' | 'both'>;
  /** Sentences whose things a speaker of the other habit would have placed here, where which habit it is shows too little; null for nowhere. */
  readonly otherwise: ReadonlyMap<number, number | null>;
  /** For each sentence the number of the breath it was said in. */
  readonly breaths: readonly number[];
}

/** How many places count as said each way before any was heard, and what one point of leaning adds to that. */
const PRIOR = 1.5;
const LEAN = 1.18;
const LEAN_MOST = 4;
/** How much the habit weighs beside what stands where. */
const WEIGHT = 0.6;
const ROUNDS = 3;
/** A place that another habit, stronger or weaker by this, would have given otherwise is a guess. */
const DOUBT = 0.3;

export function planPlaces(sentences: readonly Sentence[], phrases: Phrases, lean: number): PlacePlan {
  const breaths = breathsOf(sentences, phrases.tokens);
  const parts = stretches(sentences, phrases, breaths);
  const arrangeAll = (habit: Habit): Choice[] => parts.map((part) => arrange(part, breaths, habit));
  const settled = [0.8, 0.2].map((share) => {
    let habit = habitOf(share);
    let choices = arrangeAll(habit);
    for (let round = 0; round < ROUNDS; round += 1) {
      habit = habitOf(shareSaidFirst(parts, choices, lean));
      choices = arrangeAll(habit);
    }
    return { habit, choices, cost: choices.reduce((sum, choice) => sum + choice.cost, 0) };
  });
  const { habit, choices } = settled[0]!.cost <= settled[1]!.cost ? settled[0]! : settled[1]!;
  const { after, lone } = laidOut(parts, choices);
  const otherwise = new Map<number, number | null>();
  for (const by of [DOUBT, -DOUBT]) {
    const other = arrangeAll({ before: habit.before + by, after: habit.after - by });
    parts.forEach((part, index) => {
      const places = placesOf(part, other[index]!);
      for (const [sentence, feet] of placesOf(part, choices[index]!)) {
        const elsewhere = places.get(sentence) ?? null;
        if (elsewhere !== feet) otherwise.set(sentence, elsewhere);
      }
    });
  }
  // A number that has a thing on its other side already is shared for want of another: "Tee. Three. Coupling. Nine, clay."
  parts.forEach(({ anchors, gaps }, part) => {
    gaps.forEach((things, index) => {
      const before = anchors[index - 1];
      if (before?.sort !== 'place' || lone.get(before.sentence.index) !== 'both') return;
      for (const thing of things.slice(choices[part]!.left[index], choices[part]!.splits[index] ?? things.length))
        if (!otherwise.has(thing.sentence.index)) otherwise.set(thing.sentence.index, null);
    });
  });
  return { after, lone, otherwise, breaths };
}

const habitOf = (share: number): Habit => ({
  before: -WEIGHT * Math.log(share),
  after: -WEIGHT * Math.log(1 - share),
});

/** Which share of the places of a talk is said before the thing, as far as it was heard. */
function shareSaidFirst(parts: readonly Stretch[], choices: readonly Choice[], lean: number): number {
  const leaning = Math.max(-LEAN_MOST, Math.min(LEAN_MOST, lean * LEAN));
  let first = PRIOR + Math.max(0, leaning);
  let last = PRIOR + Math.max(0, -leaning);
  parts.forEach(({ anchors, gaps }, part) => {
    gaps.forEach((things, index) => {
      const split = choices[part]!.splits[index] ?? things.length;
      if (split > (choices[part]!.left[index] ?? 0) && anchors[index - 1]?.sort === 'place') first += 1;
      if (split < things.length && anchors[index]?.sort === 'place') last += 1;
    });
  });
  return first / (first + last);
}

/** Which place each thing of a stretch is given, by its sentence. */
function placesOf({ anchors, gaps }: Stretch, { splits, left }: Choice): Map<number, number> {
  const places = new Map<number, number>();
  gaps.forEach((things, index) => {
    const split = splits[index] ?? things.length;
    things.forEach((thing, at) => {
      if (at < (left[index] ?? 0)) return;
      const anchor = at < split ? anchors[index - 1] : anchors[index];
      const place = anchor?.sort === 'place' ? anchor.place : at >= split ? anchor?.lead : null;
      if (place) places.set(thing.sentence.index, place.distance.feet);
    });
  });
  return places;
}

function laidOut(parts: readonly Stretch[], choices: readonly Choice[]): Pick<PlacePlan, 'after' | 'lone'> {
  const after = new Map<number, { place: PhraseOf<'distance'>; sentence: number }>();
  const lone = new Map<number, 'before' | 'next' | 'both'>();
  parts.forEach(({ anchors, gaps }, part) => {
    gaps.forEach((things, index) => {
      const split = choices[part]!.splits[index] ?? things.length;
      const before = anchors[index - 1];
      const place = anchors[index];
      if (before?.sort === 'place' && split > (choices[part]!.left[index] ?? 0))
        lone.set(before.sentence.index, lone.has(before.sentence.index) ? 'both' : 'next');
      if (place?.sort === 'whole' && place.lead !== null)
        for (const thing of things.slice(split))
          after.set(thing.sentence.index, { place: place.lead, sentence: place.sentence.index });
      if (place?.sort !== 'place') return;
      const taken = things
        .slice(split)
        .filter((thing) => place.sentence.index - thing.sentence.index <= REACH_SENTENCES);
      if (taken.length > 0) lone.set(place.sentence.index, 'before');
      for (const thing of taken)
        after.set(thing.sentence.index, { place: place.place, sentence: place.sentence.index });
    });
  });
  return { after, lone };
}
