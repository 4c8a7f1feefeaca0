/**
 * The close reader's network: a small pretrained language model, taught on invented talk of the trade with its findings known.
 * It sees a stretch of talk at once, so it knows words it was never taught by those it knows, and what belongs to what.
 */
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { AutoTokenizer } from '@huggingface/transformers';
import * as ort from 'onnxruntime-node';
import { checkModelFiles, modelsFolder } from '../../2-words/model-files.ts';
import { type Heads, readHeads } from './heads.ts';

const FOLDER = 'close-reader';
const NETWORK = 'model.onnx';
const HEADS = 'heads.bin';
const HEADS_INDEX = 'heads.json';
const FILES = [NETWORK, HEADS, HEADS_INDEX, 'tokenizer.json', 'tokenizer_config.json'];
const WIDTH = 384;

/** What the network makes of a window of talk: for each piece of a word a row. */
export interface CloseWindow {
  /** Its state [pieces, 384], as the heads want it. */
  readonly states: Float32Array;
  /** How much it speaks for each kind [pieces, kinds], as a logit. */
  readonly kinds: Float32Array;
  /** What a number is found by [pieces, 384]. */
  readonly keys: Float32Array;
}

export interface CloseReader {
  readonly heads: Heads;
  /** The pieces of one word, as the network's numbers. */
  piecesOf(word: string): readonly number[];
  read(pieces: readonly number[]): Promise<CloseWindow>;
}

let loaded: Promise<CloseReader> | null = null;

/** The close reader of this installation, loaded once. @throws HearingError for a missing or damaged file. */
export function loadCloseReader(): Promise<CloseReader> {
  loaded ??= load(path.join(modelsFolder(), FOLDER));
  return loaded;
}

async function load(folder: string): Promise<CloseReader> {
  await checkModelFiles(folder, FILES);
  const [network, weights, index, tokenizer] = await Promise.all([
    ort.InferenceSession.create(path.join(folder, NETWORK), {
      intraOpNumThreads: 2,
      interOpNumThreads: 1,
      enableCpuMemArena: false,
      logSeverityLevel: 3,
    }),
    readFile(path.join(folder, HEADS)),
    readFile(path.join(folder, HEADS_INDEX), 'utf8'),
    AutoTokenizer.from_pretrained(folder, { local_files_only: true }),
  ]);
  const known = new Map<string, readonly number[]>();
  return {
    heads: readHeads(JSON.parse(index), weights, WIDTH),
    piecesOf(word) {
      const pieces = known.get(word) ?? tokenizer.encode(word, { add_special_tokens: false });
      known.set(word, pieces);
      return pieces;
    },
    async read(pieces) {
      const ids = new ort.Tensor('int64', BigInt64Array.from(pieces, BigInt), [1, pieces.length]);
      const { states, kinds, keys } = await network.run({ ids });
      return {
        states: states!.data as Float32Array,
        kinds: kinds!.data as Float32Array,
        keys: keys!.data as Float32Array,
      };
    },
  };
}
