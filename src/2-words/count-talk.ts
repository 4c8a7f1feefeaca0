/** Counts the words of talk, its pairs and its triples, for the language model that hearing leans on. */
import { numberWords } from './join-numbers.ts';

/** Stands before the first and after the last word of a sentence. */
export const SENTENCE_EDGE = '.';
/** Every number is the same number, however it is printed and however many words it takes. */
const NUMBER = '#';
/** Of 140,000 triples five in six were met once: they would make the file several times as large. */
const FEWEST_TRIPLES = 2;

export interface CountedTalk {
  readonly words: Readonly<Record<string, number>>;
  /** How often each word followed a word. */
  readonly pairs: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** The same after two words, joined by a space; only what was met twice. */
  readonly triples: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

/** The words of a printed text in one form, sentence ends among them; a number that goes on after `before` is left out. */
export function plainWords(text: string, before?: string): string[] {
  const out: string[] = [];
  for (const [printed, stop] of text
    .toLowerCase()
    .replaceAll('’', "'")
    .matchAll(/[a-z0-9']+|([.?!])(?=\s|$)/g)) {
    const bare = printed.replace(/^'+|'+$/g, '');
    const word = stop ? SENTENCE_EDGE : /^\d/.test(bare) || numberWords.has(bare) ? NUMBER : bare;
    const last = out.at(-1) ?? before;
    if (word && !(word === last && (word === NUMBER || word === SENTENCE_EDGE))) out.push(word);
  }
  return out;
}

/** @param texts sentences or lines; what stands in one is not counted as following the last word of another. */
export function countTalk(texts: readonly string[]): CountedTalk {
  const words = new Map<string, number>();
  const pairs = new Map<string, Map<string, number>>();
  const triples = new Map<string, Map<string, number>>();
  for (const text of texts) {
    const line = [SENTENCE_EDGE, ...plainWords(joinLetters(text), SENTENCE_EDGE)];
    if (line.at(-1) !== SENTENCE_EDGE) line.push(SENTENCE_EDGE);
    for (const [index, word] of line.entries()) {
      words.set(word, (words.get(word) ?? 0) + 1);
      const second = line[index - 1];
      const first = line[index - 2];
      if (second) count(pairs, second, word);
      if (second && first) count(triples, `${first} ${second}`, word);
    }
  }
  return { words: inOrder(words), pairs: nested(pairs, 1), triples: nested(triples, FEWEST_TRIPLES) };
}

/** "P V C" is printed "PVC" by the recogniser. */
const joinLetters = (text: string): string =>
  text.replace(/\b[a-z]( [a-z]){2,3}\b/gi, (letters) => letters.replaceAll(' ', ''));

function count(into: Map<string, Map<string, number>>, before: string, word: string): void {
  const next = into.get(before) ?? new Map<string, number>();
  into.set(before, next.set(word, (next.get(word) ?? 0) + 1));
}

const inOrder = (counts: ReadonlyMap<string, number>): Record<string, number> =>
  Object.fromEntries([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));

function nested(counts: ReadonlyMap<string, ReadonlyMap<string, number>>, fewest: number) {
  const kept = [...counts].map(
    ([before, next]) => [before, inOrder(new Map([...next].filter(([, met]) => met >= fewest)))] as const,
  );
  return Object.fromEntries(
    kept.filter(([, next]) => Object.keys(next).length > 0).sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}
