/**
 * The sound as the page plays it: the samples that were listened to (16 kHz mono), served as one wav that is never
 * written to disk. Times are then exactly those of the words, in every format and over several files; the recording
 * itself is served beside it, byte for byte.
 */
import type { Recording } from '../1-recording/read-recording.ts';
import { SAMPLE_RATE } from '../1-recording/read-recording.ts';

const headerBytes = 44;

export interface ByteRange {
  readonly from: number;
  /** Inclusive. */
  readonly to: number;
}

/**
 * Reads a Range header (RFC 9110, one range only). Null: none was asked for, or several, so everything is sent.
 * 'unsatisfiable' when it lies outside.
 */
export function readRange(header: string | undefined, size: number): ByteRange | null | 'unsatisfiable' {
  const found = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? '');
  if (!found || (found[1] === '' && found[2] === '')) return null;
  if (found[1] === '') {
    const last = Number(found[2]);
    return last === 0 ? 'unsatisfiable' : { from: Math.max(0, size - last), to: size - 1 };
  }
  const from = Number(found[1]);
  const to = found[2] === '' ? size - 1 : Math.min(Number(found[2]), size - 1);
  if (from >= size) return 'unsatisfiable';
  return to < from ? null : { from, to };
}

export function soundBytes(recording: Pick<Recording, 'seconds'>): number {
  return headerBytes + sampleCount(recording) * 2;
}

function sampleCount(recording: Pick<Recording, 'seconds'>): number {
  return Math.round(recording.seconds * SAMPLE_RATE);
}

/** The bytes `from` … `to` (inclusive) of the wav, in pieces of about a second. */
export async function* readSound(
  recording: Pick<Recording, 'seconds' | 'samples'>,
  { from, to }: ByteRange,
): AsyncGenerator<Uint8Array> {
  if (from < headerBytes) yield wavHeader(sampleCount(recording)).subarray(from, Math.min(to + 1, headerBytes));
  let at = Math.max(from, headerBytes) - headerBytes;
  const end = to + 1 - headerBytes;
  while (at < end) {
    const firstSample = Math.floor(at / 2);
    const lastSample = Math.min(firstSample + SAMPLE_RATE, Math.ceil(end / 2));
    const samples = await recording.samples(firstSample / SAMPLE_RATE, lastSample / SAMPLE_RATE);
    const bytes = Buffer.alloc(samples.length * 2);
    for (let i = 0; i < samples.length; i++) {
      bytes.writeInt16LE(Math.max(-32768, Math.min(32767, Math.round(samples[i]! * 32768))), i * 2);
    }
    if (bytes.length === 0) return;
    yield bytes.subarray(at - firstSample * 2, Math.min(bytes.length, end - firstSample * 2));
    at = firstSample * 2 + bytes.length;
  }
}

function wavHeader(samples: number): Buffer {
  const header = Buffer.alloc(headerBytes);
  header.write('RIFF', 0);
  header.writeUInt32LE(headerBytes - 8 + samples * 2, 4);
  header.write('WAVEfmt ', 8);
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(SAMPLE_RATE, 24);
  header.writeUInt32LE(SAMPLE_RATE * 2, 28);
  header.writeUInt16LE(2, 32);
  header.writeUInt16LE(16, 34);
  header.write('data', 36);
  header.writeUInt32LE(samples * 2, 40);
  return header;
}
