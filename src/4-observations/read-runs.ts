/** Follows the camera: where a run starts and which way it goes, when the counter starts again, when it is pulled back. */

import type { Direction } from '../../shared/vocabulary/attributes.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import { currentRun, own, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How many sentences after an announcement the details of a run may follow. */
const DETAILS_SENTENCES = 3;

interface Signals {
  direction: Direction | null;
  isPlain: boolean;
  hasAccess: boolean;
  isEntering: boolean;
  isZero: boolean;
  isNext: boolean;
  isSameAccess: boolean;
  isPullBack: boolean;
  isSummary: boolean;
}

/** What was meant to be done and was not. */
const notDone =
  /\b(wanted to|would have|would 've|'d have|meant to|hoped to|was going to|could have|tried to|planned to)\b/;

export function readSignals(sentence: Sentence): Signals {
  const cues = new Set(phrasesOf(sentence.phrases, 'camera').map((phrase) => phrase.cue));
  const headings = phrasesOf(sentence.phrases, 'heading');
  const plain = headings.filter((heading) => heading.isPlain);
  const first = plain.find((heading) => sentence.text.includes(`${heading.rule} first`));
  const heading = first ?? plain.at(-1) ?? headings[0] ?? null;
  return {
    direction: heading?.direction ?? null,
    isPlain: heading?.isPlain ?? false,
    hasAccess: cues.has('access'),
    isEntering: cues.has('enter'),
    isZero: cues.has('zero') || bareZero.test(sentence.text),
    isNext: cues.has('next-run') && !notDone.test(sentence.text),
    isSameAccess: cues.has('same-access'),
    isPullBack: cues.has('pull-back'),
    isSummary: cues.has('summary'),
  };
}

/** The counter's nought named by itself: "Zero.", "zero going up". */
const bareZero =
  /^(okay |and |so )?(zero|0)( again)?$|(?<!point )\b(zero|0) (going|heading|headed|again|once more|and going)\b|(?<!point )\b(zero|0)$/;

const numberedRun =
  /\b(run (two|three|four|five|2|3|4|5)|second run|third run|fourth run|last run|final run|next run)\b/;
const ordinalStart =
  /^(okay |ok |alright |and |now |so |well |um |uh )*(second|third|fourth|fifth|last|next|number two|number three|part two|part three)\b/;
const bringsBack =
  /\b(back in|push back in|going back in|pushing again|go again|going again|forward again|push again|heading out again|back out again|resume)\b/;
/** The counter set to nought on purpose, which alone begins a run; "back at zero" may only be the end of the pull. */
const setsToZero =
  /\b(zero it|zeroed|zeroing|rezero|re zero|re zeroed|reset|resetting|resets|zero the|zero out|set to (zero|0)|i zero|new count|fresh count)\b/;

/** What the signs of a new run weigh; together they must reach the sum. */
const weights = {
  zeroOnPurpose: 3.5,
  zero: 2,
  next: 2,
  sameAccess: 1.5,
  plainHeading: 1.5,
  heading: 1,
  access: 1,
  entering: 0.5,
  turned: 1,
  ordinal: 1,
} as const;
const NEW_RUN_SUM = 3.5;
const FIRST_RUN_SUM = 1.5;
/** Signs may be spread over this many sentences, as long as no place in the pipe is named among them. */
const WINDOW_SENTENCES = 4;

interface Window {
  readonly signals: Signals;
  readonly from: Sentence;
  readonly sum: number;
}

function gatherSigns(reading: Reading, run: RunState | null, sentence: Sentence): Window | null {
  const parts: { sentence: Sentence; signals: Signals }[] = [];
  for (let index = sentence.index; index >= 0 && index > sentence.index - WINDOW_SENTENCES; index -= 1) {
    const other = reading.sentences[index]!;
    if (run && index <= run.sentence) break;
    const hasPlace = phrasesOf(other.phrases, 'distance').some((phrase) => phrase.distance.feet > 0);
    const signals = readSignals(other);
    if ((hasPlace && index < sentence.index) || signals.isPullBack || (other.isQuestion && !signals.isZero)) break;
    if (run && reading.items.some((item) => item.sentence === index && !item.isWithdrawn && item.kind !== 'no-access'))
      break;
    parts.unshift({ sentence: other, signals });
  }
  const current = parts.at(-1);
  if (!current || current.sentence.index !== sentence.index) return null;
  const first = parts.findIndex(
    (part) =>
      part.signals.direction !== null ||
      part.signals.hasAccess ||
      part.signals.isZero ||
      part.signals.isNext ||
      part.signals.isSameAccess,
  );
  if (first < 0) return null;
  const used = parts.slice(first);
  const some = (test: (signals: Signals) => boolean): boolean => used.some((part) => test(part.signals));
  const headed =
    used.findLast((part) => part.signals.direction !== null && part.signals.isPlain) ??
    used.findLast((part) => part.signals.direction !== null);
  const signals: Signals = {
    direction: headed?.signals.direction ?? null,
    isPlain: headed?.signals.isPlain ?? false,
    hasAccess: some((part) => part.hasAccess),
    isEntering: some((part) => part.isEntering),
    isZero: some((part) => part.isZero),
    isNext: some((part) => part.isNext),
    isSameAccess: some((part) => part.isSameAccess),
    isPullBack: false,
    isSummary: false,
  };
  const isTurned = run !== null && (run.way === 'back' || reading.isSummary || run.end !== null);
  const sum =
    (used.some((part) => part.signals.isZero && setsToZero.test(part.sentence.text))
      ? weights.zeroOnPurpose
      : signals.isZero
        ? weights.zero
        : 0) +
    (signals.isNext ? (used.some((part) => numberedRun.test(part.sentence.text)) ? NEW_RUN_SUM : weights.next) : 0) +
    (signals.isSameAccess ? weights.sameAccess : signals.hasAccess ? weights.access : 0) +
    (signals.direction === null ? 0 : signals.isPlain ? weights.plainHeading : weights.heading) +
    (signals.isEntering ? weights.entering : 0) +
    (isTurned ? weights.turned : 0) +
    (used.some((part) => ordinalStart.test(part.sentence.text)) ? weights.ordinal : 0);
  return { signals, from: used[0]!.sentence, sum };
}

function startRun(reading: Reading, from: Sentence, sentence: Sentence, signals: Signals): void {
  const before = currentRun(reading);
  const named =
    reading.sentences
      .slice(from.index, sentence.index + 1)
      .map((part) => accessWords(reading, part))
      .find((words) => words !== null) ?? null;
  for (let at = from.from; at < sentence.to; at += 1)
    if (reading.owners[at]?.sort !== 'item') reading.owners[at] = { sort: 'run', run: reading.runs.length + 1 };
  reading.runs.push({
    n: reading.runs.length + 1,
    access: signals.isSameAccess || named === null ? (before?.access ?? named) : named,
    direction: signals.direction,
    isDirectionPlain: signals.isPlain,
    isDirectionAssumed: false,
    sentence: from.index,
    from: from.from,
    to: sentence.to,
    here: 0,
    furthest: 0,
    way: 'out',
    material: null,
    diameterIn: null,
    end: null,
    hasFindings: false,
    track: [],
    landmarks: [],
  });
  reading.pending = null;
  reading.focus = [];
  reading.lastValue = null;
  reading.asked = [];
  reading.isSummary = false;
}

/** Whether the sentence starts a run or adds to the start of one. Marks its tokens when it does. */
export function readRuns(reading: Reading, sentence: Sentence): { isRunTalk: boolean; signals: Signals } {
  const signals = readSignals(sentence);
  const run = currentRun(reading);
  const isLimit = sentence.phrases.some((phrase) => phrase.family === 'thing' && phrase.kind === 'no-access');
  const hasPlace = phrasesOf(sentence.phrases, 'distance').some((phrase) => phrase.distance.feet > 0);
  if (!run) {
    const window =
      isLimit && !signals.isEntering && !signals.isPlain && signals.direction === null
        ? null
        : gatherSigns(reading, null, sentence);
    const isGoing = /\b(i 'm|we 're|i am|we are|gonna|going|i 'll|go|goes)\b/.test(sentence.text);
    const hasNow = signals.direction !== null || signals.hasAccess || signals.isZero;
    if (
      window &&
      hasNow &&
      ((window.sum >= FIRST_RUN_SUM &&
        (window.signals.direction !== null ||
          window.signals.isZero ||
          (window.signals.hasAccess && window.signals.isEntering))) ||
        (window.signals.direction !== null && isGoing))
    ) {
      startRun(reading, window.from, sentence, window.signals);
      return { isRunTalk: true, signals };
    }
    return { isRunTalk: false, signals };
  }
  const hasSign =
    signals.isZero || signals.isNext || signals.isSameAccess || signals.direction !== null || signals.hasAccess;
  const hasMoved =
    run.furthest > 2 ||
    (setsToZero.test(sentence.text) &&
      reading.items.filter((item) => item.run === run.n && !item.isWithdrawn).length >= 3);
  const window = hasMoved && hasSign && !signals.isPullBack ? gatherSigns(reading, run, sentence) : null;
  const isOnlyLimit = isLimit && !signals.isPlain;
  const isPlaced = hasPlace && !signals.isZero && !signals.isNext && !signals.isSameAccess;
  const hasCore =
    window !== null &&
    (window.signals.isZero ||
      window.signals.isNext ||
      window.signals.isSameAccess ||
      (window.signals.direction !== null &&
        window.signals.hasAccess &&
        (window.signals.isPlain || window.signals.isEntering)));
  if (window && !isOnlyLimit && !isPlaced && hasCore && window.sum >= NEW_RUN_SUM) {
    startRun(reading, window.from, sentence, window.signals);
    return { isRunTalk: true, signals };
  }
  const isFresh = run.furthest <= 2 && sentence.index - run.sentence <= DETAILS_SENTENCES + 2;
  if (isFresh && !hasPlace && (signals.direction !== null || signals.hasAccess || signals.isZero)) {
    const overrides =
      signals.isPlain && (!run.isDirectionPlain || /\b(no|sorry|first|i mean|correction)\b/.test(sentence.text));
    if (signals.direction !== null && (run.direction === null || overrides)) {
      run.direction = signals.direction;
      run.isDirectionPlain = signals.isPlain;
    }
    run.access ??= accessWords(reading, sentence);
    return { isRunTalk: true, signals };
  }
  if (signals.isPullBack && (run.hasFindings || run.furthest > 2)) {
    run.way = 'back';
    reading.isSummary = false;
    reading.pending = null;
  } else if (run.way === 'back' && bringsBack.test(sentence.text)) run.way = 'out';
  const isLate = run.way === 'back' || run.end !== null;
  if (signals.isSummary && isLate) reading.isSummary = true;
  return { isRunTalk: false, signals };
}

const ACCESS_WORDS = 8;

/** The words that name the opening, as said. */
function accessWords(reading: Reading, sentence: Sentence): string | null {
  const access = phrasesOf(sentence.phrases, 'camera').find((phrase) => phrase.cue === 'access');
  if (!access) return null;
  const { tokens } = reading.phrases;
  let from = access.from;
  while (from > sentence.from && access.from - from < ACCESS_WORDS && tokens[from - 1]?.breakAfter === 'none') {
    if (/^(the|a|an|at|in|from|through|by|via|my|this|is|'s|and)$/.test(tokens[from - 1]?.text ?? '')) break;
    from -= 1;
  }
  let to = access.to;
  while (to < sentence.to && to - access.to < ACCESS_WORDS && tokens[to - 1]?.breakAfter === 'none') {
    if (
      /^(and|so|heading|headed|going|which|that|we|i|running|is|came|pushing|then|downstream|upstream|toward|towards|out)$/.test(
        tokens[to]?.text ?? '',
      )
    )
      break;
    to += 1;
  }
  return textOf(tokens, from, to);
}

export function ownRunTalk(reading: Reading, sentence: Sentence): void {
  const run = currentRun(reading);
  if (run) own(reading, sentence.from, sentence.to, { sort: 'run', run: run.n });
}

/**
 * Findings before any run was announced, or one whose announcement was not understood: a run is started without a direction, and
 * says so, because a lost run would lose everything found in it.
 */
export function startUnannounced(reading: Reading, sentence: Sentence): void {
  const none: Signals = {
    direction: null,
    isPlain: false,
    hasAccess: false,
    isEntering: false,
    isZero: false,
    isNext: false,
    isSameAccess: false,
    isPullBack: false,
    isSummary: false,
  };
  const named = reading.sentences
    .slice(0, sentence.index)
    .findLast((other) => sentence.index - other.index <= 8 && readSignals(other).hasAccess);
  startRun(reading, named ?? sentence, named ?? { ...sentence, to: sentence.from }, none);
}
