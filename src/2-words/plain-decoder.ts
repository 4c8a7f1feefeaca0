/**
 * A decoder as models are published, made to look like our grouped one: every row gets its own copy of the window's keys
 * and values, and rows are picked out here instead of in the graph. Slower and hungrier; for models other than ours.
 */
import * as ort from 'onnxruntime-node';

type Feeds = Record<string, ort.Tensor>;
export type Decode = (feeds: Feeds, outputs: readonly string[]) => Promise<Feeds>;

export function adaptPlainDecoder(session: ort.InferenceSession): Decode {
  return async (feeds, outputs) => {
    const { source_rows, first_position, ...own } = feeds;
    const isStep = (feeds.use_cache_branch!.data as Uint8Array)[0] === 1;
    if (isStep) {
      const sources = Array.from(source_rows!.data as BigInt64Array, Number);
      const windows = feeds.encoder_hidden_states!.dims[0]!;
      const perWindow = sources.length / windows;
      const windowOf = sources.map((_, row) => Math.floor(row / perWindow));
      for (const [name, tensor] of Object.entries(own)) {
        if (/\.decoder\./.test(name)) own[name] = pickRows(tensor, sources);
        else if (/\.encoder\./.test(name) || name === 'encoder_hidden_states') own[name] = pickRows(tensor, windowOf);
      }
    }
    const found = (await session.run(own, [...outputs])) as Feeds;
    const from = Number((first_position!.data as BigInt64Array)[0]);
    if (found.logits && !isStep && from > 0) found.logits = dropPositions(found.logits, from);
    return found;
  };
}

/** The rows of a tensor's first dimension, in the given order. */
function pickRows(tensor: ort.Tensor, rows: readonly number[]): ort.Tensor {
  if (rows.length === tensor.dims[0] && rows.every((row, index) => row === index)) return tensor;
  const [, ...rest] = tensor.dims;
  const size = rest.reduce((product, dim) => product * dim, 1);
  const data = tensor.data as Float32Array;
  const picked = new Float32Array(rows.length * size);
  for (const [index, row] of rows.entries()) picked.set(data.subarray(row * size, (row + 1) * size), index * size);
  return new ort.Tensor('float32', picked, [rows.length, ...rest]);
}

function dropPositions(logits: ort.Tensor, from: number): ort.Tensor {
  const [rows, positions, size] = logits.dims as [number, number, number];
  const kept = positions - from;
  const data = logits.data as Float32Array;
  const out = new Float32Array(rows * kept * size);
  for (let row = 0; row < rows; row++) {
    out.set(data.subarray((row * positions + from) * size, (row + 1) * positions * size), row * kept * size);
  }
  return new ort.Tensor('float32', out, [rows, kept, size]);
}
