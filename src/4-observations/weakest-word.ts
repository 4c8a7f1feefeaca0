/** How weakly the words of a stretch of talk were heard. */
import type { Reading } from './reading.ts';

/** A word heard with less than this is not sure. */
export const WEAK_WORD = 0.5;

/** The least probability of the words from one token to another; 1 where none is known. */
export const weakestWord = ({ phrases }: Reading, { from, to }: { from: number; to: number }): number =>
  Math.min(1, ...phrases.tokens.slice(from, to).map(({ probability }) => probability ?? 1));
