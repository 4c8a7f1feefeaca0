/**
 * What the taught reader sees of a sentence: its words, each two that follow one another, and the pieces of its words, so
 * that "cracked" is near "crack" and a word heard half wrong still counts. Every number is the same number.
 */
import type { Phrases } from '../../3-phrases/find-phrases.ts';

/** Stands for every number. */
export const NUMBER = '#';
const START = '^';
const END = '$';
/** Pieces of words, in letters. The edges of a word count as letters. */
const SHORTEST_PIECE = 3;
const LONGEST_PIECE = 5;

/** For each token of a talk its word; a number is one sign where it begins, and null where it goes on. */
export function plainWords({ tokens, numbers }: Pick<Phrases, 'tokens' | 'numbers'>): (string | null)[] {
  const words: (string | null)[] = tokens.map(({ text }) => text);
  for (const { from, to } of numbers) words.fill(null, from, to).fill(NUMBER, from, from + 1);
  return words;
}

/** The words of a stretch of tokens. */
export const wordsBetween = (words: readonly (string | null)[], from: number, to: number): string[] =>
  words.slice(from, to).filter((word) => word !== null);

/** A word and its pieces. */
export function featuresOfWord(word: string): string[] {
  const features = [word];
  const marked = `_${word}_`;
  for (let size = SHORTEST_PIECE; size <= LONGEST_PIECE; size += 1) {
    for (let at = 0; at + size <= marked.length; at += 1) features.push(`~${marked.slice(at, at + size)}`);
  }
  return features;
}

/** Each two words that follow one another, the edges of the sentence among them. */
export const pairsOf = (words: readonly string[]): string[] =>
  [...words, END].map((word, index) => `${index === 0 ? START : words[index - 1]} ${word}`);
