/**
 * What is said in one breath: people stop longer between two statements than inside one. How long is long differs from voice
 * to voice, so it is measured on the talk itself.
 */
import type { Token } from '../3-phrases/token/token.ts';
import type { Sentence } from './sentence.ts';

/** A stop this much longer, in seconds, than the speaker's short ones ends a breath. */
const LONGER_SECONDS = 0.3;
/** Which of the stops, in order of length, is taken for a short one. */
const SHORT_QUANTILE = 0.1;

/** For each sentence the number of the breath it belongs to. */
export function breathsOf(sentences: readonly Sentence[], tokens: readonly Token[]): readonly number[] {
  const stops = sentences.slice(1).map((sentence) => tokens[sentence.from]?.pauseBeforeSeconds ?? 0);
  const sorted = [...stops].sort((a, b) => a - b);
  const long = (sorted[Math.floor(sorted.length * SHORT_QUANTILE)] ?? 0) + LONGER_SECONDS;
  let breath = 0;
  return sentences.map((_, index) => {
    if (index > 0 && stops[index - 1]! >= long) breath += 1;
    return breath;
  });
}
