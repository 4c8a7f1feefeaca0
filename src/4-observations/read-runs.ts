/** Follows the camera: where a run starts and which way it goes, when the counter starts again, when it is pulled back. */
import type { Direction } from '../../shared/vocabulary/attributes.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
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
    isZero: cues.has('zero'),
    isNext: cues.has('next-run'),
    isSameAccess: cues.has('same-access'),
    isPullBack: cues.has('pull-back'),
    isSummary: cues.has('summary'),
  };
}

const numberedRun =
  /\b(run (two|three|four|five|2|3|4|5)|second run|third run|fourth run|last run|final run|next run)\b/;
const bringsBack = /\b(back in|push back in|going back in|pushing again|heading out again|back out again|resume)\b/;

function isNewRun(reading: Reading, run: RunState, sentence: Sentence, signals: Signals): boolean {
  if (sentence.isQuestion && !signals.isZero) return false;
  const announced = reading.announcedRun !== null && sentence.index - reading.announcedRun <= DETAILS_SENTENCES;
  const hasMoved = run.furthest > 2;
  if (!hasMoved) return false;
  const hasPlace = phrasesOf(sentence.phrases, 'distance').some((phrase) => phrase.distance.feet > 0);
  if (hasPlace && !signals.isZero && !signals.isNext && !signals.isSameAccess) return false;
  const isTurned = run.way === 'back' || reading.isSummary || run.end !== null;
  if (signals.isNext && numberedRun.test(sentence.text)) return true;
  if (
    signals.isNext &&
    (signals.isZero ||
      signals.isSameAccess ||
      (signals.direction !== null && (signals.isPlain || isTurned)) ||
      (signals.hasAccess && (signals.isEntering || isTurned)))
  )
    return true;
  if (announced && (signals.isZero || signals.isSameAccess || signals.hasAccess || signals.direction !== null))
    return true;
  if (signals.isZero) return true;
  if (signals.isSameAccess && signals.direction !== null) return true;
  if (isTurned && signals.hasAccess && signals.isEntering && signals.direction !== null) return true;
  return isTurned && signals.hasAccess && signals.direction !== null && signals.isPlain;
}

function startRun(reading: Reading, sentence: Sentence, signals: Signals, access: string | null): void {
  reading.runs.push({
    n: reading.runs.length + 1,
    access,
    direction: signals.direction,
    isDirectionPlain: signals.isPlain,
    sentence: sentence.index,
    from: sentence.from,
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
  reading.announcedRun = null;
}

/** Whether the sentence starts a run or adds to the start of one. Marks its tokens when it does. */
export function readRuns(reading: Reading, sentence: Sentence): { isRunTalk: boolean; signals: Signals } {
  const signals = readSignals(sentence);
  const run = currentRun(reading);
  const isLimit = sentence.phrases.some((phrase) => phrase.family === 'thing' && phrase.kind === 'no-access');
  if (!run) {
    const isStart =
      signals.direction !== null
        ? signals.isPlain || signals.hasAccess || signals.isEntering
        : signals.hasAccess && signals.isEntering && !isLimit;
    const isZeroStart = signals.isZero && !isLimit;
    if ((isStart && !(isLimit && !signals.isEntering && !signals.isPlain)) || isZeroStart) {
      startRun(reading, sentence, signals, accessWords(reading, sentence));
      return { isRunTalk: true, signals };
    }
    return { isRunTalk: false, signals };
  }
  if (isNewRun(reading, run, sentence, signals)) {
    const words = signals.isSameAccess ? run.access : accessWords(reading, sentence);
    startRun(reading, sentence, signals, words ?? run.access);
    return { isRunTalk: true, signals };
  }
  if (signals.isNext && (run.hasFindings || run.furthest > 2) && !sentence.isQuestion)
    reading.announcedRun = sentence.index;
  const isFresh = !run.hasFindings && sentence.index - run.sentence <= DETAILS_SENTENCES + 2;
  if (isFresh && (signals.direction !== null || signals.hasAccess || signals.isZero)) {
    if (
      signals.direction !== null &&
      (run.direction === null ||
        (signals.isPlain && (!run.isDirectionPlain || /\b(no|sorry|first|i mean|correction)\b/.test(sentence.text))) ||
        (!run.isDirectionPlain && run.direction === null))
    ) {
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
  return tokens
    .slice(from, to)
    .map((token) => token.text)
    .join(' ');
}

export function ownRunTalk(reading: Reading, sentence: Sentence): void {
  const run = currentRun(reading);
  if (run) own(reading, sentence.from, sentence.to, { sort: 'run', run: run.n });
}
