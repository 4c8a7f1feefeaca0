/** What stands directly before or after a number, looked up as whole phrases, longest first. */

import { expandPattern } from '../lexicon/pattern.ts';
import type { Token } from '../token/token.ts';

export type PhraseSet = ReadonlySet<string>;

/** The phrases of a list, each in every form its notation stands for. */
export function phraseSet(patterns: Iterable<string>): PhraseSet {
  const set = new Set<string>();
  for (const pattern of patterns) for (const words of expandPattern(pattern)) set.add(words.join(' '));
  return set;
}

const LONGEST_PHRASE = 8;

/** The longest phrase of the set that ends where `at` starts, with its first token, or null. Commas count as words. */
export function phraseBefore(
  tokens: readonly Token[],
  at: number,
  set: PhraseSet,
): { text: string; from: number } | null {
  let text = '';
  let best: { text: string; from: number } | null = null;
  for (let from = at - 1; from >= 0 && from >= at - LONGEST_PHRASE; from -= 1) {
    const token = tokens[from]!;
    if (token.breakAfter === 'stop' || token.breakAfter === 'question') break;
    const comma = token.breakAfter === 'comma' ? ' ,' : '';
    text = text === '' ? `${token.text}${comma}` : `${token.text}${comma} ${text}`;
    if (set.has(text)) best = { text, from };
  }
  return best;
}

/** The longest phrase of the set that starts at `at`, with the token after it, or null. */
export function phraseAfter(tokens: readonly Token[], at: number, set: PhraseSet): { text: string; to: number } | null {
  if (at > 0 && (tokens[at - 1]?.breakAfter ?? 'stop') !== 'none') return null;
  let text = '';
  let best: { text: string; to: number } | null = null;
  for (let to = at; to < tokens.length && to < at + LONGEST_PHRASE; to += 1) {
    const token = tokens[to]!;
    text = text === '' ? token.text : `${text} ${token.text}`;
    if (set.has(text)) best = { text, to: to + 1 };
    if (token.breakAfter === 'stop' || token.breakAfter === 'question') break;
    if (token.breakAfter === 'comma') text += ' ,';
  }
  return best;
}

/** The longest phrase of the set that starts at `at`, whatever stands before and after it, with the token after it, or null. */
export function phraseAt(tokens: readonly Token[], at: number, set: PhraseSet): { text: string; to: number } | null {
  let text = '';
  let best: { text: string; to: number } | null = null;
  for (let to = at; to < tokens.length && to < at + LONGEST_PHRASE; to += 1) {
    const token = tokens[to]!;
    text = text === '' ? token.text : `${text} ${token.text}`;
    if (set.has(text)) best = { text, to: to + 1 };
    if (token.breakAfter !== 'none') break;
  }
  return best;
}

/** The words between two tokens, commas included; null when a sentence ends between them. */
export function wordsBetween(tokens: readonly Token[], from: number, to: number): string | null {
  const parts: string[] = [];
  const before = tokens[from - 1]?.breakAfter;
  if (before === 'stop' || before === 'question') return null;
  if (before === 'comma') parts.push(',');
  for (let at = from; at < to; at += 1) {
    const token = tokens[at]!;
    parts.push(token.text);
    if (token.breakAfter === 'stop' || token.breakAfter === 'question') return null;
    if (token.breakAfter === 'comma') parts.push(',');
  }
  return parts.join(' ');
}
