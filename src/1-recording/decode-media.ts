/**
 * Decodes any audio or video file through an ffmpeg process into 16 kHz mono samples.
 * Two traps: sound that starts late keeps its offset (`aresample=async=1:first_pts=0`, or every time would be wrong), and
 * a hostile playlist must not reach the network (`-protocol_whitelist file,pipe`).
 */
import { spawn } from 'node:child_process';
import path from 'node:path';
import { RecordingError } from './recording-error.ts';
import { SAMPLE_RATE, type SampleStore } from './sample-store.ts';

interface Finished {
  readonly exitCode: number | null;
  readonly errors: string;
}

/** @throws RecordingError: not media, no sound in it, cut short, ffmpeg does not start. */
export async function decodeMedia(filePath: string, ffmpegPath: string, store: SampleStore): Promise<void> {
  const input = ['-protocol_whitelist', 'file,pipe', '-i', `file:${path.resolve(filePath)}`];
  const described = (await run(ffmpegPath, ['-hide_banner', '-nostdin', ...input])).errors;
  refuseUnreadable(filePath, described);
  const before = store.count;
  const decoded = await run(
    ffmpegPath,
    ['-nostdin', '-v', 'error', ...input, '-map', '0:a:0', '-vn', '-sn', '-dn'].concat([
      '-af',
      'aresample=async=1:first_pts=0',
      '-ac',
      '1',
      '-ar',
      String(SAMPLE_RATE),
      '-f',
      's16le',
      '-',
    ]),
    (samples) => store.append(samples),
  );
  const gotSeconds = (store.count - before) / SAMPLE_RATE;
  const promisedSeconds = readDuration(described);
  // A container may run longer than its sound, so a short result alone is no fault; errors while decoding are.
  const isShort = promisedSeconds !== null && gotSeconds < promisedSeconds - 1;
  const hasComplaint =
    decoded.exitCode !== 0 || /partial file|truncat|invalid data|error|corrupt/i.test(decoded.errors);
  if ((isShort && hasComplaint) || (decoded.exitCode !== 0 && gotSeconds === 0)) {
    throw new RecordingError(
      gotSeconds === 0
        ? `${filePath} holds sound that could not be decoded (${firstLine(decoded.errors)}): play it to see whether it is whole, and copy it again from the recorder.`
        : `${filePath} is cut short (${gotSeconds.toFixed(1)} of ${promisedSeconds?.toFixed(1) ?? 'more'} seconds are there): copy it again from the recorder, or save what there is as a new file with a sound editor.`,
    );
  }
}

function refuseUnreadable(filePath: string, described: string): void {
  if (/Stream #.*: Audio:/.test(described)) return;
  if (/moov atom not found/.test(described)) {
    throw new RecordingError(
      `${filePath} is cut short (the table that ends an mp4 is missing): copy it again from the recorder, and stop the recording before you take the card out.`,
    );
  }
  if (/Stream #.*: (Video|Subtitle|Data):/.test(described)) {
    throw new RecordingError(`${filePath} has no sound track: give a recording that holds the inspector's voice.`);
  }
  throw new RecordingError(
    `${filePath} is not a sound or video file that can be read: give the recording itself (wav, mp3, m4a, mp4 and the like).`,
  );
}

function readDuration(described: string): number | null {
  // An estimate (an mp3 without an index) is no promise.
  if (/Estimating duration from bitrate/.test(described)) return null;
  const found = /Duration: (\d+):(\d+):(\d+(?:\.\d+)?)/.exec(described);
  return found ? Number(found[1]) * 3600 + Number(found[2]) * 60 + Number(found[3]) : null;
}

async function run(
  program: string,
  args: string[],
  onSamples?: (samples: Int16Array) => Promise<void>,
): Promise<Finished> {
  const child = spawn(program, args, { stdio: ['ignore', onSamples ? 'pipe' : 'ignore', 'pipe'], windowsHide: true });
  let errors = '';
  child.stderr!.setEncoding('utf8').on('data', (more: string) => {
    if (errors.length < 20000) errors += more;
  });
  const ended = new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  // Waited for below; a failure to start must not count as unhandled while samples are still being read.
  ended.catch(() => undefined);
  try {
    if (onSamples) await takeSamples(child.stdout!, onSamples);
    return { exitCode: await ended, errors };
  } catch (cause) {
    child.kill();
    if (cause instanceof RecordingError) throw cause;
    throw new RecordingError(
      `ffmpeg at ${program} does not run (${(cause as Error).message}): install ffmpeg or set FFMPEG_PATH to one that works.`,
      { cause },
    );
  }
}

async function takeSamples(output: AsyncIterable<Buffer>, onSamples: (samples: Int16Array) => Promise<void>) {
  let rest = Buffer.alloc(0);
  for await (const piece of output) {
    const whole = rest.length > 0 ? Buffer.concat([rest, piece]) : piece;
    const count = whole.length >> 1;
    const samples = new Int16Array(count);
    for (let index = 0; index < count; index++) samples[index] = whole.readInt16LE(index * 2);
    await onSamples(samples);
    rest = Buffer.from(whole.subarray(count * 2));
  }
}

const firstLine = (lines: string): string => lines.trim().split('\n')[0]?.trim() || 'no reason given';
