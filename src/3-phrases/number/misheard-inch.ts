/** "For inch", "too inch": a number before "inch", printed as the word it sounds like. */
import type { Token } from '../token/token.ts';
import { readNumber } from './read-number.ts';

const sounds: ReadonlyMap<string, string> = new Map([
  ['for', '4'],
  ['fore', '4'],
  ['to', '2'],
  ['too', '2'],
  ['tree', '3'],
  ['sex', '6'],
  ['ate', '8'],
  ['tan', '10'],
]);
/** After these "inch" is what a person does: "to inch forward". */
const goesOn = /^(along|forward|forwards|past|up|through|my|our|its|it|the|this|by|back|closer|over|around|down|into)$/;

/** Puts the number back. The singular "inch" takes none of these words before it but as a number. */
export function respellInch(tokens: readonly Token[]): Token[] {
  return tokens.map((token, at) => {
    const number = sounds.get(token.text);
    const next = tokens[at + 1];
    if (number === undefined || next?.text !== 'inch' || token.breakAfter !== 'none') return token;
    if (next.breakAfter === 'none' && goesOn.test(tokens[at + 2]?.text ?? '')) return token;
    // "Cut it down to 3 to inch": a number of its own stands before.
    const isCounted = [1, 2, 3].some((back) => readNumber(tokens, Math.max(0, at - back))?.to === at);
    return isCounted ? token : { ...token, text: number };
  });
}
