/** "From 38 2 41", "down 2 26": a "to" between numbers, printed as the number it sounds like. */
import type { Token } from '../token/token.ts';
import { readNumber } from './read-number.ts';

const sounds = /^(2|two|too)$/;
/** Before the word: what can only go on with "to". */
const leads = /^(down|out|up|goes|runs|over|way|going|running|on|back|clear|along)$/;
const starts = /^(from|starts|starting|begins|beginning|between)$/;

/** The number that ends before a token, or null. Numbers are short; a few tokens back are enough. */
function numberBefore(tokens: readonly Token[], at: number): { from: number; value: number } | null {
  for (let from = Math.max(0, at - 4); from < at; from += 1) {
    const number = readNumber(tokens, from);
    if (number?.to === at && number.value >= 1) return { from, value: number.value };
  }
  return null;
}

/** Puts the "to" back. Believed only where a stretch is plainly meant: a foot unit after it, or "from" before it. */
export function respellTo(tokens: readonly Token[]): Token[] {
  return tokens.map((token, at) => {
    if (!sounds.test(token.text) || token.breakAfter !== 'none' || tokens[at - 1]?.breakAfter !== 'none') return token;
    const next = readNumber(tokens, at + 1);
    if (
      !next ||
      next.isFraction ||
      next.isVague ||
      !/\d|teen|ty|^(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)/.test(tokens[at + 1]?.text ?? '')
    )
      return token;
    const hasUnit = /^(feet|foot)$/.test(tokens[next.to]?.text ?? '');
    const isInch = /^(inch|inches|%)$/.test(tokens[next.to]?.text ?? '');
    if (isInch) return token;
    const unitBefore = /^(feet|foot)$/.test(tokens[at - 1]?.text ?? '');
    const before = numberBefore(tokens, unitBefore ? at - 1 : at);
    const isRange =
      before !== null &&
      next.value > before.value &&
      (hasUnit || unitBefore || starts.test(tokens[before.from - 1]?.text ?? ''));
    const isLed = leads.test(tokens[at - 1]?.text ?? '') && next.value > 2;
    return isRange || isLed ? { ...token, text: 'to' } : token;
  });
}
