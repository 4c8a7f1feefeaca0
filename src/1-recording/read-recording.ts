/**
 * Stage 1: recording files in, 16 kHz mono samples out.
 *
 * In: the path of one file, or of several that are one inspection in order (times continue from file to file, with no
 * gap put between them, so that a word cut in two by the recorder is whole again).
 * Out: a `Recording`: what it is (name, SHA-256, seconds) and its samples, read piece by piece from a temporary file;
 * memory does not grow with length. Close it when done.
 * Refuses, with one sentence: what is missing, a folder, empty, not media, without sound, cut short, and media when there
 * is no ffmpeg. The extension does not matter: the content decides.
 * Method: 16-bit PCM wav is read here; everything else goes through an ffmpeg process (`find-ffmpeg.ts`).
 */
import { createHash, type Hash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { access, constants, stat } from 'node:fs/promises';
import path from 'node:path';
import type { Words } from '../../shared/schemas/word.ts';
import { decodeMedia } from './decode-media.ts';
import { decodeWav, readWavHeader } from './decode-wav.ts';
import { findFfmpeg } from './find-ffmpeg.ts';
import { RecordingError } from './recording-error.ts';
import { openSampleStore, SAMPLE_RATE, type SampleStore } from './sample-store.ts';

export { SAMPLE_RATE } from './sample-store.ts';

export interface Recording {
  readonly source: Words['recording'];
  readonly seconds: number;
  /** Seconds at which one file ends and the next begins; empty for a single file. */
  readonly joinsAtSeconds: readonly number[];
  /** Samples between -1 and 1 at 16 kHz; clipped to what there is. */
  samples(startSeconds: number, endSeconds: number): Promise<Float32Array>;
  /** All samples in order, in blocks of `blockSeconds` (the last one may be shorter). */
  blocks(blockSeconds?: number): AsyncIterable<Float32Array>;
  /** Gives the temporary file back. */
  close(): Promise<void>;
}

export interface ReadRecordingOptions {
  readonly ffmpegPath?: string;
}

/** @throws RecordingError with one sentence that says what to do. */
export async function readRecording(files: string[], options: ReadRecordingOptions = {}): Promise<Recording> {
  if (files.length === 0) throw new RecordingError('No recording was named: give at least one sound or video file.');
  for (const file of files) await refuseNoFile(file);
  const store = await openSampleStore();
  try {
    const wholeHash = createHash('sha256');
    const parts: Words['recording'][] = [];
    for (const file of files) {
      const before = store.count;
      await decode(file, store, options);
      const seconds = (store.count - before) / SAMPLE_RATE;
      if (seconds === 0) throw new RecordingError(`${file} holds no sound at all: give the recording itself.`);
      parts.push({ file: path.basename(file), sha256: await hashFile(file, wholeHash), seconds });
    }
    return makeRecording(store, describe(parts, wholeHash.digest('hex')));
  } catch (error) {
    await store.close();
    throw error;
  }
}

function describe(parts: Words['recording'][], wholeSha256: string): Words['recording'] {
  const [first] = parts;
  if (parts.length === 1) return first!;
  return {
    file: parts.map((part) => part.file).join(' + '),
    sha256: wholeSha256,
    seconds: parts.reduce((sum, part) => sum + part.seconds, 0),
    parts: parts.map(({ file, sha256, seconds }) => ({ file, sha256, seconds })),
  };
}

function makeRecording(store: SampleStore, source: Words['recording']): Recording {
  const joins: number[] = [];
  for (const part of source.parts ?? []) joins.push((joins.at(-1) ?? 0) + part.seconds);
  return {
    source,
    seconds: store.count / SAMPLE_RATE,
    joinsAtSeconds: joins.slice(0, -1),
    samples: (startSeconds, endSeconds) => store.read(startSeconds * SAMPLE_RATE, endSeconds * SAMPLE_RATE),
    async *blocks(blockSeconds = 30) {
      const step = Math.round(blockSeconds * SAMPLE_RATE);
      for (let from = 0; from < store.count; from += step) yield await store.read(from, from + step);
    },
    close: () => store.close(),
  };
}

async function decode(file: string, store: SampleStore, options: ReadRecordingOptions): Promise<void> {
  const header = await readWavHeader(file);
  if (header) return decodeWav(file, header, store);
  const ffmpeg = findFfmpeg(options.ffmpegPath);
  if (!ffmpeg) {
    throw new RecordingError(
      `${file} needs ffmpeg to be read and none was found: install ffmpeg, set FFMPEG_PATH to it, or give a 16-bit PCM wav.`,
    );
  }
  return decodeMedia(file, ffmpeg.path, store);
}

async function refuseNoFile(file: string): Promise<void> {
  const found = await stat(file).catch(() => null);
  if (!found) throw new RecordingError(`There is no file ${file}: check the name and the folder.`);
  if (found.isDirectory()) throw new RecordingError(`${file} is a folder: name the recording inside it.`);
  if (!found.isFile()) throw new RecordingError(`${file} is not a file that can be read: name a recording.`);
  await access(file, constants.R_OK).catch(() => {
    throw new RecordingError(`${file} may not be read: change its permissions.`);
  });
  if (found.size === 0) throw new RecordingError(`${file} is empty: copy it again from the recorder.`);
}

/** Hashes one file and, along the way, all files as if they were one. */
async function hashFile(file: string, wholeHash: Hash): Promise<string> {
  const hash = createHash('sha256');
  try {
    for await (const piece of createReadStream(file, { highWaterMark: 1 << 20 })) {
      hash.update(piece);
      wholeHash.update(piece);
    }
  } catch (cause) {
    throw new RecordingError(`${file} could not be read (${(cause as Error).message}): check its permissions.`, {
      cause,
    });
  }
  return hash.digest('hex');
}
