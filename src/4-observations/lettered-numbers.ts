/** A sentence with letters for its numbers, so that the shape of what is said of them can be told from the words alone. */
import { type Token, textOf } from '../3-phrases/token/token.ts';

interface Spoken {
  readonly from: number;
  readonly to: number;
}

export function letterNumbers<Said extends Spoken>(
  tokens: readonly Token[],
  sentence: Spoken,
  numbers: readonly Said[],
  letterOf: (number: Said) => string = () => 'N',
): string {
  const parts: string[] = [];
  let at = sentence.from;
  for (const number of numbers) {
    if (number.from < at) continue;
    parts.push(textOf(tokens, at, number.from), letterOf(number));
    at = number.to;
  }
  parts.push(textOf(tokens, at, sentence.to));
  return parts.filter((part) => part !== '').join(' ');
}
