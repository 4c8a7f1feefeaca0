/**
 * A decoder as models are published, made to look like our grouped one: every row gets its own copy of the window's keys
 * and values, and rows are picked out here instead of in the graph. Slower and hungrier; for models other than ours.
 */
import * as ort from 'onnxruntime-node';

type Feeds = Record<string, ort.Tensor>;
export type Decode = (feeds: Feeds, outputs: readonly string[]) => Promise<Feeds>;

export function adaptPlainDecoder(session: ort.InferenceSession): Decode {
  return async (feeds, outputs) => {
    const { source_rows, first_position, first_state, ...own } = feeds;
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
    // This decoder computes the keys and values of the sound each time anew.
    if (Number((first_state!.data as BigInt64Array)[0]) > 0) {
      for (const [name, { dims }] of Object.entries(own)) {
        if (/\.encoder\./.test(name))
          own[name] = new ort.Tensor('float32', new Float32Array(0), [dims[0]!, dims[1]!, 0, dims[3]!]);
      }
    }
    const found = (await session.run(own, [...outputs])) as Feeds;
    const from = Number((first_position!.data as BigInt64Array)[0]);
    if (found.logits && !isStep && from > 0) found.logits = dropPositions(found.logits, from);
    return found;
  };
}

/**
 * Our grouped decoder: where keys and values of the sound are given, one state is enough, and is passed over. (The graph
 * rounds all states it is given, even where it has no use for them.)
 */
export function adaptGroupedDecoder(session: ort.InferenceSession): Decode {
  return async (feeds, outputs) => {
    const isStep = (feeds.use_cache_branch!.data as Uint8Array)[0] === 1;
    const isGiven = Number((feeds.first_state!.data as BigInt64Array)[0]) > 0;
    if (!isStep && !isGiven) return (await session.run(feeds, [...outputs])) as Feeds;
    const states = feeds.encoder_hidden_states!;
    const width = states.dims[2]!;
    const one = new ort.Tensor('float32', (states.data as Float32Array).subarray(0, width), [1, 1, width]);
    const past = new ort.Tensor('int64', BigInt64Array.of(1n), [1]);
    return (await session.run({ ...feeds, encoder_hidden_states: one, first_state: past }, [...outputs])) as Feeds;
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
