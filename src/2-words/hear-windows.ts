/** Hears one batch of windows: decode, judge, hear again where it looks wrong, then times and probabilities. */
import * as ort from 'onnxruntime-node';
import type { LostSpeech, Word } from '../../shared/schemas/word.ts';
import type { Recording } from '../1-recording/read-recording.ts';
import { timeTokens } from './align-words.ts';
import { findFault, type WindowFault } from './check-window.ts';
import type { Window } from './cut-windows.ts';
import { type Decoded, decodeBeam } from './decode-beam.ts';
import type { Speech } from './find-speech.ts';
import { makePhraseTrie, type Phrase } from './phrase-trie.ts';
import type { Recogniser } from './recogniser.ts';
import { spellWords } from './spell-words.ts';

export interface HearingSettings {
  readonly prompt: string;
  readonly phrases: readonly Phrase[];
  readonly beams: number;
  readonly pruneNats: number;
  /** Silence after the sound that the recogniser is given; with less it loops. */
  readonly tailSeconds: number;
}

export interface HeardWindow {
  readonly words: Word[];
  readonly lost: LostSpeech[];
}

const SHORTEST_TAIL_SECONDS = 3;
const FULL_SECONDS = 30;

export async function hearWindows(
  recogniser: Recogniser,
  recording: Recording,
  windows: readonly Window[],
  speech: Speech,
  settings: HearingSettings,
): Promise<HeardWindow[]> {
  const sounds = await Promise.all(windows.map((window) => readSound(recording, window)));
  const longest = Math.max(...windows.map((window) => window.seconds));
  const seconds = Math.min(FULL_SECONDS, longest + Math.max(SHORTEST_TAIL_SECONDS, settings.tailSeconds));
  const states = await recogniser.encode(sounds, seconds);
  const decoded = await decodeBeam(recogniser, states, beamSettings(recogniser, windows, settings, settings.prompt));
  const heard: HeardWindow[] = [];
  for (const [index, window] of windows.entries()) {
    let text = decoded[index]!;
    let ownStates = oneWindow(states, index);
    let prompt = settings.prompt;
    let fault = findFault(text, window, recogniser.tokens, settings.prompt);
    if (fault) {
      // Once more with the full thirty seconds, without the prompt and the bonus, which can seed what went wrong.
      const again = await recogniser.encode([sounds[index]!], FULL_SECONDS);
      const [second] = await decodeBeam(recogniser, again, beamSettings(recogniser, [window], settings, ''));
      const secondFault = findFault(second!, window, recogniser.tokens, settings.prompt);
      if (!secondFault || isWorse(fault, secondFault)) {
        text = second!;
        fault = secondFault;
        ownStates = again;
        prompt = '';
      }
    }
    heard.push(await finishWindow(recogniser, window, text, ownStates, prompt, fault, speech));
  }
  return heard;
}

async function finishWindow(
  recogniser: Recogniser,
  window: Window,
  text: Decoded,
  states: ort.Tensor,
  prompt: string,
  fault: WindowFault | null,
  speech: Speech,
): Promise<HeardWindow> {
  const lost = { startSeconds: window.startSeconds, endSeconds: window.endSeconds };
  if (fault === 'unlikely' && window.speechSeconds < 1.5) return { words: [], lost: [] };
  if (fault === 'loop' || fault === 'too fast' || fault === 'the prompt' || fault === 'unlikely') {
    return { words: [], lost: [{ ...lost, why: `speech that could not be made out (${fault})` }] };
  }
  if (text.tokens.length === 0) {
    return window.speechSeconds < 1.5
      ? { words: [], lost: [] }
      : { words: [], lost: [{ ...lost, why: 'nothing was made out' }] };
  }
  const opening = recogniser.tokens.opening(prompt ? recogniser.tokens.encode(` ${prompt}`) : []);
  const times = await timeTokens(recogniser, states, opening, text.tokens, window.seconds);
  const words = spellWords(recogniser.tokens, text, times, window, speech);
  return { words, lost: fault ? [{ ...lost, why: `part of the speech may be missing (${fault})` }] : [] };
}

const isWorse = (first: WindowFault, second: WindowFault): boolean =>
  ['too little', 'broken off'].includes(second) && !['too little', 'broken off'].includes(first);

function beamSettings(recogniser: Recogniser, windows: readonly Window[], settings: HearingSettings, prompt: string) {
  const isBiased = prompt !== '';
  return {
    beams: settings.beams,
    pruneNats: settings.pruneNats,
    trie: isBiased && settings.phrases.length > 0 ? makePhraseTrie(settings.phrases, recogniser.tokens) : null,
    promptTokens: prompt ? recogniser.tokens.encode(` ${prompt}`) : [],
    longestTokens: windows.map((window) => Math.min(220, Math.ceil(window.speechSeconds * 9) + 16)),
  };
}

async function readSound(recording: Recording, window: Window): Promise<Float32Array> {
  const pieces = await Promise.all(
    window.pieces.map((piece) => recording.samples(piece.startSeconds, piece.endSeconds)),
  );
  const whole = new Float32Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function oneWindow(states: ort.Tensor, index: number): ort.Tensor {
  const [, positions, width] = states.dims as [number, number, number];
  const size = positions * width;
  const data = (states.data as Float32Array).subarray(index * size, (index + 1) * size);
  return new ort.Tensor('float32', data, [1, positions, width]);
}
