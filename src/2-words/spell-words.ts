/** Tokens to words, with times that respect the voice detector and the recogniser's own probability for each. */
import type { Word } from '../../shared/schemas/word.ts';
import type { TokenTimes } from './align-words.ts';
import { toRecordingSeconds, type Window } from './cut-windows.ts';
import type { Decoded } from './decode-beam.ts';
import type { Span, Speech } from './find-speech.ts';
import type { TextWord } from './second-look.ts';
import type { TokenTable } from './token-table.ts';

/** A word this near to a cut in the middle of speech is marked. */
const BESIDE_CUT_WORDS = 1;

interface TokenGroup {
  readonly from: number;
  /** First token after the word, and after its letters (before the punctuation). */
  readonly to: number;
  readonly lettersTo: number;
  readonly text: string;
}

export function spellWords(
  tokens: TokenTable,
  decoded: Decoded,
  times: TokenTimes,
  window: Window,
  speech: Speech,
): TextWord[] {
  const groups = groupTokens(tokens, decoded.tokens);
  const spans = speech.spans.filter(
    (span) => span.endSeconds > window.startSeconds && span.startSeconds < window.endSeconds,
  );
  return groups.map((group, index): TextWord => {
    const start = toRecordingSeconds(window, times.startSeconds[group.from]!);
    const end = toRecordingSeconds(window, times.startSeconds[group.lettersTo] ?? window.seconds);
    const { startSeconds, endSeconds } = keepInSpeech(start, Math.max(end, start + 0.02), spans);
    const isBesideCut =
      (window.isCutAtStart && index < BESIDE_CUT_WORDS) ||
      (window.isCutAtEnd && index >= groups.length - BESIDE_CUT_WORDS);
    const word: Word = {
      text: group.text,
      startSeconds: round(startSeconds),
      endSeconds: round(endSeconds),
      probability: Math.exp(least(decoded.logProbs.slice(group.from, group.lettersTo))),
      ...(isBesideCut ? { besideCut: true } : {}),
    };
    return { from: group.from, to: group.to, word };
  });
}

/** A new word begins at a token with a leading space; punctuation belongs to the word before it. */
export function groupTokens(tokens: TokenTable, ids: readonly number[]): TokenGroup[] {
  const groups: TokenGroup[] = [];
  let from = 0;
  for (let to = 1; to <= ids.length; to++) {
    if (to < ids.length && !/^\s/.test(tokens.piece(ids[to]!))) continue;
    const text = tokens.decode(ids.slice(from, to)).trim();
    let lettersTo = to;
    while (lettersTo > from + 1 && /^[\p{P}\s]*$/u.test(tokens.piece(ids[lettersTo - 1]!))) lettersTo--;
    const last = groups.at(-1);
    if (/[\p{L}\p{N}]/u.test(text)) groups.push({ from, to, lettersTo, text });
    else if (last && text) groups[groups.length - 1] = { ...last, to, text: `${last.text}${text}` };
    from = to;
  }
  return groups;
}

/** Moves the edges of a word that reach into silence to where speech is. */
function keepInSpeech(
  start: number,
  end: number,
  spans: readonly Span[],
): { startSeconds: number; endSeconds: number } {
  let best: Span | null = null;
  let bestShared = 0;
  for (const span of spans) {
    const shared = Math.min(end, span.endSeconds) - Math.max(start, span.startSeconds);
    if (shared > bestShared) {
      bestShared = shared;
      best = span;
    }
  }
  if (!best) {
    // Wholly in silence: to the nearest edge, keeping its length.
    const length = Math.min(end - start, 0.4);
    for (const span of spans)
      if (span.startSeconds >= start)
        return { startSeconds: span.startSeconds, endSeconds: span.startSeconds + length };
    return { startSeconds: start, endSeconds: end };
  }
  return { startSeconds: Math.max(start, best.startSeconds), endSeconds: Math.min(end, best.endSeconds) };
}

const least = (values: readonly number[]): number => Math.min(...values, 0);
const round = (seconds: number): number => Math.round(seconds * 1000) / 1000;
