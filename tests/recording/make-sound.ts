/** Small sound files for the tests, made on the spot. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { findFfmpeg } from '../../src/1-recording/find-ffmpeg.ts';

export const makeFolder = (): string => mkdtempSync(path.join(os.tmpdir(), 'lineword-test-'));

/** A tone as 16-bit samples, the channels one after the other in each frame. */
export function tone(seconds: number, rate: number, hertz = 440, channels = 1, loudness = 0.5): Int16Array {
  const samples = new Int16Array(Math.round(seconds * rate) * channels);
  for (let index = 0; index < samples.length; index++) {
    const at = Math.floor(index / channels) / rate;
    samples[index] = Math.round(32767 * loudness * Math.sin(2 * Math.PI * hertz * at));
  }
  return samples;
}

/** A canonical 16-bit PCM wav (RIFF, 44 bytes of header), with a LIST chunk before the samples when asked. */
export function wav(
  samples: Int16Array,
  rate: number,
  channels = 1,
  options: { list?: boolean; dataBytes?: number } = {},
) {
  const list = options.list ? Buffer.from('LIST\x0a\0\0\0INFOabcdef', 'latin1') : Buffer.alloc(0);
  const head = Buffer.alloc(36);
  head.write('RIFF', 0);
  head.writeUInt32LE(36 + list.length + samples.byteLength, 4);
  head.write('WAVEfmt ', 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(channels, 22);
  head.writeUInt32LE(rate, 24);
  head.writeUInt32LE(rate * channels * 2, 28);
  head.writeUInt16LE(channels * 2, 32);
  head.writeUInt16LE(16, 34);
  const data = Buffer.alloc(8);
  data.write('data', 0);
  data.writeUInt32LE(options.dataBytes ?? samples.byteLength, 4);
  return Buffer.concat([head, list, data, Buffer.from(samples.buffer, samples.byteOffset, samples.byteLength)]);
}

export function write(folder: string, name: string, bytes: Buffer | string): string {
  const file = path.join(folder, name);
  writeFileSync(file, bytes);
  return file;
}

/** Runs the ffmpeg that the program itself would use. */
export function ffmpeg(...args: string[]): void {
  execFileSync(findFfmpeg()!.path, ['-nostdin', '-v', 'error', '-y', ...args]);
}

/** How strong one frequency is in the samples (Goertzel), as an amplitude. */
export function strength(samples: Float32Array, hertz: number, rate = 16000): number {
  let real = 0;
  let imaginary = 0;
  for (const [index, sample] of samples.entries()) {
    real += sample * Math.cos((2 * Math.PI * hertz * index) / rate);
    imaginary += sample * Math.sin((2 * Math.PI * hertz * index) / rate);
  }
  return (2 * Math.hypot(real, imaginary)) / samples.length;
}
