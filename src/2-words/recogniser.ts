/**
 * The recogniser: Whisper's encoder and decoder as two sessions, with the library's tokenizer and features.
 * The library's own pipeline and `generate()` are not used: they lose speech without a word (stitching, seek loop) and
 * give no probabilities. Sessions are made once a process, since onnxruntime leaks memory when they are made again.
 */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { AutoFeatureExtractor, AutoModelForSpeechSeq2Seq, AutoTokenizer, env } from '@huggingface/transformers';
import * as ort from 'onnxruntime-node';
import { adaptGroupedDecoder, adaptPlainDecoder, type Decode } from './adapt-decoder.ts';
import { HearingError } from './hearing-error.ts';
import { type LanguageModel, loadLanguageModel } from './language-model.ts';
import { checkModelFiles, defaultModelFolder } from './model-files.ts';
import { type GenerationConfig, makeTokenTable, type TokenTable } from './token-table.ts';

/** Thirty seconds. */
const LONGEST_FRAMES = 3000;
const HUB_NAME = /^[\w.-]+\/[\w.-]+$/;
const ENCODER = 'onnx/encoder_model.onnx';
const DECODER = 'onnx/decoder_model_merged_quantized.onnx';
/** The same networks, quicker, and the same on every processor: made by models/fused-encoder.py and grouped-decoder.py. */
const FUSED_ENCODER = 'onnx/encoder_fused.onnx';
const GROUPED_DECODER = 'onnx/decoder_grouped.onnx';
const CONFIG_FILES = [
  'config.json',
  'generation_config.json',
  'preprocessor_config.json',
  'tokenizer.json',
  'tokenizer_config.json',
];

export interface RecogniserOptions {
  /** A local folder in the form of `models/whisper-base-trade`, or the name of a model on the hub (then the network is used). */
  readonly modelFolder?: string;
  readonly threads?: number;
}

export interface Recogniser {
  readonly name: string;
  readonly sha256: string;
  /** What the trade's talk is like, whatever model hears it. */
  readonly language: LanguageModel;
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
  const place = options.modelFolder ?? defaultModelFolder();
  const threads = options.threads ?? 2;
  const key = `${place} ${threads}`;
  if (loaded?.key !== key) {
    const recogniser = load(place, threads);
    loaded = { key, recogniser };
    recogniser.catch(() => {
      loaded = null;
    });
  }
  return loaded.recogniser;
}

async function load(place: string, threads: number): Promise<Recogniser> {
  const isOnHub = !existsSync(place) && HUB_NAME.test(place);
  const folder = isOnHub ? place : path.resolve(place);
  const isOurs = folder === defaultModelFolder();
  const remade = [FUSED_ENCODER, GROUPED_DECODER].filter((name) => isOurs || existsSync(path.join(folder, name)));
  const language = await loadLanguageModel();
  const heardBy = isOnHub
    ? `hub ${place}`
    : await checkModelFiles(folder, [...CONFIG_FILES, ENCODER, DECODER, ...remade]);
  const sha256 = createHash('sha256').update(`${heardBy} ${language.sha256}`).digest('hex');
  try {
    const options = sessionOptions(threads);
    const parts = isOnHub ? await openFromHub(place, options) : await openFolder(folder, remade, options);
    return await assemble(isOnHub ? place : path.basename(folder), sha256, language.model, parts, !isOnHub);
  } catch (cause) {
    const reason = (cause as Error).message.split('\n')[0];
    throw new HearingError(
      isOnHub
        ? `The model ${place} could not be had from the hub (${reason}): check its name and that you are online, or leave it out.`
        : `The model in ${folder} could not be loaded (${reason}): install lineword again, or name a complete model folder.`,
      { cause },
    );
  }
}

interface Parts {
  readonly from: string;
  readonly encoder: ort.InferenceSession;
  readonly decode: Decode;
  readonly config: ModelConfig;
  readonly generation: GenerationConfig;
}

interface ModelConfig {
  readonly decoder_layers: number;
  readonly decoder_attention_heads: number;
  readonly num_mel_bins: number;
  readonly d_model: number;
}

function sessionOptions(threads: number): ort.InferenceSession.SessionOptions {
  return {
    intraOpNumThreads: threads,
    interOpNumThreads: 1,
    // The arena never gives memory back, and windows differ in size: without it the peak is a third lower.
    enableCpuMemArena: false,
    graphOptimizationLevel: 'all',
    logSeverityLevel: 3,
    // Threads that spin while they wait take the other core from whoever needs it, and gain nothing here.
    extra: { session: { intra_op: { allow_spinning: '0' } } },
  };
}

async function openFolder(
  folder: string,
  remade: readonly string[],
  options: ort.InferenceSession.SessionOptions,
): Promise<Parts> {
  env.allowRemoteModels = false;
  const read = async (name: string) => JSON.parse(await readFile(path.join(folder, name), 'utf8'));
  const isGrouped = remade.includes(GROUPED_DECODER);
  const open = (name: string) => ort.InferenceSession.create(path.join(folder, name), options);
  const encoder = await open(remade.includes(FUSED_ENCODER) ? FUSED_ENCODER : ENCODER);
  const decoder = await open(isGrouped ? GROUPED_DECODER : DECODER);
  return {
    from: folder,
    encoder,
    decode: isGrouped ? adaptGroupedDecoder(decoder) : adaptPlainDecoder(decoder),
    config: await read('config.json'),
    generation: await read('generation_config.json'),
  };
}

/** Only here is the network touched, and only for a model that was asked for by its hub name. */
async function openFromHub(name: string, options: ort.InferenceSession.SessionOptions): Promise<Parts> {
  env.allowRemoteModels = true;
  const model = (await AutoModelForSpeechSeq2Seq.from_pretrained(name, {
    dtype: { encoder_model: 'fp32', decoder_model_merged: 'q8' },
    session_options: options,
  })) as unknown as {
    sessions: Record<string, ort.InferenceSession>;
    config: ModelConfig;
    generation_config: GenerationConfig;
  };
  return {
    from: name,
    encoder: model.sessions.model!,
    decode: adaptPlainDecoder(model.sessions.decoder_model_merged!),
    config: model.config,
    generation: model.generation_config,
  };
}

type FeatureExtractor = (
  sound: Float32Array,
  options: { max_length: number },
) => Promise<{ input_features: { data: Float32Array; dims: number[] } }>;

async function assemble(
  name: string,
  sha256: string,
  language: LanguageModel,
  parts: Parts,
  isLocal: boolean,
): Promise<Recogniser> {
  const { config, generation, encoder } = parts;
  const tokenizer = await AutoTokenizer.from_pretrained(parts.from, { local_files_only: isLocal });
  const extractor = (await AutoFeatureExtractor.from_pretrained(parts.from, {
    local_files_only: isLocal,
  })) as FeatureExtractor;
  // Ours hears any length; models as they are mostly published want the full thirty seconds.
  let isLengthFixed = false;

  async function states(sound: Float32Array, frames: number): Promise<Float32Array> {
    const { input_features } = await extractor(sound, { max_length: frames * 160 });
    const input = new ort.Tensor('float32', input_features.data, [1, config.num_mel_bins, frames]);
    const { last_hidden_state } = await encoder.run({ input_features: input });
    return last_hidden_state!.data as Float32Array;
  }

  return {
    name,
    sha256,
    language,
    tokens: makeTokenTable(tokenizer, generation),
    layers: config.decoder_layers,
    heads: config.decoder_attention_heads,
    alignmentHeads: generation.alignment_heads ?? [],
    async encode(sounds, seconds) {
      let frames = isLengthFixed ? LONGEST_FRAMES : Math.min(LONGEST_FRAMES, 2 * Math.ceil(seconds * 50));
      const found: Float32Array[] = [];
      // One window at a time: the encoder gains nothing from a batch, and its memory grows with it.
      for (const sound of sounds) {
        try {
          found.push(await states(sound, frames));
        } catch (error) {
          if (frames === LONGEST_FRAMES) throw error;
          isLengthFixed = true;
          frames = LONGEST_FRAMES;
          found.push(await states(sound, frames));
        }
      }
      return new ort.Tensor('float32', concat(found), [sounds.length, frames / 2, config.d_model]);
    },
    decode: parts.decode,
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
