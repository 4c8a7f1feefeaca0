/**
 * Beam search over several windows at once, on the decoder session.
 * Windows of a batch go step by step together; each has the same number of rows (its beams). A beam that falls more than
 * `pruneNats` behind the best is dropped, so that where the recogniser is sure one row does the work.
 * The trie's bonus and the language model steer which beams live; the recorded log-probabilities are the recogniser's own,
 * without them.
 */
import * as ort from 'onnxruntime-node';
import { isLooping } from './check-window.ts';
import { AT_SENTENCE_START, endWord, type LanguageModel, type LanguageWalk } from './language-model.ts';
import { bestTokens, logSumExp } from './logits.ts';
import { AT_START, type PhraseTrie, type TrieWalk } from './phrase-trie.ts';
import type { Recogniser } from './recogniser.ts';
import { OPENING_LENGTH, type TokenTable } from './token-table.ts';

export interface BeamSettings {
  readonly beams: number;
  readonly pruneNats: number;
  readonly trie: PhraseTrie | null;
  readonly language: { readonly model: LanguageModel; readonly weight: number } | null;
  readonly promptTokens: readonly number[];
  /** Tokens a window may have at most, one number a window. */
  readonly longestTokens: readonly number[];
}

export interface Decoded {
  readonly tokens: readonly number[];
  /** The recogniser's own log-probability of each token, the closing token last. */
  readonly logProbs: readonly number[];
  readonly noSpeech: number;
  /** False when the text broke off: too long, or a loop. */
  readonly isComplete: boolean;
  readonly isLoop: boolean;
  /** Keys and values of the window's sound, for further readings of a text. */
  readonly sound: Record<string, ort.Tensor>;
}

interface Beam {
  readonly tokens: readonly number[];
  readonly logProbs: readonly number[];
  readonly score: number;
  readonly walk: TrieWalk;
  readonly talk: LanguageWalk;
  /** Row of the step before that this beam goes on from. */
  readonly row: number;
}

interface Finished extends Beam {
  readonly perToken: number;
}

interface WindowState {
  beams: Beam[];
  finished: Finished[];
  loops: Beam[];
  noSpeech: number;
  isDone: boolean;
}

/** @param states the encoder's output for the batch [windows, positions, width] */
export async function decodeBeam(
  recogniser: Recogniser,
  states: ort.Tensor,
  settings: BeamSettings,
): Promise<Decoded[]> {
  const { tokens } = recogniser;
  const windowCount = states.dims[0]!;
  const opening = tokens.opening(settings.promptTokens);
  const run = await prefill(recogniser, states, opening, windowCount);
  const windows: WindowState[] = [];
  for (let index = 0; index < windowCount; index++) {
    const start = readLogits(run.logits, index, 0, OPENING_LENGTH);
    const last = readLogits(run.logits, index, OPENING_LENGTH - 1, OPENING_LENGTH);
    const noSpeech = Math.exp(start[tokens.noSpeech]! - logSumExp(start, start.length));
    for (const id of tokens.suppressedAtStart) last[id] = Number.NEGATIVE_INFINITY;
    const seed: Beam = { tokens: [], logProbs: [], score: 0, walk: AT_START, talk: AT_SENTENCE_START, row: index };
    const state: WindowState = { beams: [], finished: [], loops: [], noSpeech, isDone: false };
    advance(state, [{ beam: seed, logits: last }], settings, tokens, settings.longestTokens[index]!);
    windows.push(state);
  }
  let cache = run.cache;
  while (windows.some((window) => !window.isDone)) {
    const rows = Math.max(...windows.map((window) => window.beams.length), 1);
    const sources: number[] = [];
    const inputs: number[] = [];
    for (const window of windows) {
      for (let row = 0; row < rows; row++) {
        // A window with fewer beams repeats its first, so that all windows have the same number of rows.
        const beam = window.beams[row] ?? window.beams[0];
        sources.push(beam?.row ?? sources.at(-1) ?? 0);
        inputs.push(beam?.tokens.at(-1) ?? tokens.end);
      }
    }
    const step = await stepOn(recogniser, run, cache, sources, inputs, states);
    for (const tensor of Object.values(cache)) tensor.dispose();
    cache = step.cache;
    for (const [index, window] of windows.entries()) {
      if (window.isDone) {
        if (window.beams[0]) window.beams = [{ ...window.beams[0], row: index * rows }];
        continue;
      }
      const rowsNow = window.beams.map((beam, row) => ({
        beam: { ...beam, row: index * rows + row },
        logits: readLogits(step.logits, index * rows + row, 0, 1),
      }));
      advance(window, rowsNow, settings, tokens, settings.longestTokens[index]!);
    }
    step.logits.dispose();
  }
  for (const tensor of Object.values(cache)) tensor.dispose();
  return windows.map((window, index) => conclude(window, oneWindow(run.encoderCache, index)));
}

/** One step of one window: every beam's best tokens compete, the trie's bonus included. */
function advance(
  window: WindowState,
  rows: readonly { beam: Beam; logits: Float32Array }[],
  settings: BeamSettings,
  tokens: TokenTable,
  longest: number,
): void {
  const candidates: Beam[] = [];
  for (const { beam, logits } of rows) {
    for (const id of tokens.suppressed) logits[id] = Number.NEGATIVE_INFINITY;
    const total = logSumExp(logits, tokens.firstSpecial + 1);
    const consider = new Set(bestTokens(logits, tokens.firstSpecial + 1, settings.beams + 3));
    if (settings.trie) {
      for (const id of settings.trie.continuations(beam.walk)) if (logits[id]! - total > -9) consider.add(id);
    }
    const whole = settings.language ? endWord(settings.language.model, beam.talk) : null;
    for (const id of consider) {
      const logProb = logits[id]! - total;
      if (!Number.isFinite(logProb)) continue;
      const isNewWord = id === tokens.end || /^\s/.test(tokens.piece(id));
      const { walk, gain } = settings.trie ? settings.trie.step(beam.walk, id) : { walk: AT_START, gain: 0 };
      candidates.push({
        tokens: [...beam.tokens, id],
        logProbs: [...beam.logProbs, logProb],
        score: beam.score + logProb + gain + (isNewWord && whole ? whole.gain * settings.language!.weight : 0),
        walk,
        talk: goOn(beam.talk, whole?.before, tokens.piece(id), isNewWord),
        row: beam.row,
      });
    }
  }
  candidates.sort((a, b) => b.score - a.score);
  const best = candidates[0]?.score ?? 0;
  const beams: Beam[] = [];
  for (const candidate of candidates) {
    if (beams.length >= settings.beams || candidate.score < best - settings.pruneNats) break;
    if (candidate.tokens.at(-1) === tokens.end) {
      window.finished.push({ ...candidate, perToken: candidate.score / candidate.tokens.length });
    } else if (isLooping(candidate.tokens)) window.loops.push(candidate);
    else beams.push(candidate);
  }
  const bestFinished = Math.max(...window.finished.map((finished) => finished.score), Number.NEGATIVE_INFINITY);
  // A longer text must not be shut out by an early end, so ends compete with the beams only when clearly ahead.
  const alive = beams.filter((beam) => beam.score > bestFinished - settings.pruneNats);
  window.isDone =
    alive.length === 0 || window.finished.length >= settings.beams || (alive[0]?.tokens.length ?? 0) >= longest;
  // When the beams are stopped, they still stand for what was heard so far.
  window.beams = alive.length > 0 ? alive : beams;
}

function goOn(talk: LanguageWalk, before: readonly string[] | undefined, piece: string, isNewWord: boolean) {
  if (!before) return talk;
  return isNewWord ? { before, letters: piece } : { before: talk.before, letters: talk.letters + piece };
}

function conclude(window: WindowState, sound: Record<string, ort.Tensor>): Decoded {
  const [best] = [...window.finished].sort((a, b) => b.perToken - a.perToken);
  const broken = window.beams[0] ?? window.loops[0];
  const chosen = best ?? broken;
  return {
    tokens: best ? best.tokens.slice(0, -1) : (chosen?.tokens ?? []),
    logProbs: chosen?.logProbs ?? [],
    noSpeech: window.noSpeech,
    isComplete: best !== undefined,
    isLoop: best === undefined && window.loops.length > 0,
    sound,
  };
}

/** One window's share of what was computed for the batch; a view, nothing is copied. */
function oneWindow(cache: Record<string, ort.Tensor>, index: number): Record<string, ort.Tensor> {
  return Object.fromEntries(
    Object.entries(cache).map(([name, tensor]) => {
      const [, ...dims] = tensor.dims;
      const size = dims.reduce((product, dim) => product * dim, 1);
      const data = (tensor.data as Float32Array).subarray(index * size, (index + 1) * size);
      return [name, new ort.Tensor('float32', data, [1, ...dims])];
    }),
  );
}

interface Run {
  readonly logits: ort.Tensor;
  readonly cache: Record<string, ort.Tensor>;
  readonly encoderCache: Record<string, ort.Tensor>;
}

/** Reads the opening in one go; its keys and values are the cache that the steps go on from. */
async function prefill(recogniser: Recogniser, states: ort.Tensor, opening: number[], count: number): Promise<Run> {
  const ids = Array.from({ length: count }, () => opening);
  const own = cacheNames(recogniser, 'decoder');
  const encoder = cacheNames(recogniser, 'encoder');
  const outputs = await readText(recogniser, { states, sound: null }, ids, opening.length - OPENING_LENGTH, [
    'logits',
    ...[...own, ...encoder].map((name) => `present.${name}`),
  ]);
  const pick = (names: string[]) => Object.fromEntries(names.map((name) => [name, outputs[`present.${name}`]!]));
  return { logits: outputs.logits!, cache: pick(own), encoderCache: pick(encoder) };
}

async function stepOn(
  recogniser: Recogniser,
  run: Run,
  cache: Record<string, ort.Tensor>,
  sources: number[],
  inputs: number[],
  states: ort.Tensor,
): Promise<{ logits: ort.Tensor; cache: Record<string, ort.Tensor> }> {
  const feeds: Record<string, ort.Tensor> = {
    input_ids: integers(inputs, [inputs.length, 1]),
    encoder_hidden_states: states,
    use_cache_branch: new ort.Tensor('bool', [true], [1]),
    source_rows: integers(sources),
    first_position: integers([0]),
    first_state: integers([0]),
  };
  for (const [name, tensor] of Object.entries({ ...cache, ...run.encoderCache }))
    feeds[`past_key_values.${name}`] = tensor;
  const names = Object.keys(cache);
  const outputs = await recogniser.decode(feeds, ['logits', ...names.map((name) => `present.${name}`)]);
  return {
    logits: outputs.logits!,
    cache: Object.fromEntries(names.map((name) => [name, outputs[`present.${name}`]!])),
  };
}

/** What a text is read against: the encoder's states, and their keys and values where they have been computed. */
export interface Sound {
  readonly states: ort.Tensor;
  readonly sound: Record<string, ort.Tensor> | null;
}

/** Reads whole rows of tokens in one go; logits come from `firstPosition` on. */
export function readText(
  recogniser: Recogniser,
  { states, sound }: Sound,
  rows: readonly (readonly number[])[],
  firstPosition: number,
  outputs: readonly string[],
): Promise<Record<string, ort.Tensor>> {
  const empty = () => new ort.Tensor('float32', new Float32Array(0), [rows.length, recogniser.heads, 0, 64]);
  const past = [...cacheNames(recogniser, 'decoder'), ...cacheNames(recogniser, 'encoder')];
  return recogniser.decode(
    {
      ...Object.fromEntries(past.map((name) => [`past_key_values.${name}`, sound?.[name] ?? empty()])),
      input_ids: integers(rows.flat(), [rows.length, rows[0]!.length]),
      encoder_hidden_states: states,
      use_cache_branch: new ort.Tensor('bool', [false], [1]),
      source_rows: integers([0]),
      first_position: integers([firstPosition]),
      first_state: integers([sound ? states.dims[1]! : 0]),
    },
    outputs,
  );
}

function cacheNames(recogniser: Recogniser, part: 'decoder' | 'encoder'): string[] {
  const layers = Array.from({ length: recogniser.layers }, (_, layer) => layer);
  return layers.flatMap((layer) => [`${layer}.${part}.key`, `${layer}.${part}.value`]);
}

function integers(values: readonly number[], dims: number[] = [values.length]): ort.Tensor {
  return new ort.Tensor('int64', BigInt64Array.from(values, BigInt), dims);
}

/** The logits of one row at one position; a copy is not made, the caller may mask them. */
function readLogits(logits: ort.Tensor, row: number, position: number, positions: number): Float32Array {
  const size = logits.dims[2]!;
  const from = (row * positions + position) * size;
  return (logits.data as Float32Array).subarray(from, from + size);
}
