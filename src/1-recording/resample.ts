/**
 * Brings any sample rate to 16 kHz, block by block, with a windowed-sinc low-pass so that nothing above 8 kHz folds back.
 * One row of filter taps for each of the L positions that an output sample can have between two input samples.
 */
import { SAMPLE_RATE } from './sample-store.ts';

/** How many zero crossings of the sinc are kept on each side: 16 put the folded-back rest below -60 dB. */
const CROSSINGS = 16;

export interface Resampler {
  /** Takes the next block and gives the 16 kHz samples that are complete. */
  push(block: Float32Array): Int16Array;
  /** The last samples, when there are no more blocks. */
  end(): Int16Array;
}

export function makeResampler(fromRate: number): Resampler {
  if (fromRate === SAMPLE_RATE) return { push: toInt16, end: () => new Int16Array(0) };
  const divisor = greatestCommonDivisor(fromRate, SAMPLE_RATE);
  const up = SAMPLE_RATE / divisor;
  const down = fromRate / divisor;
  const cutoff = Math.min(1, SAMPLE_RATE / fromRate) * 0.95;
  const half = Math.ceil(CROSSINGS / cutoff);
  const rows = Array.from({ length: up }, (_, phase) => filterRow(phase / up, half, cutoff));
  // Silence before the first sample centres the filter on it.
  let held = new Float32Array(half - 1);
  let heldFrom = -(half - 1);
  let produced = 0;
  let received = 0;

  function take(): Int16Array {
    const out: number[] = [];
    for (;;) {
      const numerator = produced * down;
      const left = Math.floor(numerator / up);
      const start = left - half + 1 - heldFrom;
      if (start + 2 * half > held.length) break;
      const row = rows[numerator % up]!;
      let sum = 0;
      for (let tap = 0; tap < row.length; tap++) sum += row[tap]! * held[start + tap]!;
      out.push(sum);
      produced++;
    }
    const keepFrom = Math.max(0, Math.floor((produced * down) / up) - half + 1 - heldFrom);
    held = held.slice(keepFrom);
    heldFrom += keepFrom;
    return toInt16(Float32Array.from(out));
  }
  function join(block: Float32Array): void {
    const longer = new Float32Array(held.length + block.length);
    longer.set(held);
    longer.set(block, held.length);
    held = longer;
  }
  return {
    push(block) {
      received += block.length;
      join(block);
      return take();
    },
    end() {
      join(new Float32Array(half + 1));
      const wanted = Math.round((received * up) / down) - produced;
      return take().slice(0, Math.max(0, wanted));
    },
  };
}

/** Taps for an output sample that lies `fraction` of a step after an input sample; a Hann window over the sinc. */
function filterRow(fraction: number, half: number, cutoff: number): Float32Array {
  const row = new Float32Array(2 * half);
  let sum = 0;
  for (let tap = 0; tap < row.length; tap++) {
    const distance = tap - (half - 1) - fraction;
    const angle = Math.PI * distance * cutoff;
    const sinc = angle === 0 ? 1 : Math.sin(angle) / angle;
    const value = Math.abs(distance) >= half ? 0 : sinc * (0.5 + 0.5 * Math.cos((Math.PI * distance) / half));
    row[tap] = value;
    sum += value;
  }
  return row.map((value) => value / sum);
}

function toInt16(samples: Float32Array): Int16Array {
  return Int16Array.from(samples, (sample) => Math.max(-32768, Math.min(32767, Math.round(sample * 32768))));
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
