/**
 * Reads 16-bit PCM wav with no other program. `wavefile` judges the header; it would want the whole file in memory for
 * the samples, so those are streamed: 16-bit PCM needs no decoding beyond mixing the channels down.
 */
import { type FileHandle, open } from 'node:fs/promises';
import wavefile from 'wavefile';
import { RecordingError } from './recording-error.ts';
import { makeResampler } from './resample.ts';
import type { SampleStore } from './sample-store.ts';

const PCM = 1;
const EXTENSIBLE = 0xfffe;
const BLOCK_FRAMES = 1 << 16;
/** A recorder that never went back to fill in the length leaves one of these. */
const UNKNOWN_SIZES = new Set([0, 0xffffffff, 0x7fffffff, 0xfffffffe]);

export interface WavHeader {
  readonly channels: number;
  readonly sampleRate: number;
  readonly dataStart: number;
  /** Bytes of samples that the header promises; `null` when it does not say. */
  readonly dataBytes: number | null;
}

/** The header of a 16-bit PCM wav, or `null` when the file is anything else (then ffmpeg is asked). */
export async function readWavHeader(filePath: string): Promise<WavHeader | null> {
  const file = await open(filePath, 'r');
  try {
    const start = await readBytes(file, 0, 12);
    if (start.length < 12 || text(start, 0) !== 'RIFF' || text(start, 8) !== 'WAVE') return null;
    const { size } = await file.stat();
    let format: Buffer | null = null;
    for (let at = 12; at + 8 <= size; ) {
      const chunk = await readBytes(file, at, 8);
      const bytes = chunk.readUInt32LE(4);
      if (text(chunk, 0) === 'fmt ') format = await readBytes(file, at, 8 + Math.min(bytes, 64));
      if (text(chunk, 0) === 'data') {
        return format ? judgeFormat(format, at + 8, UNKNOWN_SIZES.has(bytes) ? null : bytes) : null;
      }
      at += 8 + bytes + (bytes % 2);
    }
    return null;
  } finally {
    await file.close();
  }
}

function judgeFormat(format: Buffer, dataStart: number, dataBytes: number | null): WavHeader | null {
  const wav = new wavefile.WaveFile();
  const empty = Buffer.concat([Buffer.from('RIFF\0\0\0\0WAVE'), format, Buffer.from('data\0\0\0\0')]);
  empty.writeUInt32LE(empty.length - 8, 4);
  try {
    wav.fromBuffer(empty);
  } catch {
    return null;
  }
  const { audioFormat, bitsPerSample, numChannels, sampleRate, subformat } = wav.fmt as {
    audioFormat: number;
    bitsPerSample: number;
    numChannels: number;
    sampleRate: number;
    subformat: number[];
  };
  const isPcm = audioFormat === PCM || (audioFormat === EXTENSIBLE && subformat[0] === PCM);
  const isReadable = isPcm && bitsPerSample === 16 && numChannels >= 1 && sampleRate >= 4000 && sampleRate <= 384000;
  return isReadable ? { channels: numChannels, sampleRate, dataStart, dataBytes } : null;
}

/**
 * Streams the samples into the store.
 * @throws RecordingError when the file ends before its header says it should.
 */
export async function decodeWav(filePath: string, header: WavHeader, store: SampleStore): Promise<void> {
  const file = await open(filePath, 'r');
  try {
    const { size } = await file.stat();
    const there = size - header.dataStart;
    const bytesPerFrame = header.channels * 2;
    if (header.dataBytes !== null && header.dataBytes - there >= bytesPerFrame) {
      const perSecond = header.sampleRate * bytesPerFrame;
      throw new RecordingError(
        `${filePath} is cut short (${(there / perSecond).toFixed(1)} of ${(header.dataBytes / perSecond).toFixed(1)} seconds are there): copy it again from the recorder, or save what there is as a new file with a sound editor.`,
      );
    }
    const total = Math.min(header.dataBytes ?? there, there);
    const resampler = makeResampler(header.sampleRate);
    for (let done = 0; done + bytesPerFrame <= total; ) {
      const wanted = Math.min(BLOCK_FRAMES, Math.floor((total - done) / bytesPerFrame)) * bytesPerFrame;
      const block = await readBytes(file, header.dataStart + done, wanted);
      if (block.length < bytesPerFrame) break;
      await store.append(resampler.push(mixDown(block, header.channels)));
      done += block.length;
    }
    await store.append(resampler.end());
  } finally {
    await file.close();
  }
}

function mixDown(block: Buffer, channels: number): Float32Array {
  const frames = new Float32Array(Math.floor(block.length / (2 * channels)));
  const view = new DataView(block.buffer, block.byteOffset, block.byteLength);
  for (let frame = 0; frame < frames.length; frame++) {
    let sum = 0;
    for (let channel = 0; channel < channels; channel++) sum += view.getInt16((frame * channels + channel) * 2, true);
    frames[frame] = sum / channels / 32768;
  }
  return frames;
}

async function readBytes(file: FileHandle, at: number, length: number): Promise<Buffer> {
  const bytes = Buffer.alloc(length);
  let done = 0;
  while (done < length) {
    const { bytesRead } = await file.read(bytes, done, length - done, at + done);
    if (bytesRead === 0) break;
    done += bytesRead;
  }
  return bytes.subarray(0, done);
}

const text = (bytes: Buffer, at: number): string => bytes.toString('latin1', at, at + 4);
