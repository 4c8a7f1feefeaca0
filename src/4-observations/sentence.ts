/**
 * Cuts the talk into sentences: at full stops and question marks, at long pauses, and, where a recogniser printed no stops
 * at all, before the words that open a new statement.
 */

import type { Phrases } from '../3-phrases/find-phrases.ts';
import { type Phrase, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { pausesAt } from './clause-start.ts';
import { softStarts } from './cut-stretch.ts';
import { leanOf, leanOfStretches, type Stated } from './speaker-habit.ts';
import { statementPauses } from './statement-pauses.ts';

export interface Sentence {
  readonly index: number;
  /** First token, and the one after the last. */
  readonly from: number;
  readonly to: number;
  readonly phrases: readonly Phrase[];
  readonly isQuestion: boolean;
  readonly text: string;
}

/** A stretch this long without a comma or a stop is printed without punctuation. */
const LONG_STRETCH_TOKENS = 14;

function bareStretch(tokens: readonly Token[], from: number, to: number): boolean {
  if (to - from < LONG_STRETCH_TOKENS) return false;
  const commas = tokens.slice(from, to).filter((token) => token.breakAfter === 'comma').length;
  return commas === 0 || (to - from >= 2 * LONG_STRETCH_TOKENS && commas * LONG_STRETCH_TOKENS < to - from);
}

/** Nobody says so much in one sentence: commas stand where stops should, and silences tell statements apart. */
const RUN_ON_TOKENS = 3 * LONG_STRETCH_TOKENS;

function runOnParts(tokens: readonly Token[], phrases: readonly Phrase[], from: number, to: number) {
  if (to - from < RUN_ON_TOKENS || bareStretch(tokens, from, to)) return [[from, to] as const];
  const edges = [from];
  for (let at = from + 1; at < to; at += 1) if (pausesAt(tokens, at) && !isTorn(phrases, at - 1)) edges.push(at);
  return edges.map((edge, index) => [edge, edges[index + 1] ?? to] as const);
}

const interrogatives =
  /^(is|are|was|were|do|does|did|can|could|would|will|should|has|have|had|what|where|which|who|when|why|how|any|see|you|isn't|aren't|doesn't|and|so|okay|oh|hmm|hm|wait|or|the|a|main|tell)$/;

/** "That could be an offset?" is a doubtful statement; "Is that an offset?" asks. */
function asks(tokens: readonly Token[], from: number, to: number): boolean {
  let start = from;
  for (let at = from; at < to - 1; at += 1) {
    if (tokens[at]?.breakAfter !== 'comma') continue;
    // "Soap coming down, is somebody washing?" states first; "Ruth, is that a crack?" only calls.
    if (at + 1 - start > 2)
      return (
        interrogatives.test(tokens[start]?.text ?? '') &&
        !/^(and|so|okay|oh|hmm|hm|wait|or|the|a|main)$/.test(tokens[start]?.text ?? '')
      );
    start = at + 1;
  }
  const opening = tokens.slice(start, Math.min(to, start + 3)).map((token) => token.text);
  const first = opening.find((word) => !/^(um|uh|okay|oh|hmm|hm|so|and|well|now)$/.test(word)) ?? '';
  if (/^(that|this|it|there|i|looks)$/.test(first)) return false;
  return (
    interrogatives.test(first) ||
    to - start <= 4 ||
    tokens.slice(start, to).some((token) => /^(is|are|does|do|did|can|what|how)$/.test(token.text))
  );
}

/** Phrases are in order of their first token: those of a range, by halving. */
function sliceOf(phrases: readonly Phrase[], from: number, to: number): Phrase[] {
  const first = firstAt(phrases, from);
  return phrases.slice(first, firstAt(phrases, to));
}

function firstAt(phrases: readonly Phrase[], token: number): number {
  let low = 0;
  let high = phrases.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((phrases[middle]?.from ?? 0) < token) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The longest phrase, in tokens: nothing further back can reach over a stop. */
const LONGEST_PHRASE_TOKENS = 20;

/** Whether a stop was printed inside a phrase ("11. And a half"). */
function isTorn(phrases: readonly Phrase[], index: number): boolean {
  return sliceOf(phrases, index - LONGEST_PHRASE_TOKENS, index + 1).some(
    (phrase) => phrase.to > index + 1 && phrase.family !== 'relative',
  );
}

/** The sentence that holds a token, by halving; the first one for a token before all. */
export function sentenceAt(sentences: readonly Sentence[], token: number): Sentence | undefined {
  let low = 0;
  let high = sentences.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((sentences[middle]?.from ?? 0) <= token) low = middle;
    else high = middle - 1;
  }
  return sentences[low];
}

/** Whether any of it is told of the past, of plans, of things in general or of another place: not of this pipe now. */
export const tellsOfOther = ({ phrases }: Sentence): boolean =>
  phrasesOf(phrases, 'assertion').some(({ cue }) => /^(past|general|elsewhere|planned)$/.test(cue.axis));

/** The sentences of a talk; together they cover every token once. */
export function cutSentences({ tokens, phrases }: Phrases): Sentence[] {
  const printed: Stated[] = [];
  let from = 0;
  tokens.forEach((token, index) => {
    const stops = token.breakAfter === 'stop' || token.breakAfter === 'question';
    const ends = stops && !isTorn(phrases, index);
    if (!ends && index < tokens.length - 1) return;
    for (const [start, end] of runOnParts(tokens, phrases, from, index + 1))
      printed.push({ from: start, to: end, phrases: sliceOf(phrases, start, end) });
    from = index + 1;
  });
  const isBare = printed.map((stated) => bareStretch(tokens, stated.from, stated.to));
  const bare = printed.filter((_, index) => isBare[index]);
  const stopped = printed.filter((_, index) => !isBare[index]);
  const placeFirst = bare.length > 0 && leanOfStretches(tokens, bare) + leanOf(tokens, stopped) >= 0;
  const pauses = bare.length > 0 ? statementPauses(tokens, phrases).filter((at) => !isTorn(phrases, at - 1)) : [];
  const bounds = printed.flatMap((stated, index) => {
    const within = isBare[index] ? pauses.filter((at) => at > stated.from && at < stated.to) : [];
    const held = [stated.from, ...within, stated.to];
    const starts = isBare[index]
      ? held
          .slice(1)
          .flatMap((to, at) => softStarts(tokens, held[at]!, to, sliceOf(phrases, held[at]!, to), placeFirst))
      : [];
    const edges = [...new Set([...held, ...starts])].sort((a, b) => a - b);
    return edges.slice(1).map((to, edge) => ({ from: edges[edge]!, to }));
  });
  return bounds.map((bound, index) => ({
    index,
    ...bound,
    phrases: sliceOf(phrases, bound.from, bound.to),
    isQuestion: tokens[bound.to - 1]?.breakAfter === 'question' && asks(tokens, bound.from, bound.to),
    text: textOf(tokens, bound.from, bound.to),
  }));
}
