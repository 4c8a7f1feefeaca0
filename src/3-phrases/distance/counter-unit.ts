/**
 * Which unit the camera's counter shows, by what is said after numbers, and the talk in that unit: a job in metres reads its
 * metres where another reads its feet, so that nothing after this has to know.
 */
import type { Unit } from '../../../shared/wording/short.ts';
import type { NumberPhrase } from '../number/read-number.ts';
import type { Token } from '../token/token.ts';

const metre = /^(metre|meter)$/;
const metres = /^(metres|meters)$/;
const feet = /^(feet|foot|ft)$/;

/** Where a number ends that the next word may give a unit to. */
const endsOf = (tokens: readonly Token[], numbers: readonly NumberPhrase[]): ReadonlySet<number> =>
  new Set(numbers.map(({ to }) => to).filter((to) => tokens[to - 1]?.breakAfter === 'none'));

/** Metres when they are said after numbers more often than feet. */
export function counterUnitOf(tokens: readonly Token[], numbers: readonly NumberPhrase[]): Unit {
  const ends = [...endsOf(tokens, numbers)];
  const saidAfter = (...units: readonly RegExp[]): number =>
    ends.filter((at) => units.some((unit) => unit.test(tokens[at]?.text ?? ''))).length;
  return saidAfter(metres, metre, /^m$/) > saidAfter(feet) ? 'm' : 'ft';
}

/** The tokens with the words for metres as the rules know the counter's unit. "The water meter" is none. */
export function inCounterUnit(
  tokens: readonly Token[],
  numbers: readonly NumberPhrase[],
  unit: Unit,
): readonly Token[] {
  if (unit === 'ft') return tokens;
  const ends = endsOf(tokens, numbers);
  return tokens.map((token, at) => {
    if (metres.test(token.text) || (token.text === 'm' && ends.has(at))) return { ...token, text: 'feet' };
    const isOne = metre.test(token.text) && (ends.has(at) || /^(a|half|another)$/.test(tokens[at - 1]?.text ?? ''));
    return isOne ? { ...token, text: 'foot' } : token;
  });
}
