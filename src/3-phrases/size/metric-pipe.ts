/**
 * Pipes called by their size in millimetres: "a hundred mil clay" is what others call four inch. The pairs are those of DN and
 * NPS (ISO 6708, ASME B36.10) and, for 82, 110 and 160, the outer sizes plastic drains are sold by; from memory.
 */
import { type NumberPhrase, readNumbers } from '../number/read-number.ts';
import type { Token } from '../token/token.ts';

const inchesOf: ReadonlyMap<number, number> = new Map([
  [32, 1.25],
  [40, 1.5],
  [50, 2],
  [75, 3],
  [80, 3],
  [82, 3],
  [100, 4],
  [110, 4],
  [150, 6],
  [160, 6],
  [200, 8],
  [225, 9],
  [250, 10],
  [300, 12],
]);
const millimetres = /^(mil|mils|mill|mm|millimetre|millimetres|millimeter|millimeters)$/;

/** The tokens with such sizes as the inches they stand for; the words they were cut from stay. */
export function respellMetricPipe(tokens: readonly Token[]): Token[] {
  if (!tokens.some(({ text }) => millimetres.test(text))) return [...tokens];
  const sizes = readNumbers(tokens).filter(
    ({ value, to }) => inchesOf.has(value) && millimetres.test(tokens[to]?.text ?? ''),
  );
  const starts = new Map<number, NumberPhrase>(sizes.map((size) => [size.from, size]));
  const respelled: Token[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const size = starts.get(at);
    if (!size) {
      respelled.push(tokens[at]!);
      continue;
    }
    const last = tokens[size.to - 1]!;
    respelled.push(
      { ...tokens[at]!, text: `${inchesOf.get(size.value)}`, lastWord: last.lastWord, endSeconds: last.endSeconds },
      { ...tokens[size.to]!, text: 'inch' },
    );
    at = size.to;
  }
  return respelled;
}
