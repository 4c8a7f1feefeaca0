/**
 * `npm run score -- FOLDER`: drafts every narration in a folder that has `NAME.gold.json` beside it and prints how
 * the drafts compare. From the transcript (NAME.vtt) where there is one, so that reading is measured apart from
 * hearing; with --audio from the recording.
 */
import { existsSync, readdirSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Command } from 'commander';
import type { Words } from '../../shared/schemas/word.ts';
import { CliError, describeError } from '../cli/cli-error.ts';
import { asJson, readDraft, readWords } from '../cli/inspection-folder.ts';
import { writeWhole } from '../disk/write-whole.ts';
import { draft, hear, openRecording, transcribed } from '../pipeline.ts';
import { type Claim, compareWithGold } from './compare.ts';
import { narrationsIn, readGold } from './narrations.ts';
import { reliabilityOf } from './reliability.ts';
import { addUp, type Row, reliabilityTable, scoreTable, summarize } from './summary.ts';

interface ScoreOptions {
  audio?: true;
  drafts?: string;
  out?: string;
  show?: string;
  json?: string;
}

const notMedia = /\.(vtt|srt|json|txt|md|ya?ml)$/i;

new Command('score')
  .argument('<folder>', 'narrations, each with NAME.gold.json beside it')
  .option('--audio', 'listen to the recordings instead of reading the transcripts')
  .option('--drafts <folder>', 'score the NAME.draft.json there instead of drafting')
  .option('--out <folder>', 'keep drafts and heard words here; words found here are not heard again')
  .option('--show <name>', 'list what was missed, invented or wrong in this narration, or in "all"')
  .option('--json <file>', 'write the figures to a file too')
  .action(score)
  .parseAsync()
  .catch((error: unknown) => {
    const { text, exitCode } = describeError(error);
    process.stderr.write(`${text}\n`);
    process.exitCode = exitCode;
  });

async function score(folder: string, options: ScoreOptions): Promise<void> {
  if (!existsSync(folder)) throw new CliError(`There is no folder ${folder}: give one with narrations and their gold.`);
  const ids = narrationsIn(folder);
  if (ids.length === 0)
    throw new CliError(`${folder} holds no NAME.gold.json: give a folder of narrations with their gold.`);
  const out = options.out ?? (await mkdtemp(join(tmpdir(), 'lineword-score-')));
  const rows: Row[] = [];
  const claims: Claim[] = [];
  try {
    for (const id of ids) {
      const gold = await readGold(folder, id);
      const made = options.drafts ? await draftThere(options.drafts, id) : await draftNow(folder, id, out, options);
      const compared = compareWithGold(gold, made);
      rows.push({ id, missing: made === null, counts: compared.counts });
      claims.push(...compared.claims);
      if (options.show === id || options.show === 'all')
        for (const note of compared.notes) console.log(`${id}: ${note}`);
    }
  } finally {
    if (options.out === undefined) await rm(out, { recursive: true, force: true });
  }
  const reliability = reliabilityOf(claims);
  console.log(`${scoreTable(rows)}\n\n${reliabilityTable(reliability)}`);
  if (options.json === undefined) return;
  const total = addUp(rows);
  const figures = {
    all: summarize(total),
    total,
    reliability,
    rows: rows.map((row) => ({ id: row.id, missing: row.missing, ...summarize(row.counts), counts: row.counts })),
  };
  await writeWhole(options.json, `${JSON.stringify(figures, null, 1)}\n`);
}

async function draftThere(folder: string, id: string) {
  const path = join(folder, `${id}.draft.json`);
  return existsSync(path) ? readDraft(path) : null;
}

async function draftNow(folder: string, id: string, out: string, options: ScoreOptions) {
  const words = await wordsOf(folder, id, out, options.audio === true);
  if (words === null) return null;
  const made = await draft(words);
  await writeWhole(join(out, `${id}.draft.json`), asJson(made));
  return made;
}

async function wordsOf(folder: string, id: string, out: string, fromAudio: boolean): Promise<Words | null> {
  const files = readdirSync(folder).filter((file) => file.startsWith(`${id}.`));
  const transcript = files.find((file) => /\.(vtt|srt)$/i.test(file));
  if (transcript !== undefined && !fromAudio) return transcribed(join(folder, transcript));
  const media = files.find((file) => !notMedia.test(file));
  if (media === undefined) return null;
  const kept = join(out, `${id}.words.json`);
  if (existsSync(kept)) return readWords(kept);
  const recording = await openRecording([join(folder, media)]);
  try {
    const words = await hear(recording, { keepIn: join(out, `${id}.heard`) });
    await writeWhole(kept, asJson(words));
    return words;
  } finally {
    await recording.close();
  }
}
