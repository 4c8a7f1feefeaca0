/** "three o'clock", "nine to three o'clock", "between one and two o'clock". Spans run clockwise. */
import type { NumberPhrase } from '../number/read-number.ts';
import { wordsBetween } from '../number/surroundings.ts';
import type { PhraseOf } from '../phrase.ts';
import type { Token } from '../token/token.ts';

const isHour = (number: NumberPhrase | undefined): number is NumberPhrase =>
  number !== undefined && Number.isInteger(number.value) && number.value >= 1 && number.value <= 12;

const unitWord = "o'clock";

function clockEnd(tokens: readonly Token[], number: NumberPhrase): number | null {
  if (tokens[number.to - 1]?.breakAfter !== 'none') return null;
  return tokens[number.to]?.text === unitWord ? number.to + 1 : null;
}

/** The clock phrase that starts with this number, with the number of numbers it used. */
export function readClock(
  tokens: readonly Token[],
  numbers: readonly NumberPhrase[],
  index: number,
): { phrase: PhraseOf<'clock'>; used: number } | null {
  const number = numbers[index];
  if (!isHour(number)) return null;
  const end = clockEnd(tokens, number);
  const next = numbers[index + 1];
  const joined = isHour(next) ? wordsBetween(tokens, end ?? number.to, next.from) : null;
  const nextEnd = isHour(next) ? clockEnd(tokens, next) : null;
  if (
    isHour(next) &&
    nextEnd !== null &&
    joined !== null &&
    /^(to|and|through|till|until|or|around to|over to|clear around to)$/.test(joined)
  ) {
    return {
      phrase: {
        family: 'clock',
        hour: number.value,
        toHour: joined === 'or' ? null : next.value,
        from: number.from,
        to: nextEnd,
        rule: '<hour> to <hour>',
      },
      used: 2,
    };
  }
  if (end === null) return null;
  return {
    phrase: { family: 'clock', hour: number.value, toHour: null, from: number.from, to: end, rule: '<hour>' },
    used: 1,
  };
}
