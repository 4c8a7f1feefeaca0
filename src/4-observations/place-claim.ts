/**
 * Finds where a claimed thing is: the place said with it, a way from something named before, the place at hand, or none.
 * Each answer keeps its basis and the shape that gave it, so that doubt can be measured later.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Claim } from './claim.ts';
import { limitKinds } from './kind-roles.ts';
import type { Placing } from './placing.ts';
import { currentRun, PLACE_AFTER, type Reading, RUN_START, SAME_PLACE } from './reading.ts';
import { resolveRelative } from './resolve-relative.ts';
import type { Sentence } from './sentence.ts';

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

/** "I'd guess the main at another ten feet": how far it may be, not where anything was seen. */
const estimates =
  /\b(guess|estimate|figure|reckon|probably|must be|should be|can't be|supposed to|ought to|i'd say|another)\b/;

const fromHere = /\bfrom (here|there|this|that|now|this point|that point|then)\b/;

/** Words for where the camera went in. */
const atStart =
  /\b(right|straight) (off|away|under the (flange|toilet|floor|plug|cap)|inside|at the (very )?(start|beginning|cleanout|opening|mouth|flange|entrance|plug|cap)|where (i|we) (go|went|come|came|start|started|drop|dropped) in)\b|\b(first thing|off the bat|from zero|at zero|just inside|(at|from) the (very )?(start|beginning|outset|mouth|word go|get go))\b/;

const travelling =
  /\b(moving on|moving along|keep going|further on|farther on|next joint|a little past|little past|past that|beyond that|rolling again|going on|further along|further down|up ahead)\b/;

/** "First joint, four feet, sand on the bottom from four to seven": where a stretch ends that begins where the thing was said to be. */
const stretchFrom = ({ phrases }: Sentence, claim: Claim, feet: number): number | null =>
  phrasesOf(phrases, 'distance').find(
    ({ from, distance }) => from >= claim.to && distance.feet === feet && distance.toFeet !== null,
  )?.distance.toFeet ?? null;

export function placeClaim(reading: Reading, claim: Claim, sentence: Sentence): Placing {
  const run = currentRun(reading);
  const isEstimate = claim.relative !== null && limitKinds.has(claim.kind) && estimates.test(sentence.text);
  if (claim.relative && run && claim.isRelativeNearer && !isEstimate) {
    const relative = resolveRelative(reading, run, claim.relative, claim);
    if (relative) return relative;
  }
  if (claim.place) {
    const { feet, toFeet } = claim.place.distance;
    const to = toFeet ?? stretchFrom(sentence, claim, feet);
    return { at: feet, to, basis: 'spoken', rule: claim.place.rule, sentencesBack: 0, isGuess: false };
  }
  if (!run) return nowhere('no run yet');
  if (claim.relative && !claim.isRelativeNearer && !isEstimate) {
    const relative = resolveRelative(reading, run, claim.relative, claim);
    if (relative) return relative;
  }
  // "It's all murk from here to forty four": it begins at the place at hand.
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
