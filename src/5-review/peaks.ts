/**
 * The waveform's peaks, worked out here so that the page never has to decode hours of sound: for each step of time
 * the greatest size of a sample, 0 … 127.
 */
import { SAMPLE_RATE } from '../1-recording/read-recording.ts';

export const peaksPerSecond = 20;

/** Streams over samples between -1 and 1 at 16 kHz; memory holds one byte a step. */
export async function computePeaks(blocks: AsyncIterable<Float32Array> | Iterable<Float32Array>): Promise<Int8Array> {
  const step = SAMPLE_RATE / peaksPerSecond;
  const peaks: number[] = [];
  let peak = 0;
  let filled = 0;
  for await (const samples of blocks) {
    for (const sample of samples) {
      const size = sample < 0 ? -sample : sample;
      if (size > peak) peak = size;
      if (++filled === step) {
        peaks.push(Math.min(127, Math.round(peak * 127)));
        peak = 0;
        filled = 0;
      }
    }
  }
  if (filled > 0) peaks.push(Math.min(127, Math.round(peak * 127)));
  return Int8Array.from(peaks);
}
