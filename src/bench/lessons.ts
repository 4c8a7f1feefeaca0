/** The labelled lines that are taught from, and the files in `models/` that are made of them. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { modelsFolder } from '../2-words/model-files.ts';

const lessonsFolder = 'fixtures/lessons';

export interface LessonLine {
  /** The kinds of finding the line holds. */
  readonly finds: readonly string[];
  readonly said: string;
}

/** Every line of `fixtures/lessons`: "roots; open-joint | at nine there's hair in a gap", or "- | nothing here". */
export function readLessons(): LessonLine[] {
  return readdirSync(lessonsFolder)
    .filter((name) => name.endsWith('.txt'))
    .sort()
    .flatMap((name) => readFileSync(path.join(lessonsFolder, name), 'utf8').trim().split('\n').map(readLine));
}

function readLine(line: string): LessonLine {
  const [found = '', ...said] = line.split(' | ');
  return { finds: found === '-' ? [] : found.split('; '), said: said.join(' | ') };
}

/** Writes what was made of the lessons, and prints its sum as SHA256SUMS wants it. */
export function writeModel(name: string, made: unknown): void {
  const written = `${JSON.stringify(made)}\n`;
  writeFileSync(path.join(modelsFolder(), name), written);
  console.log(`${createHash('sha256').update(written).digest('hex')}  ${name}`);
}
