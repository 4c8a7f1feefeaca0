/**
 * Brings names that are said letter by letter to one word: "a BS" and "P V C" are how the recogniser sometimes prints ABS
 * and PVC. Which names there are comes from the vocabulary; what was printed stays in `printed`.
 */
import type { Word } from '../../shared/schemas/word.ts';
import { merge } from './join-numbers.ts';
import { tradePhrases } from './trade-phrases.ts';

/** Letters of one name follow each other at once. */
const LONGEST_GAP_SECONDS = 0.4;

let known: ReadonlySet<string> | null = null;

export function joinLetters(words: readonly Word[]): Word[] {
  known ??= new Set(tradePhrases().filter((phrase) => /^[A-Z]{3,}$/.test(phrase)));
  const out: Word[] = [];
  for (let at = 0; at < words.length; ) {
    const found = findName(words, at, known);
    out.push(found ? merge(words.slice(at, at + found.count), found.name) : words[at]!);
    at += found?.count ?? 1;
  }
  return out;
}

function findName(
  words: readonly Word[],
  at: number,
  names: ReadonlySet<string>,
): { count: number; name: string } | null {
  let name = '';
  for (let count = 1; at + count <= words.length; count++) {
    const word = words[at + count - 1]!;
    const previous = words[at + count - 2];
    if (count > 1 && previous && word.startSeconds - previous.endSeconds > LONGEST_GAP_SECONDS) return null;
    // Letters are printed in capitals; only "a" looks like a word of its own.
    const letters = /^([A-Z]{1,4}|a)[,.;:?!]*$/.exec(word.text)?.[1];
    if (!letters) return null;
    name += letters.toUpperCase();
    if (count > 1 && names.has(name)) return { count, name };
    if (letters !== word.text || name.length > 4) return null;
  }
  return null;
}
