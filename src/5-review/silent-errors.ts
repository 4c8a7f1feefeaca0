/**
 * Listening to what carries no flag: which items are drawn, and what the listens say about silent mistakes.
 * The draw is fixed by the recording and the content of each item, so that nobody picks it and a reload keeps it.
 */
import type { Listening } from '../../shared/schemas/reviewed.ts';

/** How many of `count` unflagged items must be listened to: the square root, at least 3. */
export function drawSize(count: number): number {
  return Math.min(count, Math.max(3, Math.ceil(Math.sqrt(count))));
}

/** Draws `size` of `keys`. The same seed and keys give the same draw, in whatever order they come. */
export function draw(seed: string, keys: readonly string[], size: number): Set<string> {
  const ranked = keys.map((key) => ({ key, rank: scatter(`${seed}|${key}`) }));
  ranked.sort((a, b) => a.rank - b.rank || (a.key < b.key ? -1 : 1));
  return new Set(ranked.slice(0, size).map(({ key }) => key));
}

/** FNV-1a (32 bit) with the closing mix of MurmurHash3: public domain, even enough for a draw, runs in the page. */
function scatter(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/** The live estimate from `listened` listens of which `wrong` found a mistake. */
export function listeningResult(drawn: number, listened: number, wrong: number): Listening {
  if (listened === 0) return { drawn, listened, wrong, share: null, upper95: null };
  return { drawn, listened, wrong, share: wrong / listened, upper95: upperBound95(wrong, listened) };
}

/**
 * One-sided upper 95 % bound of a share (Clopper and Pearson 1934): the share at which seeing `wrong` or fewer of
 * `count` would happen once in twenty times.
 */
export function upperBound95(wrong: number, count: number): number {
  if (wrong >= count) return 1;
  let low = wrong / count;
  let high = 1;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (chanceOfAtMost(wrong, count, middle) > 0.05) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function chanceOfAtMost(wrong: number, count: number, share: number): number {
  let term = (1 - share) ** count;
  let sum = term;
  for (let k = 1; k <= wrong; k++) {
    term *= ((count - k + 1) / k) * (share / (1 - share));
    sum += term;
  }
  return sum;
}
