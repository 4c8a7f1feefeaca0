/**
 * Counts the words of the lessons, and writes the language model that hearing leans on to `models/language-model.json`.
 *
 * npm run teach : after the taught reader, from the same lines in `fixtures/lessons/`. The same lessons give the same file.
 */
import { countTalk } from '../2-words/count-talk.ts';
import { LANGUAGE_FILE } from '../2-words/language-model.ts';
import { readLessons, writeModel } from './lessons.ts';

const lines = readLessons();
const counted = countTalk(lines.map(({ said }) => said));
console.log(`${lines.length} lines; ${Object.keys(counted.words).length} words`);
writeModel(LANGUAGE_FILE, counted);
