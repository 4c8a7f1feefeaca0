/** Hears one batch of windows: decode, judge, hear again where it looks wrong, then times and probabilities. */
import * as ort from 'onnxruntime-node';
import type { LostSpeech, Word } from '../../shared/schemas/word.ts';
import type { Recording } from '../1-recording/read-recording.ts';
import { timeTokens } from './align-words.ts';
import { average, findFault, type WindowFault } from './check-window.ts';
import type { Window } from './cut-windows.ts';
import { type BeamSettings, type Decoded, decodeBeam } from './decode-beam.ts';
import { findGaps } from './find-gaps.ts';
import type { Span, Speech } from './find-speech.ts';
import { isTradeTalk } from './language-model.ts';
import { type Phrase, type PhraseTrie, phraseTrieOf } from './phrase-trie.ts';
import { quietNoise } from './quiet-noise.ts';
import type { Recogniser } from './recogniser.ts';
import { lookAgain } from './second-look.ts';
import { spellWords } from './spell-words.ts';

export interface HearingSettings {
  readonly prompt: string;
  readonly phrases: readonly Phrase[];
  /** Those of them that are the speaker's own, which are favoured in any talk. */
  readonly ownPhrases: readonly Phrase[];
  /** What share of the language model's gain a beam is given; 0 leaves it out. */
  readonly languageWeight: number;
  readonly beams: number;
  readonly pruneNats: number;
  /** Silence after the sound that the recogniser is given; with less it loops. */
  readonly tailSeconds: number;
  readonly isSecondLookWanted: boolean;
  /** Sound that stands less than this above its steady noise has the noise turned down; 0 never. */
  readonly quietBelowDecibels: number;
  /** False leaves the recogniser's own probabilities, to fit the curve on. */
  readonly isCalibrated: boolean;
}

export interface HeardWindow {
  readonly words: Word[];
  readonly lost: LostSpeech[];
}

const SHORTEST_TAIL_SECONDS = 3;
const FULL_SECONDS = 30;
/** Average log-probability a token below which a stretch heard for itself is not believed. */
const SURE_NATS = -0.8;

export async function hearWindows(
  recogniser: Recogniser,
  recording: Recording,
  windows: readonly Window[],
  speech: Speech,
  settings: HearingSettings,
): Promise<HeardWindow[]> {
  const sounds = await Promise.all(windows.map((window) => readSound(recording, window, settings)));
  const longest = Math.max(...windows.map((window) => window.seconds));
  const seconds = Math.min(FULL_SECONDS, longest + Math.max(SHORTEST_TAIL_SECONDS, settings.tailSeconds));
  const states = await recogniser.encode(sounds, seconds);
  const decoded = await decodeTalk(recogniser, windows, states, settings);
  const heard: HeardWindow[] = [];
  for (const [index, window] of windows.entries()) {
    let ownStates = oneWindow(states, index);
    let text = decoded[index]!;
    let prompt = settings.prompt;
    let fault = findFault(text, window, recogniser.tokens, settings.prompt);
    if (fault) {
      // Once more with the full thirty seconds, without the prompt and the bonus, which can seed what went wrong.
      const again = await recogniser.encode([sounds[index]!], FULL_SECONDS);
      const [second] = await decodeBeam(recogniser, again, beamSettings(recogniser, [window], settings, false));
      const secondFault = findFault(second!, window, recogniser.tokens, settings.prompt);
      if (!secondFault || isWorse(fault, secondFault)) {
        text = second!;
        fault = secondFault;
        ownStates = again;
        prompt = '';
      }
    }
    heard.push(await finishWindow({ recogniser, recording, speech, settings }, window, text, ownStates, prompt, fault));
  }
  return heard;
}

/**
 * Chat and reading aloud suffer from what the trade's talk is like and from the favour its words are shown ("queen of clubs" came out as
 * "cleanout close"): a window of such is heard once more without both. Streets and names may be said in any talk.
 */
async function decodeTalk(
  recogniser: Recogniser,
  windows: readonly Window[],
  states: ort.Tensor,
  settings: HearingSettings,
): Promise<Decoded[]> {
  const biased = beamSettings(recogniser, windows, settings, true);
  const decoded = await decodeBeam(recogniser, states, biased);
  if (!biased.language && !biased.trie) return decoded;
  const isOther = decoded.map(({ tokens }) => !isTradeTalk(recogniser.language, recogniser.tokens.decode(tokens)));
  if (!isOther.includes(true)) return decoded;
  // All of them together: a window alone comes out a little otherwise than beside another.
  const again = await decodeBeam(recogniser, states, {
    ...biased,
    language: null,
    trie: trieOf(settings.ownPhrases, recogniser),
  });
  return decoded.map((text, index) => (isOther[index] ? again[index]! : text));
}

interface Hearing {
  readonly recogniser: Recogniser;
  readonly recording: Recording;
  readonly speech: Speech;
  readonly settings: HearingSettings;
}

async function finishWindow(
  hearing: Hearing,
  window: Window,
  text: Decoded,
  states: ort.Tensor,
  prompt: string,
  fault: WindowFault | null,
): Promise<HeardWindow> {
  const { recogniser, speech, settings } = hearing;
  const span = { startSeconds: window.startSeconds, endSeconds: window.endSeconds };
  // A cough or a splash that the detector took for speech: nothing is lost with it.
  const isNothing = window.speechSeconds < 1.5 && (fault === 'unlikely' || text.tokens.length === 0);
  if (isNothing) return { words: [], lost: [] };
  if (text.tokens.length === 0) return { words: [], lost: [{ ...span, why: 'nothing could be made out' }] };
  if (fault && !isKept(fault)) return { words: [], lost: [{ ...span, why: `not made out (${fault})` }] };
  const opening = recogniser.tokens.opening(prompt ? recogniser.tokens.encode(` ${prompt}`) : []);
  const sound = { states, sound: text.sound };
  const times = await timeTokens(recogniser, sound, opening, text.tokens, window.seconds);
  const spelled = spellWords(recogniser.tokens, text, times, window, speech);
  const words = settings.isSecondLookWanted
    ? await lookAgain(recogniser, sound, opening, text, spelled)
    : spelled.map(({ word }) => word);
  const gaps = findGaps(words, speech.spans, span);
  const heardAgain = await Promise.all(gaps.map((gap) => hearGap(hearing, gap)));
  const lost = heardAgain.flatMap((again) => again.lost);
  if (fault && lost.length === 0 && gaps.length === 0) lost.push({ ...span, why: `part may be missing (${fault})` });
  return { words: [...words, ...heardAgain.flatMap((again) => again.words)], lost };
}

/** Hears for itself a stretch that the window's text leapt over. */
async function hearGap(hearing: Hearing, gap: Span): Promise<HeardWindow> {
  const { recogniser, recording, speech, settings } = hearing;
  const seconds = gap.endSeconds - gap.startSeconds;
  const window: Window = {
    ...gap,
    pieces: [gap],
    seconds,
    speechSeconds: seconds,
    isCutAtStart: true,
    isCutAtEnd: true,
  };
  const states = await recogniser.encode([await readSound(recording, window, settings)], FULL_SECONDS);
  const [text] = await decodeBeam(recogniser, states, beamSettings(recogniser, [window], settings, false));
  const fault = findFault(text!, window, recogniser.tokens, settings.prompt);
  const isSure = average(text!.logProbs) > SURE_NATS;
  if (fault || text!.tokens.length === 0 || !isSure) {
    return { words: [], lost: [{ ...gap, why: 'speech that was not made out' }] };
  }
  const times = await timeTokens(
    recogniser,
    { states, sound: text!.sound },
    recogniser.tokens.opening([]),
    text!.tokens,
    seconds,
  );
  return { words: spellWords(recogniser.tokens, text!, times, window, speech).map(({ word }) => word), lost: [] };
}

/** Text that may lack something is kept, text that may be made up is not. */
const isKept = (fault: WindowFault): boolean => fault === 'too little' || fault === 'broken off';

const isWorse = (first: WindowFault, second: WindowFault): boolean => isKept(second) && !isKept(first);

const trieOf = (phrases: readonly Phrase[], { tokens }: Recogniser): PhraseTrie | null =>
  phrases.length > 0 ? phraseTrieOf(phrases, tokens) : null;

/** @param isBiased whether prompt, bonus and language model take part: a second hearing goes without them, since they can seed what went wrong */
export function beamSettings(
  recogniser: Recogniser,
  windows: readonly Window[],
  settings: HearingSettings,
  isBiased: boolean,
): BeamSettings {
  return {
    beams: settings.beams,
    pruneNats: settings.pruneNats,
    trie: isBiased ? trieOf(settings.phrases, recogniser) : null,
    language:
      isBiased && settings.languageWeight > 0 ? { model: recogniser.language, weight: settings.languageWeight } : null,
    promptTokens: isBiased && settings.prompt ? recogniser.tokens.encode(` ${settings.prompt}`) : [],
    longestTokens: windows.map((window) => Math.min(220, Math.ceil(window.speechSeconds * 9) + 16)),
  };
}

/** The window's pieces as one sound, steady noise turned down where there is much. */
export async function readSound(
  recording: Recording,
  window: Window,
  settings: HearingSettings,
): Promise<Float32Array> {
  const pieces = await Promise.all(
    window.pieces.map((piece) => recording.samples(piece.startSeconds, piece.endSeconds)),
  );
  const whole = new Float32Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return quietNoise(whole, settings.quietBelowDecibels).sound;
}

function oneWindow(states: ort.Tensor, index: number): ort.Tensor {
  const [, positions, width] = states.dims as [number, number, number];
  const size = positions * width;
  const data = (states.data as Float32Array).subarray(index * size, (index + 1) * size);
  return new ort.Tensor('float32', data, [1, positions, width]);
}
