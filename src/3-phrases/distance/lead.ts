/** The words that lead to a number in its sentence. */
import { type Token, textOf } from '../token/token.ts';

/** Where they begin: at the start of the sentence, or so many tokens back. */
export function leadStart(tokens: readonly Token[], at: number, reachTokens: number): number {
  let from = at;
  while (from > 0 && at - from < reachTokens && !/^(stop|question)$/.test(tokens[from - 1]!.breakAfter)) from -= 1;
  return from;
}

export const leadOf = (tokens: readonly Token[], at: number, reachTokens: number): string =>
  textOf(tokens, leadStart(tokens, at, reachTokens), at);
