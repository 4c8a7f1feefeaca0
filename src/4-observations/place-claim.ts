/**
 * Finds where a claimed thing is: the place said with it, a way from something named before, the place at hand, or none.
 * Each answer keeps its basis and the shape that gave it, so that doubt can be measured later.
 */
import type { DistanceBasis } from '../../shared/vocabulary/attributes.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import {
  currentRun,
  type Item,
  liveItems,
  PLACE_AFTER,
  type Reading,
  RUN_START,
  type RunState,
  SAME_PLACE,
} from './reading.ts';
import type { Sentence } from './sentence.ts';

export interface Placing {
  at: number | null;
  to: number | null;
  basis: DistanceBasis | null;
  rule: string;
  /** Sentences back to where the place was said. */
  sentencesBack: number;
  /** True when the rule itself is a guess. */
  isGuess: boolean;
}

/** A place said further back than this, in sentences, is not carried to a thing named without one. */
const CARRY_SENTENCES = 4;

const nowhere = (rule: string): Placing => ({
  at: null,
  to: null,
  basis: null,
  rule,
  sentencesBack: 0,
  isGuess: false,
});

/** Words that spread a thing over the whole line, or say that its place is not known. */
export const spread =
  /\b(whole way(?! a?round)|all the way through this|all through|throughout|all along|everywhere|whole line|whole run|whole length|in places|here and there|all over|most of the way|end to end|the entire line|the entire run|the entire length|(?<!(left|right|top|bottom|upper|lower|crown|invert|side|o'clock) )somewhere|missed the footage|didn t get a number|didn't get|can't tell you where)\b/;

const fromHere = /\bfrom (here|there|this|that|now|this point|that point|then)\b/;

/** Words for where the camera went in. */
const atStart =
  /\b(right|straight) (off|away|under the (flange|toilet|floor|plug|cap)|inside|at the (very )?(start|beginning|cleanout|opening|mouth|flange|entrance|plug|cap)|where (i|we) (go|went|come|came|start|started|drop|dropped) in)\b|\b(first thing|off the bat|from zero|at zero|just inside|(at|from) the (very )?(start|beginning|outset|mouth|word go|get go))\b/;

const travelling =
  /\b(moving on|moving along|keep going|further on|farther on|next joint|a little past|little past|past that|beyond that|rolling again|going on|further along|further down|up ahead)\b/;

export function placeClaim(reading: Reading, claim: Claim, sentence: Sentence): Placing {
  const run = currentRun(reading);
  if (claim.relative && run && claim.isRelativeNearer) {
    const relative = resolveRelative(reading, run, claim.relative, claim);
    if (relative) return relative;
  }
  if (claim.place) {
    const { feet, toFeet } = claim.place.distance;
    return { at: feet, to: toFeet, basis: 'spoken', rule: claim.place.rule, sentencesBack: 0, isGuess: false };
  }
  if (!run) return nowhere('no run yet');
  if (claim.relative && !claim.isRelativeNearer) {
    const relative = resolveRelative(reading, run, claim.relative, claim);
    if (relative) return relative;
  }
  // "Can't see a thing from here to about thirty one": it begins at the place at hand.
  const isFromHere =
    claim.fields.to != null && fromHere.test(sentence.text) && run.here > 0 && run.here < claim.fields.to;
  if (isFromHere)
    return { at: run.here, to: null, basis: 'nearby', rule: 'from here on', sentencesBack: 0, isGuess: true };
  if (spread.test(sentence.text)) return nowhere('spread over the line');
  const planned = reading.plan.after.get(sentence.index);
  // "Scale right off, up to nine": at the start of a run these words are a place.
  const next = reading.sentences[sentence.index + 1];
  const isAtStart =
    run.furthest === 0 &&
    run.way === 'out' &&
    atStart.test(sentence.text) &&
    !(next?.phrases.some(({ family }) => family === 'distance') && planned?.sentence === next.index);
  if (isAtStart && claim.kind !== 'material-change')
    return { at: 0, to: null, basis: 'relative', rule: RUN_START, sentencesBack: 0, isGuess: true };
  if (planned) {
    const { feet, toFeet } = planned.place.distance;
    const apart = planned.sentence - sentence.index;
    return {
      at: feet,
      to: toFeet,
      basis: 'nearby',
      rule: PLACE_AFTER,
      sentencesBack: apart,
      isGuess: apart > 2,
    };
  }
  const { pending } = reading;
  if (pending && sentence.index - pending.sentence <= CARRY_SENTENCES) {
    return {
      at: pending.feet,
      to: pending.toFeet,
      basis: 'nearby',
      rule: `place said before (${pending.rule})`,
      sentencesBack: sentence.index - pending.sentence,
      isGuess: sentence.index - pending.sentence > 2 || hasChat(reading, pending.sentence, sentence.index),
    };
  }
  const last = reading.focus.at(-1);
  const isClose = last !== undefined && sentence.index - reading.focusSentence <= 3;
  const isOnlyStart = last?.kind === 'pipe' && last.at === 0;
  if (last && isOnlyStart) return nowhere('nothing but the start was placed yet');
  if (last && isClose && last.run === run.n && last.at !== null && run.way === 'out') {
    const isMoving = travelling.test(sentence.text) || isMovingBetween(reading, reading.focusSentence, sentence.index);
    return {
      at: isMoving ? null : last.at,
      to: null,
      basis: isMoving ? null : 'nearby',
      rule: isMoving ? 'moved on since the last place' : SAME_PLACE,
      sentencesBack: sentence.index - reading.focusSentence,
      isGuess: true,
    };
  }
  if (last && isClose && last.run === run.n && last.at !== null && run.way === 'back') {
    return {
      at: last.at,
      to: null,
      basis: 'nearby',
      rule: SAME_PLACE,
      sentencesBack: sentence.index - reading.focusSentence,
      isGuess: true,
    };
  }
  return nowhere('no place said');
}

/** Whether talk of other matters stands between a place and a thing: then they may not belong together. */
function hasChat(reading: Reading, from: number, to: number): boolean {
  return reading.sentences
    .slice(from + 1, to)
    .some(
      (sentence) =>
        sentence.to - sentence.from > 9 &&
        !sentence.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'relative'),
    );
}

function isMovingBetween(reading: Reading, from: number, to: number): boolean {
  return reading.sentences.slice(from + 1, to).some((sentence) => travelling.test(sentence.text));
}

/** Turns "four feet past the wye" into feet. */
export function resolveRelative(
  reading: Reading,
  run: RunState,
  phrase: PhraseOf<'relative'>,
  claim: Claim | null,
): Placing | null {
  const { relative } = phrase;
  const make = (at: number, isGuess: boolean): Placing => ({
    at: Math.round(at * 1000) / 1000,
    to: null,
    basis: 'relative',
    rule: phrase.rule,
    sentencesBack: 0,
    isGuess,
  });
  if (relative.shape === 'same') {
    // "Thirty four, a hole, and a void behind it": the place said in the same breath.
    if (claim?.place && claim.place.from < phrase.from)
      return { ...make(claim.place.distance.feet, false), basis: 'spoken', rule: claim.place.rule };
    const feet = reading.pending?.feet ?? reading.focus.at(-1)?.at ?? null;
    return feet === null ? null : { ...make(feet, false), basis: 'nearby' };
  }
  if (relative.anchor === null) {
    const known = reading.steps.get(phrase.from);
    if (known !== undefined) return make(known, false);
    const base = basePlace(reading, run, phrase);
    const feet = relative.feet ?? 0;
    const isFromOpening = isAlongLine(reading.phrases.tokens, phrase) && feet > base;
    reading.steps.set(phrase.from, isFromOpening ? feet : base + feet);
    return isFromOpening ? make(feet, base > 0) : make(base + feet, false);
  }
  const anchors = anchorPlaces(reading, run, relative.anchor, claim);
  if (relative.shape === 'between' && anchors.length >= 2)
    return make((anchors[0]!.feet + anchors[1]!.feet) / 2, false);
  if (relative.shape === 'between') {
    const two = lastTwo(reading, run);
    const isThem = /^(them|the two|those|these|both|that)\b/.test(
      textOf(reading.phrases.tokens, relative.anchor.from, relative.anchor.to),
    );
    return two && isThem ? make((two[0] + two[1]) / 2, false) : null;
  }
  const anchorWords = textOf(reading.phrases.tokens, relative.anchor.from, relative.anchor.to);
  const meansLast =
    anchorWords === '' || /^(it|that|this|there)\b/.test(anchorWords) || / (it|that|this)$/.test(phrase.rule);
  if (relative.shape === 'middle' || relative.shape === 'start' || relative.shape === 'end') {
    const anchor = anchors[0] ?? (meansLast ? lastStretch(reading, run) : null);
    if (!anchor || anchor.toFeet === null) return null;
    const { feet, toFeet } = anchor;
    return make({ start: feet, end: toFeet, middle: (feet + toFeet) / 2 }[relative.shape], false);
  }
  if (relative.shape === 'inside') {
    const named = liveItems(reading, run.n).find(
      (item) => item.at !== null && item.kind.split('-').some((word) => anchorWords.split(' ').includes(word)),
    );
    const feet = anchors[0]?.feet ?? named?.at ?? (meansLast ? lastStretch(reading, run)?.feet : undefined);
    return make((feet ?? 0) + (relative.feet ?? 0), feet === undefined);
  }
  const anchor = anchors[0];
  // "Nine feet from the manhole": the opening the camera went in by is where the counter begins.
  const isFromAccess =
    anchor === undefined && relative.feet !== null && relative.feet > 0 && isAccess(run, anchorWords);
  if (isFromAccess) return make(relative.feet ?? 0, false);
  if (anchor === undefined)
    return relative.feet === null ? null : make(basePlace(reading, run, phrase) + relative.feet, true);
  const base = (relative.feet ?? 0) > 0 && anchor.toFeet !== null ? anchor.toFeet : anchor.feet;
  // On the way upstream "before" and "past" still count along the camera's way.
  return make(base + (relative.feet ?? 0), false);
}

/** "Thirty feet down the line", "nine feet down": counted from the opening where it lies beyond all that was seen. */
const isAlongLine = (tokens: readonly Token[], { from, to }: PhraseOf<'relative'>): boolean =>
  /^(down|along|up|out|in) the (line|pipe)|^\S+ (feet|foot) down$/.test(textOf(tokens, to - 3, to)) &&
  !/^(another|more|further|next)$/.test(tokens[from - 1]?.text ?? '');

/** The two different places that were last given to things. */
function lastTwo(reading: Reading, run: RunState): [number, number] | null {
  const places = liveItems(reading, run.n).flatMap((item) => (item.at === null ? [] : [item.at]));
  const last = places.at(-1);
  const other = places.findLast((feet) => feet !== last);
  return last === undefined || other === undefined ? null : [other, last];
}

/** What "another five feet" is counted from: the place said before it in the same breath, or the last one given. */
const basePlace = (reading: Reading, run: RunState, phrase: PhraseOf<'relative'>): number => {
  const sentence = reading.sentences.findLast((candidate) => candidate.from <= phrase.from);
  const said = phrasesOf(sentence?.phrases ?? [], 'distance').findLast((place) => place.to <= phrase.from);
  const { latest } = reading;
  if (
    latest &&
    latest.sentence === sentence?.index &&
    latest.run === run.n &&
    latest.at !== null &&
    latest.from < phrase.from
  )
    return latest.fields.to ?? latest.at;
  if (said) return said.distance.toFeet ?? said.distance.feet;
  if (reading.pending) return reading.pending.toFeet ?? reading.pending.feet;
  const last = reading.focus.at(-1);
  return last && last.run === run.n && last.at !== null ? (last.fields.to ?? last.at) : run.here;
};

/** Whether words name the opening the camera went in by. */
const isAccess = (run: RunState, words: string): boolean => {
  const named = words.split(' ').find((word) => !/^(the|my|our|your|this|that|a)$/.test(word));
  const access = run.access?.toLowerCase().split(' ') ?? [];
  return named !== undefined && access.includes(named);
};

interface Anchor {
  readonly feet: number;
  readonly toFeet: number | null;
}

function lastStretch(reading: Reading, run: RunState): Anchor | null {
  const item = liveItems(reading, run.n).findLast((candidate) => candidate.fields.to !== null && candidate.at !== null);
  return item && item.at !== null ? { feet: item.at, toFeet: item.fields.to } : null;
}

function anchorPlaces(
  reading: Reading,
  run: RunState,
  anchor: { from: number; to: number },
  claim: Claim | null,
): Anchor[] {
  const { tokens, phrases } = reading.phrases;
  const inside = phrases.filter((phrase) => phrase.from >= anchor.from && phrase.to <= anchor.to + 1);
  const items = liveItems(reading, run.n).filter((item) => item.at !== null);
  const found: (Anchor & { token: number })[] = [];
  for (const phrase of inside) {
    if (phrase.family === 'distance')
      found.push({ feet: phrase.distance.feet, toFeet: phrase.distance.toFeet, token: phrase.from });
    if (phrase.family !== 'thing' || (claim && phrase.from === claim.from)) continue;
    const words = tokens.slice(Math.max(anchor.from, phrase.from - 2), phrase.from).map((token) => token.text);
    const item = chooseItem(
      items.filter(
        (candidate) => candidate.kind === phrase.kind || (phrase.kind === 'coupling' && candidate.kind === 'coupling'),
      ),
      words,
    );
    if (item && item.at !== null) found.push({ feet: item.at, toFeet: item.fields.to, token: phrase.from });
  }
  const text = tokens.slice(anchor.from, anchor.to).map((token) => token.text);
  for (const landmark of run.landmarks) {
    const words = landmark.words.split(' ');
    const at = text.findIndex((_, index) => words.every((word, offset) => text[index + offset] === word));
    if (at >= 0) found.push({ feet: landmark.feet, toFeet: null, token: anchor.from + at });
  }
  return found.sort((a, b) => a.token - b.token);
}

function chooseItem(items: readonly Item[], words: readonly string[]): Item | undefined {
  if (words.includes('first')) return items[0];
  if (words.includes('second')) return items[1];
  if (words.includes('third')) return items[2];
  return items.at(-1);
}
