/**
 * Counts the words of the lessons, and writes the language model that hearing leans on to `models/language-model.json`.
 *
 * npm run teach : after the taught reader, from the same lines in `fixtures/lessons/`. The same lessons give the same file.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { countTalk } from '../2-words/count-talk.ts';
import { LANGUAGE_FILE } from '../2-words/language-model.ts';
import { modelsFolder } from '../2-words/model-files.ts';

const lessonsFolder = 'fixtures/lessons';

const lines = readdirSync(lessonsFolder)
  .filter((name) => name.endsWith('.txt'))
  .sort()
  .flatMap((name) => readFileSync(path.join(lessonsFolder, name), 'utf8').trim().split('\n'));
const said = lines.map((line) => line.split(' | ').slice(1).join(' | '));
const counted = countTalk(said);
const written = `${JSON.stringify(counted)}\n`;
writeFileSync(path.join(modelsFolder(), LANGUAGE_FILE), written);
console.log(`${lines.length} lines; ${Object.keys(counted.words).length} words`);
console.log(`${createHash('sha256').update(written).digest('hex')}  ${LANGUAGE_FILE}`);
