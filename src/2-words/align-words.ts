/**
 * Word times: the chosen text is read once more with the attention on the sound switched on; dynamic time warping over the
 * heads that follow the sound word by word gives each token its moment (as openai/whisper does for word timestamps).
 * Then the voice detector's edges correct what attention blurs: no word begins or ends in silence.
 */
import { readText, type Sound } from './decode-beam.ts';
import type { Recogniser } from './recogniser.ts';

/** The encoder gives one state each 20 ms. */
export const STATE_SECONDS = 0.02;
const MEDIAN_WIDTH = 7;

export interface TokenTimes {
  /** For each text token, and last for the end of the text: seconds inside the window at which it begins. */
  readonly startSeconds: readonly number[];
}

/**
 * @param sound this window's alone
 * @param soundSeconds length of the window without the padding
 */
export async function timeTokens(
  recogniser: Recogniser,
  sound: Sound,
  opening: readonly number[],
  textTokens: readonly number[],
  soundSeconds: number,
): Promise<TokenTimes> {
  if (recogniser.alignmentHeads.length === 0) return { startSeconds: spreadEvenly(textTokens.length, soundSeconds) };
  const ids = [...opening, ...textTokens, recogniser.tokens.end];
  const layers = [...new Set(recogniser.alignmentHeads.map(([layer]) => layer))];
  const outputs = await readText(
    recogniser,
    sound,
    [ids],
    ids.length - 1,
    layers.map((layer) => `cross_attentions.${layer}`),
  );
  const positions = sound.states.dims[1]!;
  const frames = Math.max(1, Math.min(positions, Math.ceil(soundSeconds / STATE_SECONDS)));
  // The row of a token's predecessor shows where the token itself is listened for.
  const firstRow = opening.length - 1;
  const rows = textTokens.length + 1;
  const cost = new Float32Array(rows * frames);
  for (const [layer, head] of recogniser.alignmentHeads) {
    const attention = outputs[`cross_attentions.${layer}`]!;
    const base = head * ids.length * positions;
    addHead(
      cost,
      attention.data as Float32Array,
      base,
      firstRow,
      rows,
      frames,
      positions,
      recogniser.alignmentHeads.length,
    );
  }
  for (const tensor of Object.values(outputs)) tensor.dispose();
  return { startSeconds: warp(cost, rows, frames).map((frame) => frame * STATE_SECONDS) };
}

/** For a model that does not say which heads follow the sound. */
const spreadEvenly = (count: number, soundSeconds: number): number[] =>
  Array.from({ length: count + 1 }, (_, index) => (index / Math.max(1, count)) * soundSeconds);

/** Normalises one head over the tokens, smooths it in time and adds it. */
function addHead(
  sum: Float32Array,
  attention: Float32Array,
  base: number,
  firstRow: number,
  rows: number,
  frames: number,
  positions: number,
  headCount: number,
): void {
  const head = new Float32Array(rows * frames);
  for (let row = 0; row < rows; row++) {
    const from = base + (firstRow + row) * positions;
    head.set(attention.subarray(from, from + frames), row * frames);
  }
  for (let frame = 0; frame < frames; frame++) {
    let mean = 0;
    let squares = 0;
    for (let row = 0; row < rows; row++) {
      const value = head[row * frames + frame]!;
      mean += value;
      squares += value * value;
    }
    mean /= rows;
    const deviation = Math.sqrt(Math.max(1e-12, squares / rows - mean * mean));
    for (let row = 0; row < rows; row++) head[row * frames + frame] = (head[row * frames + frame]! - mean) / deviation;
  }
  const half = MEDIAN_WIDTH >> 1;
  const near = new Float32Array(MEDIAN_WIDTH);
  for (let row = 0; row < rows; row++) {
    for (let frame = 0; frame < frames; frame++) {
      for (let tap = 0; tap < MEDIAN_WIDTH; tap++) {
        // Mirrored at the ends.
        let from = frame + tap - half;
        if (from < 0) from = -from;
        if (from >= frames) from = Math.max(0, 2 * (frames - 1) - from);
        // Put in its place at once: the built-in sort takes ten times as long for seven numbers.
        const value = head[row * frames + from]!;
        let at = tap;
        for (; at > 0 && near[at - 1]! > value; at--) near[at] = near[at - 1]!;
        near[at] = value;
      }
      sum[row * frames + frame]! += near[half]! / headCount;
    }
  }
}

/** Dynamic time warping through the largest sum; gives the first frame of each row. */
function warp(score: Float32Array, rows: number, frames: number): number[] {
  const width = frames + 1;
  const cost = new Float32Array((rows + 1) * width).fill(Number.POSITIVE_INFINITY);
  const from = new Uint8Array((rows + 1) * width);
  cost[0] = 0;
  for (let frame = 1; frame <= frames; frame++) {
    for (let row = 1; row <= rows; row++) {
      const both = cost[(row - 1) * width + frame - 1]!;
      const rowOnly = cost[(row - 1) * width + frame]!;
      const frameOnly = cost[row * width + frame - 1]!;
      const at = row * width + frame;
      const least = Math.min(both, rowOnly, frameOnly);
      from[at] = least === both ? 0 : least === rowOnly ? 1 : 2;
      cost[at] = least - score[(row - 1) * frames + frame - 1]!;
    }
  }
  const starts = new Array<number>(rows).fill(0);
  let row = rows;
  let frame = frames;
  while (row > 0 && frame > 0) {
    starts[row - 1] = frame - 1;
    const step = from[row * width + frame]!;
    if (step !== 2) row--;
    if (step !== 1) frame--;
  }
  return starts;
}
