/**
 * Cuts the speech into windows that the recogniser hears one at a time. Windows never overlap and are never stitched.
 * A window holds at most `LONGEST_SECONDS` of sound; it ends in the longest pause near its end, or, when there is none,
 * where speech is least likely. Long pauses inside a window are shortened: the recogniser gains context, not silence.
 */
import { FRAME_SECONDS, type Span, type Speech } from './find-speech.ts';

export const LONGEST_SECONDS = 26;
/** Sound kept before and after speech, since the detector is late for soft sounds. */
const MARGIN_SECONDS = 0.25;
/** A pause longer than this is shortened to it. */
const LONGEST_PAUSE_SECONDS = 1.2;
/** Look for the place to cut in the last part of a full window. */
const SHORTEST_FULL_SECONDS = 12;
/** A longer pause always ends the window. */
const SEPARATING_PAUSE_SECONDS = 20;

export interface Window {
  /** Pieces of the recording, in order, that are heard as one sound. */
  readonly pieces: readonly Span[];
  readonly startSeconds: number;
  readonly endSeconds: number;
  /** Sound that is heard, pauses shortened. */
  readonly seconds: number;
  /** Seconds of detected speech inside. */
  readonly speechSeconds: number;
  /** Whether the window begins or ends in the middle of speech. */
  readonly isCutAtStart: boolean;
  readonly isCutAtEnd: boolean;
}

interface Stretch extends Span {
  /** Silence kept before and after: never more than half the pause, so that neighbours do not overlap. */
  readonly leadSeconds: number;
  readonly trailSeconds: number;
  readonly isCutAtStart: boolean;
  readonly isCutAtEnd: boolean;
}

export function cutWindows(speech: Speech, seconds: number, longestSeconds = LONGEST_SECONDS): Window[] {
  const stretches = speech.spans.flatMap((span, index) => {
    const previous = speech.spans[index - 1]?.endSeconds ?? -1;
    const next = speech.spans[index + 1]?.startSeconds ?? seconds + 1;
    const leadSeconds = Math.min(MARGIN_SECONDS, span.startSeconds, (span.startSeconds - previous) / 2);
    const trailSeconds = Math.max(0, Math.min(MARGIN_SECONDS, seconds - span.endSeconds, (next - span.endSeconds) / 2));
    return splitLong({ ...span, leadSeconds, trailSeconds }, speech.probabilities, longestSeconds);
  });
  const windows: Window[] = [];
  let held: Stretch[] = [];
  for (const stretch of stretches) {
    const previous = held.at(-1);
    if (previous && stretch.startSeconds - previous.endSeconds > SEPARATING_PAUSE_SECONDS) {
      windows.push(makeWindow(held));
      held = [];
    }
    while (held.length > 0 && heardSeconds([...held, stretch]) > longestSeconds) {
      const count = bestCut(held, stretch);
      windows.push(makeWindow(held.slice(0, count)));
      held = held.slice(count);
    }
    held.push(stretch);
  }
  if (held.length > 0) windows.push(makeWindow(held));
  return windows;
}

/** How many of the held stretches to give to the window: up to the longest pause in its later part. */
function bestCut(held: readonly Stretch[], next: Stretch): number {
  let best = held.length;
  let bestScore = -1;
  for (let count = 1; count <= held.length; count++) {
    const after = held[count] ?? next;
    const pause = after.startSeconds - held[count - 1]!.endSeconds;
    const length = heardSeconds(held.slice(0, count));
    if (length < SHORTEST_FULL_SECONDS && count < held.length) continue;
    // A pause beyond half a second is as good as any; then the fuller window wins.
    const score = Math.min(pause, 0.5) * 4 + length / 26;
    if (score > bestScore) {
      bestScore = score;
      best = count;
    }
  }
  return best;
}

/** Splits speech without pauses at the frames least likely to be speech; at a cut nothing is heard twice. */
function splitLong(
  span: Omit<Stretch, 'isCutAtStart' | 'isCutAtEnd'>,
  probabilities: Float32Array,
  longestSeconds: number,
): Stretch[] {
  const stretches: Stretch[] = [];
  const room = longestSeconds - 2 * MARGIN_SECONDS;
  let start = span.startSeconds;
  let head = { startSeconds: start, leadSeconds: span.leadSeconds, isCutAtStart: false };
  while (span.endSeconds - start > room) {
    const latest = Math.min(start + room, span.endSeconds - 1);
    const cut = leastLikelySpeech(probabilities, start + SHORTEST_FULL_SECONDS, latest);
    stretches.push({ ...head, endSeconds: cut, trailSeconds: 0, isCutAtEnd: true });
    start = cut;
    head = { startSeconds: cut, leadSeconds: 0, isCutAtStart: true };
  }
  stretches.push({ ...head, endSeconds: span.endSeconds, trailSeconds: span.trailSeconds, isCutAtEnd: false });
  return stretches;
}

function leastLikelySpeech(probabilities: Float32Array, fromSeconds: number, toSeconds: number): number {
  const from = Math.ceil(fromSeconds / FRAME_SECONDS);
  const to = Math.floor(toSeconds / FRAME_SECONDS);
  let best = to;
  let lowest = Number.POSITIVE_INFINITY;
  for (let frame = from; frame <= to; frame++) {
    // A cut wants quiet on both sides of it, so the neighbours count.
    const around = (probabilities[frame - 1] ?? 0) + 2 * (probabilities[frame] ?? 0) + (probabilities[frame + 1] ?? 0);
    if (around <= lowest) {
      lowest = around;
      best = frame;
    }
  }
  return (best + 0.5) * FRAME_SECONDS;
}

function makeWindow(stretches: readonly Stretch[]): Window {
  const pieces = makePieces(stretches);
  return {
    pieces,
    startSeconds: pieces[0]!.startSeconds,
    endSeconds: pieces.at(-1)!.endSeconds,
    seconds: pieces.reduce((sum, piece) => sum + piece.endSeconds - piece.startSeconds, 0),
    speechSeconds: stretches.reduce((sum, stretch) => sum + stretch.endSeconds - stretch.startSeconds, 0),
    isCutAtStart: stretches[0]!.isCutAtStart,
    isCutAtEnd: stretches.at(-1)!.isCutAtEnd,
  };
}

/** Stretches with their margins; a short pause is kept whole, of a long one only its ends. */
function makePieces(stretches: readonly Stretch[]): Span[] {
  const pieces: Span[] = [];
  for (const [index, stretch] of stretches.entries()) {
    const startSeconds = stretch.startSeconds - stretch.leadSeconds;
    const endSeconds = stretch.endSeconds + stretch.trailSeconds;
    const previous = stretches[index - 1];
    const last = pieces.at(-1);
    if (!previous || !last) pieces.push({ startSeconds, endSeconds });
    else if (stretch.startSeconds - previous.endSeconds <= LONGEST_PAUSE_SECONDS) {
      pieces[pieces.length - 1] = { ...last, endSeconds };
    } else {
      const keep = LONGEST_PAUSE_SECONDS / 2;
      pieces[pieces.length - 1] = { ...last, endSeconds: previous.endSeconds + keep };
      pieces.push({ startSeconds: stretch.startSeconds - keep, endSeconds });
    }
  }
  return pieces;
}

const heardSeconds = (stretches: readonly Stretch[]): number =>
  makePieces(stretches).reduce((sum, piece) => sum + piece.endSeconds - piece.startSeconds, 0);

/** From seconds inside a window to seconds of the recording. */
export function toRecordingSeconds(window: Window, insideSeconds: number): number {
  let before = 0;
  for (const piece of window.pieces) {
    const length = piece.endSeconds - piece.startSeconds;
    if (insideSeconds <= before + length) return piece.startSeconds + Math.max(0, insideSeconds - before);
    before += length;
  }
  return window.endSeconds;
}
