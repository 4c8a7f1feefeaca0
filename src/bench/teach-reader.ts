/**
 * Teaches the reader that stands beside the rules, and writes its weights to `models/taught-reader.json`.
 *
 * npm run teach : from the labelled lines in `fixtures/lessons/` and from the example sentences of every kind. An example
 * is labelled for its own kind only; a line for all. The same lessons give the same file.
 */
import type { Kind } from '../../shared/vocabulary/kind.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { findPhrases } from '../3-phrases/find-phrases.ts';
import { plainWords, wordsBetween } from '../4-observations/taught/features.ts';
import { TAUGHT_FILE } from '../4-observations/taught/read-taught.ts';
import { type Lesson, teach } from '../4-observations/taught/teach.ts';
import { readLessons, writeModel } from './lessons.ts';

const wordsOf = (said: string): string[] => {
  const phrases = findPhrases(
    said.split(/\s+/).map((text, at) => ({
      text,
      startSeconds: at * 0.4,
      endSeconds: at * 0.4 + 0.3,
      probability: null,
    })),
  );
  return wordsBetween(plainWords(phrases), 0, phrases.tokens.length);
};

const lines = readLessons().map(({ finds, said }): Lesson => ({ words: wordsOf(said), finds, about: null }));
const examples = (kinds as readonly Kind[]).flatMap(({ name, examples: { says, unsure = [], notYet = [], never } }) => [
  ...[...says, ...unsure, ...notYet].map(
    ({ text }): Lesson => ({ words: wordsOf(text), finds: [name], about: [name] }),
  ),
  ...never.map((text): Lesson => ({ words: wordsOf(text), finds: [], about: [name] })),
]);
const taught = teach(
  [...lines, ...examples],
  kinds.map(({ name }) => name),
);
console.log(`${lines.length} lines and ${examples.length} examples; ${Object.keys(taught.weights).length} features`);
writeModel(TAUGHT_FILE, taught);
