/**
 * Looks for speech that no word covers: the recogniser sometimes ends early or leaps over a sentence, and nothing in its
 * text tells. The voice detector heard somebody there, so the stretch is heard again for itself, and reported when that
 * gives nothing either.
 */
import type { Word } from '../../shared/schemas/word.ts';
import type { Span } from './find-speech.ts';

/** A stretch with less speech than this may be a cough or a slow word. */
const LEAST_SPEECH_SECONDS = 1.2;
/** What a slow speaker needs for a word: a start and something for each letter. */
const slowSeconds = (text: string): number => 0.7 + 0.13 * text.length;

/** Stretches inside `window` where speech was detected and no word lies; in seconds of the recording. */
export function findGaps(words: readonly Word[], spans: readonly Span[], window: Span): Span[] {
  const edges: Span[] = [];
  let from = window.startSeconds;
  for (const word of words) {
    edges.push({ startSeconds: from, endSeconds: word.startSeconds });
    // A word cannot last as long as some are timed: what lies behind it belongs to something unheard.
    from = Math.min(word.endSeconds, word.startSeconds + slowSeconds(word.text));
  }
  edges.push({ startSeconds: from, endSeconds: window.endSeconds });
  return edges.flatMap((edge) => {
    const inside = spans
      .map((span) => ({
        startSeconds: Math.max(span.startSeconds, edge.startSeconds),
        endSeconds: Math.min(span.endSeconds, edge.endSeconds),
      }))
      .filter((span) => span.endSeconds > span.startSeconds);
    const speech = inside.reduce((sum, span) => sum + span.endSeconds - span.startSeconds, 0);
    return speech >= LEAST_SPEECH_SECONDS
      ? [{ startSeconds: inside[0]!.startSeconds, endSeconds: inside.at(-1)!.endSeconds }]
      : [];
  });
}
