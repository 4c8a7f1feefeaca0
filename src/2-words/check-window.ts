/**
 * Signs that a window was not heard but made up, or only half heard. The recogniser is sure of its loops, so
 * probabilities do not find them.
 */

import type { Window } from './cut-windows.ts';
import type { Decoded } from './decode-beam.ts';
import type { TokenTable } from './token-table.ts';

/** The same few tokens over and over: at least four times, and twelve tokens long. */
export function isLooping(tokens: readonly number[]): boolean {
  const length = tokens.length;
  for (let period = 1; period <= 12; period++) {
    const needed = Math.max(4 * period, 12);
    if (length < needed) continue;
    let repeated = 0;
    while (repeated < needed - period && tokens[length - 1 - repeated] === tokens[length - 1 - repeated - period])
      repeated++;
    if (repeated >= needed - period) return true;
  }
  return false;
}

/** Nobody talks faster than this for seconds on end (an auctioneer reaches five words a second). */
const FASTEST_WORDS_PER_SECOND = 6.5;
/** Slow talk has at least this many words for each second in which the detector hears speech. */
const SLOWEST_WORDS_PER_SECOND = 0.7;

export type WindowFault = 'loop' | 'too fast' | 'the prompt' | 'too little' | 'broken off' | 'unlikely';

/** What is wrong with a window's text, or `null`. */
export function findFault(
  decoded: Decoded,
  window: Window,
  tokens: TokenTable,
  promptText: string,
): WindowFault | null {
  if (decoded.isLoop) return 'loop';
  if (!decoded.isComplete) return 'broken off';
  const text = tokens.decode(decoded.tokens);
  const words = text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));
  if (words.length > FASTEST_WORDS_PER_SECOND * window.speechSeconds + 4) return 'too fast';
  if (words.length >= 4 && plain(promptText).includes(plain(text))) return 'the prompt';
  const perToken = average(decoded.logProbs);
  if (perToken < -1.6 || (perToken < -1 && decoded.noSpeech > 0.6)) return 'unlikely';
  if (window.speechSeconds > 3 && words.length < SLOWEST_WORDS_PER_SECOND * window.speechSeconds) return 'too little';
  return null;
}

export const average = (values: readonly number[]): number =>
  values.length === 0 ? Number.NEGATIVE_INFINITY : values.reduce((sum, value) => sum + value, 0) / values.length;

const plain = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N} ]/gu, '')
    .replace(/\s+/g, ' ')
    .trim()} `;
