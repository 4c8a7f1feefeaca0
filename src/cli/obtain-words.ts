/**
 * From what was named on the command line to words. A recording is heard; a .vtt, .srt or words.json is read;
 * a recording that was heard before into the same folder is not heard again.
 */
import { existsSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { OwnWord } from '../../shared/schemas/own-words.ts';
import type { Words } from '../../shared/schemas/word.ts';
import type { Recording } from '../1-recording/read-recording.ts';
import { isTranscript } from '../2-words/read-transcript.ts';
import { checkWritable, writeWhole } from '../disk/write-whole.ts';
import { hear, openRecording, recogniserSha256, transcribed } from '../pipeline.ts';
import { CliError, exitCodes } from './cli-error.ts';
import type { Effects } from './effects.ts';
import { asJson, fileNames, readWords } from './inspection-folder.ts';
import { progressLine } from './progress-line.ts';

export interface ObtainOptions {
  readonly folder: string;
  readonly model: string | undefined;
  readonly ffmpeg: string | undefined;
  readonly isQuiet: boolean;
  readonly isForced: boolean;
  /** The inspector's own vocabulary: what it says is listened for. */
  readonly ownWords: readonly OwnWord[];
}

export async function obtainWords(inputs: string[], options: ObtainOptions, effects: Effects): Promise<Words> {
  const transcript = inputs.find(isTranscript);
  if (transcript === undefined) return wordsOfRecording(inputs, options, effects);
  if (inputs.length > 1) throw new CliError(`${transcript} is a transcript: give it alone, without other files.`);
  const found = await stat(transcript).catch(() => null);
  if (found === null) throw new CliError(`There is no file ${transcript}: check the name and the folder.`);
  if (found.isDirectory()) throw new CliError(`${transcript} is a folder: name the file inside it.`);
  if (found.size === 0) throw new CliError(`${transcript} is empty: give the transcript itself.`);
  return transcribed(transcript);
}

async function wordsOfRecording(files: string[], options: ObtainOptions, effects: Effects): Promise<Words> {
  const recording = await openRecording(files, options.ffmpeg === undefined ? {} : { ffmpegPath: options.ffmpeg });
  const path = join(options.folder, fileNames.words);
  try {
    const before = await wordsHeardBefore(path, recording.source.sha256, options);
    if (before !== null) {
      if (!options.isQuiet) effects.note(`Heard before: going on from ${path}.\n`);
      return before;
    }
    await checkWritable(options.folder);
    const words = await listen(recording, options, effects);
    // At once: what follows may refuse, and hearing takes longest.
    await writeWhole(path, asJson(words));
    return words;
  } finally {
    await recording.close();
  }
}

async function listen(recording: Recording, options: ObtainOptions, effects: Effects): Promise<Words> {
  const progress = progressLine('Listening', effects);
  const update = options.isQuiet ? () => {} : progress.update;
  update(0, recording.seconds);
  try {
    return await effects.interruptible((signal) =>
      hear(recording, {
        keepIn: options.folder,
        signal,
        onProgress: update,
        ownWords: options.ownWords.map((entry) => entry.said),
        ...(options.model !== undefined && { modelFolder: options.model }),
      }),
    );
  } catch (error) {
    if (!(error instanceof Error && error.name === 'AbortError')) throw error;
    throw new CliError('Stopped: run the same command again and it goes on from here.', {
      exitCode: exitCodes.interrupted,
    });
  } finally {
    progress.end();
  }
}

/**
 * The words in the folder, when they were heard by this recogniser in this very recording; null when there are none.
 * Throws CliError when they are of something else.
 */
async function wordsHeardBefore(path: string, sha256: string, options: ObtainOptions): Promise<Words | null> {
  if (options.isForced || !existsSync(path)) return null;
  const words = await readWords(path);
  const instead = 'choose another folder with --out, or add --force to replace it';
  if (words.recording.sha256 !== sha256) {
    throw new CliError(`${options.folder} already holds another recording (${words.recording.file}): ${instead}.`);
  }
  if (words.hearing.sha256 !== (await recogniserSha256(options.model))) {
    throw new CliError(`${path} was heard by another recogniser (${words.hearing.model}): ${instead}.`);
  }
  return words;
}
