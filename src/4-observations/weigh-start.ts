/**
 * Weighs whether the first run begins. The signs of one (an opening, a way, the counter at nought) may be spread over a few
 * sentences; none is sure by itself, together they must reach a sum.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Reading } from './reading.ts';
import { noSignals, readSignals, type Signals } from './run-signs.ts';
import type { Sentence } from './sentence.ts';

/** What single signs of a run weigh, for the first one and for later ones alike. */
export const signWeights = {
  zeroOnPurpose: 3.5,
  zero: 2,
  next: 2,
  sameAccess: 1.5,
  plainHeading: 1.5,
  heading: 1,
  access: 1,
  entering: 0.5,
} as const;
export const FIRST_RUN_SUM = 1.5;
/** Signs may be spread over this many sentences, as long as no place in the pipe is named among them. */
const WINDOW_SENTENCES = 4;

export interface Window {
  readonly signals: Signals;
  readonly from: Sentence;
  readonly sum: number;
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

/** What several sentences say together; of several ways the last plain one, else the last. */
export function joinSignals(parts: readonly { readonly signals: Signals }[]): Signals {
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
    isNextLoose: !some((part) => part.isNext && !part.isNextLoose),
    number: parts.findLast((part) => part.signals.number !== null)?.signals.number ?? null,
    isOrdinal: some((part) => part.isOrdinal),
    isSameAccess: some((part) => part.isSameAccess),
    isTurnedAbout: some((part) => part.isTurnedAbout),
    isSameWay: some((part) => part.isSameWay),
    isDoing: some((part) => part.isDoing),
  };
}

/** What the counter, the opening and the way weigh together. */
export const weighOpening = (signals: Signals): number =>
  (signals.isZeroed ? signWeights.zeroOnPurpose : signals.isZero ? signWeights.zero : 0) +
  (signals.isSameAccess ? signWeights.sameAccess : signals.hasAccess ? signWeights.access : 0) +
  (signals.direction === null ? 0 : signals.isPlain ? signWeights.plainHeading : signWeights.heading) +
  (signals.isEntering ? signWeights.entering : 0);

/** The signs of a sentence and of those just before it, up to a place or a question. */
export function gatherSigns(reading: Reading, sentence: Sentence): Window | null {
  const parts: { sentence: Sentence; signals: Signals }[] = [];
  for (let index = sentence.index; index >= 0 && index > sentence.index - WINDOW_SENTENCES; index -= 1) {
    const other = reading.sentences[index]!;
    const signals = readSignals(other, reading.phrases.tokens);
    if ((hasPlaceIn(other) && index < sentence.index) || signals.isPullBack || (other.isQuestion && !signals.isZero))
      break;
    parts.unshift({ sentence: other, signals });
  }
  const current = parts.at(-1);
  if (!current || current.sentence.index !== sentence.index) return null;
  const first = parts.findIndex((part) => hasSign(part.signals));
  if (first < 0) return null;
  const used = parts.slice(first);
  const signals = joinSignals(used);
  const sum = weighOpening(signals) + (signals.isNext ? signWeights.next : 0);
  return { signals, from: used[0]!.sentence, sum };
}
