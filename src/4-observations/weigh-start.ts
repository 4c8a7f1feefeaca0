/**
 * Weighs whether a run begins. The signs of one (an opening, a way, the counter at nought, "the other one") may be spread over
 * a few sentences; none is sure by itself, together they must reach a sum. What follows speaks too: places that start again
 * low, and what the pipe is.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Reading, RunState } from './reading.ts';
import { noSignals, readSignals, type Signals } from './run-signs.ts';
import type { Sentence } from './sentence.ts';

/** What the signs of a new run weigh; together they must reach the sum. */
const weights = {
  zeroOnPurpose: 3.5,
  zero: 2,
  next: 2,
  numbered: 3.5,
  sameAccess: 1.5,
  plainHeading: 1.5,
  heading: 1,
  access: 1,
  entering: 0.5,
  turned: 1,
  turnedAbout: 0.5,
  ordinal: 1,
  doing: 0.5,
  /** What follows starts again low, and says what the pipe is. */
  fresh: 1,
  /** What follows counts up again from far below what was reached, past places where nothing was found before. */
  countsAnew: 2.5,
  /** What follows goes on beyond what was reached. */
  goesOn: -1.5,
} as const;
export const NEW_RUN_SUM = 3.5;
export const FIRST_RUN_SUM = 1.5;
/** Signs may be spread over this many sentences, as long as no place in the pipe is named among them. */
const WINDOW_SENTENCES = 4;
/** How many sentences ahead the first places and materials of a new run are looked for. */
const AHEAD_SENTENCES = 6;
/** How far ahead, and over how many readings, the counter is followed to see whether it counts anew. */
const COUNT_SENTENCES = 16;
const COUNT_READINGS = 3;
/** The counter must start at least this much below what was reached. */
const COUNT_DROP_FEET = 8;

export interface Window {
  readonly signals: Signals;
  readonly from: Sentence;
  readonly sum: number;
  /** The counter starts again low after it, whatever is said. */
  readonly countsAnew: boolean;
}

const hasPlaceIn = (sentence: Sentence): boolean =>
  phrasesOf(sentence.phrases, 'distance').some((phrase) => phrase.distance.feet > 0);

export const hasSign = (signals: Signals): boolean =>
  signals.direction !== null ||
  signals.hasAccess ||
  signals.isZero ||
  signals.isNext ||
  signals.isSameAccess ||
  signals.isTurnedAbout ||
  signals.isSameWay;

function joinSignals(parts: readonly { readonly signals: Signals }[]): Signals {
  const some = (test: (signals: Signals) => boolean): boolean => parts.some((part) => test(part.signals));
  const headed =
    parts.findLast((part) => part.signals.direction !== null && part.signals.isPlain) ??
    parts.findLast((part) => part.signals.direction !== null);
  return {
    ...noSignals,
    direction: headed?.signals.direction ?? null,
    isPlain: headed?.signals.isPlain ?? false,
    hasAccess: some((part) => part.hasAccess),
    isEntering: some((part) => part.isEntering),
    isZero: some((part) => part.isZero),
    isZeroed: some((part) => part.isZeroed),
    isNext: some((part) => part.isNext),
    number: parts.findLast((part) => part.signals.number !== null)?.signals.number ?? null,
    isOrdinal: some((part) => part.isOrdinal),
    isSameAccess: some((part) => part.isSameAccess),
    isTurnedAbout: some((part) => part.isTurnedAbout),
    isSameWay: some((part) => part.isSameWay),
    isDoing: some((part) => part.isDoing),
  };
}

/**
 * Whether the readings after a sentence climb again from far below what the camera reached, at places where nothing is known:
 * a summary climbs too, but names what was found.
 */
function countsAnew(reading: Reading, run: RunState, sentence: Sentence): boolean {
  const readings: number[] = [];
  for (const other of reading.sentences.slice(sentence.index + 1, sentence.index + 1 + COUNT_SENTENCES)) {
    const signals = readSignals(other, reading.phrases.tokens);
    // A later announcement is the likelier start of that count.
    if (readings.length >= COUNT_READINGS || signals.isPullBack || hasSign(signals)) break;
    const feet = phrasesOf(other.phrases, 'distance')[0]?.distance.feet;
    if (feet !== undefined && feet > 0) readings.push(feet);
  }
  const [first] = readings;
  if (first === undefined || readings.length < COUNT_READINGS) return false;
  const known = reading.items.filter((item) => item.run === run.n && !item.isWithdrawn && item.at !== null);
  // One place alone may have been misread; the second furthest is sure to have been reached.
  const furthest = known.map((item) => item.at ?? 0).sort((a, b) => b - a)[1] ?? 0;
  const climbs = readings.every((feet, index) => index === 0 || feet >= readings[index - 1]!);
  if (!climbs || first > furthest / 2 || furthest - first < COUNT_DROP_FEET) return false;
  const named = readings.filter((feet) => known.some((item) => Math.abs((item.at ?? 0) - feet) <= 0.5));
  return named.length * 2 < readings.length;
}

/** Whether the talk after a sentence starts again near nought, goes on beyond what was reached, or tells nothing. */
function whatFollows(reading: Reading, run: RunState, sentence: Sentence): 'fresh' | 'goes on' | 'unknown' {
  const ahead = reading.sentences.slice(sentence.index + 1, sentence.index + 1 + AHEAD_SENTENCES);
  const first = ahead.findIndex(hasPlaceIn);
  const feet = phrasesOf(ahead[first]?.phrases ?? [], 'distance')[0]?.distance.feet;
  if (feet === undefined) return 'unknown';
  const isTurned = run.way === 'back' || run.end !== null || reading.isSummary;
  if (feet > run.furthest + 1) return isTurned ? 'unknown' : 'goes on';
  if (feet > run.furthest / 2 || run.furthest - feet < 5) return 'unknown';
  const saysPipe = [sentence, ...ahead.slice(0, 2)].some((other) =>
    other.phrases.some((phrase) => phrase.family === 'diameter' || phrase.family === 'material'),
  );
  return saysPipe || !isTurned ? 'fresh' : 'unknown';
}

export function gatherSigns(reading: Reading, run: RunState | null, sentence: Sentence): Window | null {
  const parts: { sentence: Sentence; signals: Signals }[] = [];
  for (let index = sentence.index; index >= 0 && index > sentence.index - WINDOW_SENTENCES; index -= 1) {
    const other = reading.sentences[index]!;
    if (run && index <= run.sentence) break;
    const signals = readSignals(other, reading.phrases.tokens);
    if ((hasPlaceIn(other) && index < sentence.index) || signals.isPullBack || (other.isQuestion && !signals.isZero))
      break;
    if (run && reading.items.some((item) => item.sentence === index && !item.isWithdrawn && item.kind !== 'no-access'))
      break;
    parts.unshift({ sentence: other, signals });
  }
  const current = parts.at(-1);
  if (!current || current.sentence.index !== sentence.index) return null;
  const first = parts.findIndex((part) => hasSign(part.signals));
  if (first < 0) return null;
  const used = parts.slice(first);
  const signals = joinSignals(used);
  // "Run two" while the second run is read names it again.
  const isNumbered = signals.number !== null && signals.number > (run?.n ?? 0);
  const isTurned = run !== null && (run.way === 'back' || reading.isSummary || run.end !== null);
  const follows = run ? whatFollows(reading, run, sentence) : 'unknown';
  const isCountedAnew = run !== null && countsAnew(reading, run, sentence);
  const sum =
    (signals.isZeroed ? weights.zeroOnPurpose : signals.isZero ? weights.zero : 0) +
    (isNumbered ? weights.numbered : signals.isNext ? weights.next : 0) +
    (signals.isSameAccess ? weights.sameAccess : signals.hasAccess ? weights.access : 0) +
    (signals.direction === null ? 0 : signals.isPlain ? weights.plainHeading : weights.heading) +
    (signals.isEntering ? weights.entering : 0) +
    (signals.isTurnedAbout ? weights.turnedAbout : 0) +
    (isTurned ? weights.turned : 0) +
    (signals.isOrdinal ? weights.ordinal : 0) +
    (signals.isDoing && isTurned ? weights.doing : 0) +
    (isCountedAnew
      ? weights.countsAnew
      : follows === 'fresh'
        ? weights.fresh
        : follows === 'goes on' && !signals.isZeroed
          ? weights.goesOn
          : 0);
  return { signals, from: used[0]!.sentence, sum, countsAnew: isCountedAnew };
}
