/**
 * From what was named on the command line to words. A recording is heard; a .vtt, .srt or words.json is read;
 * a recording that was heard before into the same folder is not heard again.
 */
import { existsSync } from 'node:fs';
import { readFile, rm, rmdir, stat } from 'node:fs/promises';
import { extname, join } from 'node:path';
import type { Words } from '../../shared/schemas/word.ts';
import type { Recording } from '../1-recording/read-recording.ts';
import { checkWritable } from '../disk/write-whole.ts';
import { hear, openRecording, transcribed } from '../pipeline.ts';
import { CliError } from './cli-error.ts';
import type { Effects } from './effects.ts';
import { fileNames, readWords } from './inspection-folder.ts';
import { progressLine } from './progress-line.ts';

export interface ObtainOptions {
  readonly folder: string;
  readonly model: string | undefined;
  readonly ffmpeg: string | undefined;
  readonly isQuiet: boolean;
  readonly isForced: boolean;
}

const textEndings = new Set(['.vtt', '.srt', '.json']);

export async function obtainWords(inputs: string[], options: ObtainOptions, effects: Effects): Promise<Words> {
  const texts = inputs.filter((input) => textEndings.has(extname(input).toLowerCase()));
  if (texts.length === 0) return wordsOfRecording(inputs, options, effects);
  const [only] = inputs;
  if (only === undefined || inputs.length > 1) {
    throw new CliError(`${texts[0]} is a transcript: give it alone, without other files.`);
  }
  await checkText(only);
  return extname(only).toLowerCase() === '.json' ? readWords(only) : transcribed(only);
}

async function wordsOfRecording(files: string[], options: ObtainOptions, effects: Effects): Promise<Words> {
  const recording = await openRecording(files, options.ffmpeg === undefined ? {} : { ffmpegPath: options.ffmpeg });
  try {
    const before = await wordsHeardBefore(options, recording.source.sha256);
    if (before !== null) {
      if (!options.isQuiet) effects.note(`Heard before: going on from ${join(options.folder, fileNames.words)}.\n`);
      return before;
    }
    await checkWritable(options.folder);
    const words = await listen(recording, options, effects);
    if (words.words.length === 0 && words.lost.length === 0) {
      await dropHeardPieces(options.folder);
      await rmdir(options.folder).catch(() => {}); // Only when it is empty: then it was made for nothing.
      throw new CliError(
        `No speech was found in ${recording.source.file}: check that the microphone was on and that this is the narrated recording.`,
      );
    }
    return words;
  } finally {
    await recording.close();
  }
}

async function listen(recording: Recording, options: ObtainOptions, effects: Effects): Promise<Words> {
  const progress = progressLine('Listening', effects);
  try {
    return await effects.interruptible((signal) =>
      hear(recording, {
        keepIn: join(options.folder, fileNames.heard),
        signal,
        ...(options.model !== undefined && { modelFolder: options.model }),
        ...(!options.isQuiet && {
          onProgress: ({ doneSeconds, totalSeconds }) => progress.update(doneSeconds, totalSeconds),
        }),
      }),
    );
  } finally {
    progress.end();
  }
}

/** The words in the folder, when they came from this very recording. Throws CliError when they came from another. */
async function wordsHeardBefore(options: ObtainOptions, sha256: string): Promise<Words | null> {
  const path = join(options.folder, fileNames.words);
  if (options.isForced || !existsSync(path)) return null;
  const words = await readWords(path);
  if (words.recording.sha256 !== sha256) {
    throw new CliError(
      `${options.folder} already holds another recording (${words.recording.file}): choose another folder with --out, or add --force to replace it.`,
    );
  }
  return words;
}

/** Drops what hearing kept on the way, once the words are safe on the disk. */
export async function dropHeardPieces(folder: string): Promise<void> {
  await rm(join(folder, fileNames.heard), { recursive: true, force: true });
}

async function checkText(path: string): Promise<void> {
  const found = await stat(path).catch(() => null);
  if (found === null) throw new CliError(`There is no file ${path}: check the name and the folder.`);
  if (found.isDirectory()) throw new CliError(`${path} is a folder: name the file inside it.`);
  const text = await readFile(path, 'utf8');
  if (text.trim() === '') throw new CliError(`${path} is empty: give the transcript itself.`);
}
