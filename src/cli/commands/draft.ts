/** `lineword draft`: a recording, or a transcript of one, becomes words.json and draft.json and a table to read. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import type { Command } from 'commander';
import type { Draft } from '../../../shared/schemas/draft.ts';
import { isTranscript } from '../../2-words/read-transcript.ts';
import { readOwnWords } from '../../5-review/own-words.ts';
import { configFolder } from '../../disk/config-folder.ts';
import { writeWhole } from '../../disk/write-whole.ts';
import { draft as draftFrom } from '../../pipeline.ts';
import { CliError } from '../cli-error.ts';
import { draftTable } from '../draft-table.ts';
import { type Effects, realEffects } from '../effects.ts';
import { asJson, fileNames, folderFor, removeIfEmpty } from '../inspection-folder.ts';
import { obtainWords } from '../obtain-words.ts';
import { respell, showRespelled } from '../own-words.ts';

export interface DraftOptions {
  out?: string;
  json?: true;
  quiet?: true;
  force?: true;
  model?: string;
  ffmpeg?: string;
}

export function register(program: Command): void {
  program
    .command('draft')
    .summary('turn a recording into a findings draft')
    .description(
      'Listens to a narrated recording and drafts its findings: runs, fittings, defects, distances, and a reason wherever it is unsure.\n' +
        'Several files given together are one inspection, in that order. A .vtt or .srt transcript, or a words.json, is read without listening.',
    )
    .argument('<recording...>', 'sound or video files, one transcript, or one words.json')
    .option(
      '-o, --out <folder>',
      'where words.json and draft.json go (default: a folder beside the recording, named after it)',
    )
    .option('--json', 'print the draft as JSON instead of a table')
    .option('-q, --quiet', 'print nothing unless something is wrong')
    .option('-f, --force', 'replace what the folder holds, reviewed or not')
    .option('--model <folder>', 'another recogniser than the one that comes with lineword')
    .option('--ffmpeg <path>', 'the ffmpeg program to read media with')
    .addHelpText(
      'after',
      `
Examples:
  lineword draft alder-court.m4a
  lineword draft part1.mp4 part2.mp4 --out alder-court
  lineword draft alder-court.vtt --json > draft.json`,
    )
    .action((recordings: string[], options: DraftOptions) => runDraft(recordings, options, realEffects));
}

export async function runDraft(recordings: string[], options: DraftOptions, effects: Effects): Promise<void> {
  const folder = resolve(options.out ?? folderFor(recordings[0]!));
  const isNewFolder = !existsSync(folder);
  try {
    const draft = await draftInto(folder, recordings, options, effects);
    if (options.json) effects.print(asJson(draft).trimEnd());
    else if (!options.quiet) {
      const shown = options.out ?? (relative('', folder) || '.');
      effects.print(
        draftTable(draft, { folder: shown, reviewWith: reviewCommand(shown, folder, recordings, effects), effects }),
      );
    }
  } catch (error) {
    if (isNewFolder) await removeIfEmpty(folder);
    throw error;
  }
}

/** What to type next. Review looks for the recording in the folder and beside it; elsewhere it has to be told. */
function reviewCommand(shown: string, folder: string, recordings: string[], effects: Effects): string {
  const nearby = [folder, dirname(folder)];
  const isFound = recordings.every((path) => isTranscript(path) || nearby.includes(dirname(resolve(path))));
  const words = [shown, ...(isFound ? [] : ['--recording', ...recordings])];
  return `${effects.program} review ${words.map(quoteForShell).join(' ')}`;
}

function quoteForShell(word: string): string {
  return /^[\w./:@+-]+$/.test(word) ? word : `"${word}"`;
}

async function draftInto(
  folder: string,
  recordings: string[],
  options: DraftOptions,
  effects: Effects,
): Promise<Draft> {
  const isForced = options.force === true;
  if (!isForced) refuseReviewed(folder);
  const ownWords = await readOwnWords(configFolder());
  const words = await obtainWords(
    recordings,
    { folder, model: options.model, ffmpeg: options.ffmpeg, isQuiet: options.quiet === true, isForced, ownWords },
    effects,
  );
  const respelled = respell(words, ownWords);
  const draft = showRespelled(await draftFrom(respelled.words), respelled.respellings);
  const files = [
    { path: join(folder, fileNames.words), text: asJson(words) },
    { path: join(folder, fileNames.draft), text: asJson(draft) },
  ];
  if (!isForced) for (const file of files) await refuseOther(file.path, file.text);
  for (const file of files) await writeWhole(file.path, file.text);
  return draft;
}

/** A folder in which somebody has begun to decide is left alone. */
function refuseReviewed(folder: string): void {
  if (!existsSync(join(folder, fileNames.decisions))) return;
  throw new CliError(
    `${folder} holds a person's decisions: draft into another folder with --out, or add --force to draft anew under them.`,
  );
}

/** Someone may have changed a file by hand: one that differs from ours is not replaced unasked. */
async function refuseOther(path: string, text: string): Promise<void> {
  if (!existsSync(path) || (await readFile(path, 'utf8')) === text) return;
  throw new CliError(`${path} is there already and differs: write elsewhere with --out, or add --force to replace it.`);
}
