/** Decoding and hearing a recording of ten minutes: the sample, named seven times over as one inspection. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hear, openRecording } from '../pipeline.ts';
import { type Figure, peakMegabytes } from './figure.ts';
import { sample } from './sample.ts';

export async function benchTenMinutes(): Promise<Figure[]> {
  const files = Array.from({ length: Math.ceil(600 / sample.seconds) }, () => sample.recording);
  const keepIn = await mkdtemp(join(tmpdir(), 'lineword-bench-'));
  const started = now();
  const recording = await openRecording(files);
  const decoded = now();
  const figure = (title: string, from: ReturnType<typeof now>): Figure => ({
    title,
    workSeconds: now().wall - from.wall,
    cpuSeconds: now().cpu - from.cpu,
    recordingSeconds: recording.seconds,
    peakMegabytes: peakMegabytes(),
  });
  try {
    const decoding = figure('decoding, ten minutes', started);
    await hear(recording, { keepIn });
    return [decoding, figure('hearing, ten minutes', decoded)];
  } finally {
    await recording.close();
    await rm(keepIn, { recursive: true, force: true });
  }
}

/** Seconds by the clock, and seconds the processor spent on this process. */
function now(): { wall: number; cpu: number } {
  const { user, system } = process.cpuUsage();
  return { wall: performance.now() / 1000, cpu: (user + system) / 1e6 };
}
