/**
 * Where somebody speaks: Silero VAD v6 gives each 32 ms of sound a probability of speech.
 * Each call needs the last 64 samples of the chunk before in front of the 512 new ones; without them the detector misses
 * half the speech in noise, and nothing tells.
 */
import path from 'node:path';
import * as ort from 'onnxruntime-node';
import type { Recording } from '../1-recording/read-recording.ts';
import { HearingError } from './hearing-error.ts';
import { checkModelFiles, modelsFolder, SPEECH_DETECTOR } from './model-files.ts';

const FRAME = 512;
const CONTEXT = 64;
export const FRAME_SECONDS = FRAME / 16000;

/** Speech begins above the first and ends below the second, after a pause; tuned for v6, which is modest. */
const BEGIN_ABOVE = 0.4;
const END_BELOW = 0.22;
const SHORTEST_SPEECH_SECONDS = 0.16;
const SHORTEST_PAUSE_SECONDS = 0.2;

export interface Span {
  readonly startSeconds: number;
  readonly endSeconds: number;
}

export interface Speech {
  /** Probability of speech for each frame of `FRAME_SECONDS`. */
  readonly probabilities: Float32Array;
  readonly spans: readonly Span[];
}

/** Runs the detector over the whole recording; memory holds one probability per 32 ms. */
export async function findSpeech(recording: Recording, signal?: AbortSignal): Promise<Speech> {
  const session = await loadDetector();
  const probabilities = new Float32Array(Math.ceil((recording.seconds * 16000) / FRAME) + 1);
  const input = new Float32Array(CONTEXT + FRAME);
  const rate = new ort.Tensor('int64', BigInt64Array.of(16000n), []);
  let state = new ort.Tensor('float32', new Float32Array(2 * 128), [2, 1, 128]);
  let frames = 0;
  let rest = new Float32Array(0);
  for await (const block of recording.blocks(30)) {
    signal?.throwIfAborted();
    const samples = rest.length > 0 ? concat(rest, block) : block;
    let at = 0;
    for (; at + FRAME <= samples.length; at += FRAME) await hear(samples.subarray(at, at + FRAME));
    rest = samples.slice(at);
  }
  if (rest.length > 0) await hear(concat(rest, new Float32Array(FRAME - rest.length)));
  const heard = probabilities.subarray(0, frames);
  return { probabilities: heard, spans: findSpans(heard, recording.seconds) };

  async function hear(chunk: Float32Array): Promise<void> {
    input.copyWithin(0, FRAME);
    input.set(chunk, CONTEXT);
    const result = await session.run({ input: new ort.Tensor('float32', input, [1, input.length]), state, sr: rate });
    probabilities[frames++] = (result.output!.data as Float32Array)[0]!;
    state = result.stateN as typeof state;
  }
}

/** Joins frames into spans of speech. Exported for the tests, which need no detector for it. */
export function findSpans(probabilities: Float32Array, seconds: number): Span[] {
  const spans: Span[] = [];
  let start = -1;
  let lastSpeech = -1;
  const close = (): void => {
    const span = {
      startSeconds: start * FRAME_SECONDS,
      endSeconds: Math.min(seconds, (lastSpeech + 1) * FRAME_SECONDS),
    };
    if (span.endSeconds - span.startSeconds >= SHORTEST_SPEECH_SECONDS) spans.push(span);
    start = -1;
  };
  for (const [frame, probability] of probabilities.entries()) {
    if (start < 0) {
      if (probability < BEGIN_ABOVE) continue;
      start = frame;
      lastSpeech = frame;
    } else if (probability >= END_BELOW) {
      lastSpeech = frame;
    } else if ((frame - lastSpeech) * FRAME_SECONDS >= SHORTEST_PAUSE_SECONDS) close();
  }
  if (start >= 0) close();
  return spans;
}

let detector: Promise<ort.InferenceSession> | null = null;

/** One session a process: onnxruntime leaks memory when sessions are made again and again. */
function loadDetector(): Promise<ort.InferenceSession> {
  detector ??= (async () => {
    const folder = modelsFolder();
    await checkModelFiles(folder, [SPEECH_DETECTOR]);
    try {
      return await ort.InferenceSession.create(path.join(folder, SPEECH_DETECTOR), {
        intraOpNumThreads: 1,
        interOpNumThreads: 1,
      });
    } catch (cause) {
      throw new HearingError(`The speech detector could not be loaded: install lineword again.`, { cause });
    }
  })().catch((error) => {
    detector = null;
    throw error;
  });
  return detector;
}

function concat(a: Float32Array, b: Float32Array): Float32Array<ArrayBuffer> {
  const both = new Float32Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
