/** The labelled lines that are taught from, and the files in `models/` that are made of them. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import type { Words } from '../../shared/schemas/word.ts';
import { type Direction, directions as directionNames } from '../../shared/vocabulary/attributes.ts';
import { modelsFolder } from '../2-words/model-files.ts';
import { type Cue, spreadWords } from '../2-words/read-transcript.ts';
import { type GoldObservation, goldObservationSchema } from '../score/gold.ts';

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

/** A talk and what should be found in it. */
export interface LabelledTalk {
  readonly words: Words;
  readonly findings: GoldObservation[];
  /** When each of its lines begins, in seconds. */
  readonly lineStarts: readonly number[];
  /** Which way each run goes, where that is known. */
  readonly directions: readonly (Direction | null)[];
  /** Whether its findings leave out fields that were said. */
  readonly isPartial: boolean;
}

/** The file of talks whose findings leave fields out. */
const PARTIAL = 'short-talks.txt';

/**
 * Every talk of `fixtures/lessons/talks/`, parted by empty lines: "12.4 15 | roots at=9 degree=light; wye run=2 at=? | what is
 * said", where the numbers before are seconds, `run` is 1 where it is left out, and `at=?` cannot be known. A first line "runs |
 * upstream downstream" may tell which way each run goes.
 */
export function readTalks(isWanted: (name: string) => boolean = () => true): LabelledTalk[] {
  const folder = path.join(lessonsFolder, 'talks');
  return readdirSync(folder)
    .filter(isWanted)
    .sort()
    .flatMap((name) =>
      readFileSync(path.join(folder, name), 'utf8')
        .trim()
        .split(/\n\n+/)
        .map((text) => readTalk(text, name === PARTIAL)),
    );
}

function readTalk(text: string, isPartial: boolean): LabelledTalk {
  const cues: Cue[] = [];
  const findings: GoldObservation[] = [];
  const directions: (Direction | null)[] = [];
  for (const line of text.split('\n')) {
    const [times = '', found = '', ...said] = line.split(' | ');
    if (times === 'runs') {
      directions.push(...found.split(' ').map((way) => (way === '?' ? null : z.enum(directionNames).parse(way))));
      continue;
    }
    const [startSeconds = 0, endSeconds = 0] = times.split(' ').map(Number);
    cues.push({ startSeconds, endSeconds, text: said.join(' | ') });
    if (found !== '-')
      findings.push(...found.split('; ').map((finding) => readFinding(finding, [startSeconds, endSeconds])));
  }
  const seconds = Math.max(...cues.map(({ endSeconds }) => endSeconds));
  return {
    words: {
      schema: 'lineword/words@1',
      recording: { file: 'lesson', sha256: '', seconds },
      hearing: { model: 'transcript', sha256: null },
      words: cues.flatMap(spreadWords),
      lost: [],
    },
    findings,
    directions,
    lineStarts: cues.map(({ startSeconds }) => startSeconds),
    isPartial,
  };
}

function readFinding(finding: string, heard: [number, number]): GoldObservation {
  const [kind, ...given] = finding.split(' ');
  const values = given.map((pair) => {
    const [name = '', value = ''] = pair.split('=');
    return [name, value === '?' ? null : Number.isNaN(Number(value)) ? value : Number(value)];
  });
  return goldObservationSchema.parse({ run: 1, kind, heard, ...Object.fromEntries(values) });
}
