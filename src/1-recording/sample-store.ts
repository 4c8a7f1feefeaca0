/**
 * Keeps decoded samples (16 kHz mono, 16 bit) in a temporary file instead of memory, so that three hours cost as little
 * as three minutes. The file is unlinked as soon as it is open: nothing is left behind, not even after a kill.
 */
import { mkdtemp, open, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { RecordingError } from './recording-error.ts';

export const SAMPLE_RATE = 16000;

export interface SampleStore {
  /** Samples written so far. */
  readonly count: number;
  append(samples: Int16Array): Promise<void>;
  /** Samples `from` up to `to` (exclusive), clipped to what there is, between -1 and 1. */
  read(from: number, to: number): Promise<Float32Array>;
  close(): Promise<void>;
}

/** Opens an empty store in the system's folder for temporary files. */
export async function openSampleStore(): Promise<SampleStore> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'lineword-'));
  const file = await open(path.join(folder, 'samples.s16'), 'w+');
  await rm(folder, { recursive: true, force: true }).catch(() => undefined);
  let count = 0;
  let isOpen = true;
  return {
    get count() {
      return count;
    },
    async append(samples) {
      const bytes = new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);
      try {
        // A single write may stop short when the disk fills; the next one then gives the reason.
        for (let done = 0; done < bytes.length; ) {
          done += (await file.write(bytes, done, bytes.length - done, count * 2 + done)).bytesWritten;
        }
      } catch (cause) {
        throw new RecordingError(
          `The decoded sound does not fit into ${os.tmpdir()}: free some space there (about 115 MB an hour) and run again.`,
          { cause },
        );
      }
      count += samples.length;
    },
    async read(from, to) {
      const first = Math.max(0, Math.min(count, Math.round(from)));
      const last = Math.max(first, Math.min(count, Math.round(to)));
      const whole = new Int16Array(last - first);
      const bytes = new Uint8Array(whole.buffer);
      for (let done = 0; done < bytes.length; ) {
        const { bytesRead } = await file.read(bytes, done, bytes.length - done, first * 2 + done);
        if (bytesRead === 0) break;
        done += bytesRead;
      }
      return Float32Array.from(whole, (sample) => sample / 32768);
    },
    async close() {
      if (!isOpen) return;
      isOpen = false;
      await file.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
