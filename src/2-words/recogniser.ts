/**
 * The recogniser: Whisper's encoder and decoder as two sessions, with the library's tokenizer and features.
 * The library's own pipeline and `generate()` are not used: they lose speech without a word (stitching, seek loop) and
 * give no probabilities. Sessions are made once a process, since onnxruntime leaks memory when they are made again.
 */
import path from 'node:path';
import { AutoFeatureExtractor, AutoTokenizer, env } from '@huggingface/transformers';
import * as ort from 'onnxruntime-node';
import { HearingError } from './hearing-error.ts';
import { checkModelFiles, defaultModelFolder } from './model-files.ts';
import { makeTokenTable, type TokenTable } from './token-table.ts';

const LAYERS_MAX = 32;
const ENCODER = 'onnx/encoder_model.onnx';
const DECODER = 'onnx/decoder_model_merged_quantized.onnx';
/** The same decoder with rows that share a window's keys and values; made by models/grouped-decoder.py. */
const GROUPED_DECODER = 'onnx/decoder_grouped.onnx';
const CONFIG_FILES = [
  'config.json',
  'generation_config.json',
  'preprocessor_config.json',
  'tokenizer.json',
  'tokenizer_config.json',
];

export interface RecogniserOptions {
  /** A local folder in the form of `models/whisper-base-trade`. */
  readonly modelFolder?: string;
  readonly threads?: number;
}

export interface Recogniser {
  readonly name: string;
  readonly sha256: string;
  readonly tokens: TokenTable;
  readonly layers: number;
  readonly heads: number;
  /** Layer and head of each attention that follows the sound word by word. */
  readonly alignmentHeads: readonly (readonly [number, number])[];
  /** Sounds of one batch, padded to `seconds`: the encoder's states [windows, positions, width]. */
  encode(sounds: readonly Float32Array[], seconds: number): Promise<ort.Tensor>;
  /** One run of the decoder; only the named outputs are fetched. */
  decode(feeds: Record<string, ort.Tensor>, outputs: readonly string[]): Promise<Record<string, ort.Tensor>>;
}

let loaded: { key: string; recogniser: Promise<Recogniser> } | null = null;

/** @throws HearingError for a missing or damaged model. */
export function loadRecogniser(options: RecogniserOptions = {}): Promise<Recogniser> {
  const folder = path.resolve(options.modelFolder ?? defaultModelFolder());
  const threads = options.threads ?? 2;
  const key = `${folder} ${threads}`;
  if (loaded?.key !== key) {
    const recogniser = load(folder, threads);
    loaded = { key, recogniser };
    recogniser.catch(() => {
      loaded = null;
    });
  }
  return loaded.recogniser;
}

async function load(folder: string, threads: number): Promise<Recogniser> {
  const sha256 = await checkModelFiles(folder, [...CONFIG_FILES, ENCODER, DECODER, GROUPED_DECODER]);
  try {
    return await open(folder, sha256, threads);
  } catch (cause) {
    throw new HearingError(
      `The model in ${folder} could not be loaded (${(cause as Error).message.split('\n')[0]}): install lineword again, or name a complete model folder.`,
      { cause },
    );
  }
}

type FeatureExtractor = (
  sound: Float32Array,
  options: { max_length: number },
) => Promise<{ input_features: { data: Float32Array; dims: number[] } }>;

async function open(folder: string, sha256: string, threads: number): Promise<Recogniser> {
  env.allowRemoteModels = false;
  const tokenizer = await AutoTokenizer.from_pretrained(folder, { local_files_only: true });
  const extractor = (await AutoFeatureExtractor.from_pretrained(folder, {
    local_files_only: true,
  })) as FeatureExtractor;
  const { config, generation } = await readConfig(folder);
  const options: ort.InferenceSession.SessionOptions = {
    intraOpNumThreads: threads,
    interOpNumThreads: 1,
    // The arena never gives memory back, and windows differ in size: without it the peak is a third lower.
    enableCpuMemArena: false,
    graphOptimizationLevel: 'all',
    logSeverityLevel: 3,
    extra: { session: { intra_op: { allow_spinning: '0' } } },
  };
  const encoder = await ort.InferenceSession.create(path.join(folder, ENCODER), options);
  const decoder = await ort.InferenceSession.create(path.join(folder, GROUPED_DECODER), options);
  return {
    name: path.basename(folder),
    sha256,
    tokens: makeTokenTable(tokenizer, generation),
    layers: Math.min(LAYERS_MAX, config.decoder_layers),
    heads: config.decoder_attention_heads,
    alignmentHeads: generation.alignment_heads ?? [],
    async encode(sounds, seconds) {
      const frames = Math.min(3000, 2 * Math.ceil(seconds * 50));
      const bands = config.num_mel_bins;
      const all = new Float32Array(sounds.length * bands * frames);
      for (const [index, sound] of sounds.entries()) {
        const { input_features } = await extractor(sound, { max_length: frames * 160 });
        all.set(input_features.data, index * bands * frames);
      }
      // One window at a time: the encoder gains nothing from a batch, and its memory grows with it.
      const parts: Float32Array[] = [];
      for (let index = 0; index < sounds.length; index++) {
        const features = all.subarray(index * bands * frames, (index + 1) * bands * frames);
        const { last_hidden_state } = await encoder.run({
          input_features: new ort.Tensor('float32', features, [1, bands, frames]),
        });
        parts.push(last_hidden_state!.data as Float32Array);
      }
      return new ort.Tensor('float32', concat(parts), [sounds.length, frames / 2, config.d_model]);
    },
    decode: (feeds, outputs) => decoder.run(feeds, [...outputs]) as Promise<Record<string, ort.Tensor>>,
  };
}

async function readConfig(folder: string) {
  const { readFile } = await import('node:fs/promises');
  const read = async (name: string) => JSON.parse(await readFile(path.join(folder, name), 'utf8'));
  return {
    config: (await read('config.json')) as {
      decoder_layers: number;
      decoder_attention_heads: number;
      num_mel_bins: number;
      d_model: number;
    },
    generation: await read('generation_config.json'),
  };
}

function concat(parts: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
