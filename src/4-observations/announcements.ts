/**
 * Where a run may begin: neighbouring sentences that name an opening, a way, the counter at nought, another run. None is sure by
 * itself; what each sign weighs is added up here, what the counter does afterwards is weighed elsewhere.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { isUnusable } from './access-words.ts';
import type { Step } from './follow-counter.ts';
import { openingKinds } from './kind-roles.ts';
import type { Signals } from './run-signs.ts';
import type { Sentence } from './sentence.ts';
import { hasSign, joinSignals, signWeights, weighOpening } from './weigh-start.ts';

/** What only a later run is announced by. */
const weights = {
  /** "Now I'm pushing" goes on as often as it begins. */
  nextLoosely: 0.8,
  numbered: 3,
  turnedAbout: 0.7,
  ordinal: 1,
  doing: 0.3,
  /** What the pipe is, is said right after. */
  pipe: 0.7,
} as const;
/** What it takes to believe that a run begins. */
const THRESHOLD = 3.6;
/** Nothing but a way or an opening was named, not both: less of an announcement. */
const NO_CORE = -0.8;
/** Less than this announces nothing. */
const LEAST = -3.5;
const LEAST_OPENING = -3;
/** Sentences without a sign between two with one. */
const GAP_SENTENCES = 2;
const LONGEST = 5;

export interface Announcement {
  readonly from: number;
  /** The last sentence of it. */
  readonly to: number;
  readonly signals: Signals;
  /** How much speaks for a run, before the counter is asked. */
  readonly score: number;
}

const isOnlyLimit = (sentence: Sentence, signals: Signals): boolean =>
  !signals.isPlain && !signals.isZero && isUnusable(sentence);

function isSign(sentence: Sentence, step: Step): boolean {
  const { signals } = step;
  if (!hasSign(signals) || signals.isPullBack || isOnlyLimit(sentence, signals)) return false;
  if (sentence.isQuestion && !signals.isZero) return false;
  const hasWay = signals.direction !== null || signals.hasAccess;
  // A place read off the counter belongs to a run that goes on.
  return (
    step.readings.length === 0 ||
    signals.isZero ||
    signals.isSameAccess ||
    (signals.isNext && hasWay) ||
    (signals.isTurnedAbout && signals.direction !== null)
  );
}

/** Whether a sentence between two signs parts them; the place where the counter was set to nought may be told once more. */
const parts = (sentence: Sentence, step: Step, first: Step): boolean =>
  step.readings.some(({ feet }) => !first.signals.isZeroedAtPlace || first.readings.every((at) => at.feet !== feet)) ||
  step.signals.isPullBack ||
  phrasesOf(sentence.phrases, 'thing').some(({ kind, source }) => source === 'word' && !openingKinds.has(kind));

export function findAnnouncements(sentences: readonly Sentence[], steps: readonly Step[]): Announcement[] {
  const found: Announcement[] = [];
  let group: number[] = [];
  const close = (): void => {
    if (group.length > 0) found.push(announcementOf(group, steps));
    group = [];
  };
  sentences.forEach((sentence, index) => {
    const step = steps[index]!;
    if (isSign(sentence, step)) {
      if (step.signals.isZeroedAtPlace || (group.length > 0 && index - group[0]! >= LONGEST)) close();
      group.push(index);
      if (step.readings.length > 0 && !step.signals.isZeroedAtPlace) close();
    } else if (group.length > 0 && (parts(sentence, step, steps[group[0]!]!) || index - group.at(-1)! > GAP_SENTENCES))
      close();
  });
  close();
  return found.filter(
    ({ from, score, signals }) =>
      from < sentences.length && score >= (signals.direction === null ? LEAST_OPENING : LEAST),
  );
}

function announcementOf(group: readonly number[], steps: readonly Step[]): Announcement {
  const signals = joinSignals(group.map((index) => ({ signals: steps[index]!.signals })));
  // What was read off the counter before it was set to nought is of the run that ends.
  const from = steps[group[0]!]!.signals.isZeroedAtPlace ? (group[1] ?? group[0]! + 1) : group[0]!;
  const to = Math.max(from, group.at(-1)!);
  const saysPipe = steps.slice(group[0], to + 3).some((step) => step.saysPipe);
  const hasCore =
    signals.isZero ||
    signals.isNext ||
    signals.isSameAccess ||
    signals.isTurnedAbout ||
    signals.isOrdinal ||
    (signals.hasAccess && signals.direction !== null);
  const score =
    weighOpening(signals) +
    (signals.number !== null
      ? weights.numbered
      : signals.isNext
        ? signals.isNextLoose
          ? weights.nextLoosely
          : signWeights.next
        : 0) +
    (signals.isTurnedAbout ? weights.turnedAbout : 0) +
    (signals.isOrdinal ? weights.ordinal : 0) +
    (signals.isDoing ? weights.doing : 0) +
    (saysPipe ? weights.pipe : 0) +
    (hasCore ? 0 : NO_CORE) -
    THRESHOLD;
  return { from, to, signals, score };
}
