/** "three o'clock", "nine to three o'clock", "between one and two o'clock". Spans run clockwise. */
import type { NumberPhrase } from '../number/read-number.ts';
import { wordsBetween } from '../number/surroundings.ts';
import type { PhraseOf } from '../phrase.ts';
import type { Token } from '../token/token.ts';

const isHour = (number: NumberPhrase | undefined): number is NumberPhrase =>
  number !== undefined && Number.isInteger(number.value) && number.value >= 1 && number.value <= 12;

const unitWord = "o'clock";
const timeOfDay = /^(am|pm|a\.m|p\.m|sharp|today|tomorrow|tonight|meeting|appointment|closing)$/;
const spanWords =
  /^(to|and|through|till|until|or|around to|round to|over to|clear around to|all the way around to|over the top to|across the top to|around the bottom to|along the bottom to|around the top to)$/;
const unitAfter = /^(feet|foot|ft|inch|inches|percent|%|degrees|degree|years|minutes|hours|o'clock)$/;

function clockEnd(tokens: readonly Token[], number: NumberPhrase): number | null {
  if (tokens[number.to - 1]?.breakAfter !== 'none') return null;
  // "It's almost four o'clock."
  const isTime =
    /^(almost|nearly|already|past|until|till)$/.test(tokens[number.from - 1]?.text ?? '') &&
    /^('s|is|not)$/.test(tokens[number.from - 2]?.text ?? '');
  const isClock = tokens[number.to]?.text === unitWord && !isTime && !timeOfDay.test(tokens[number.to + 1]?.text ?? '');
  return isClock ? number.to + 1 : null;
}

/** "Between nine and ten on the clock"; with one number it may as well be the counter that is called so. */
const onClock = (tokens: readonly Token[], first: NumberPhrase, { to }: NumberPhrase): number | null =>
  tokens[first.from - 1]?.text === 'between' &&
  /^on (the|a) (clock|dial)$/.test([0, 1, 2].map((next) => tokens[to + next]?.text ?? '').join(' '))
    ? to + 3
    : null;

/** "from ten to two", with no "o'clock": hours over the top and no feet, for the count never runs backward. */
function isBareSpan(
  tokens: readonly Token[],
  first: NumberPhrase,
  second: NumberPhrase,
  joined: string | null,
): boolean {
  const lead = tokens[first.from - 1]?.text ?? '';
  return (
    first.value >= 8 &&
    second.value <= 5 &&
    ((/^(to|through|around to|round to)$/.test(joined ?? '') && /^(from|at|the|about)$/.test(lead)) ||
      (joined === 'and' && lead === 'between')) &&
    !unitAfter.test(tokens[second.to]?.text ?? '') &&
    !/^(down|size|inch)$/.test(tokens[first.from - 2]?.text ?? '')
  );
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
  const nextEnd = isHour(next) ? (clockEnd(tokens, next) ?? onClock(tokens, number, next)) : null;
  if (
    isHour(next) &&
    joined !== null &&
    ((nextEnd !== null && spanWords.test(joined)) ||
      // "nine o'clock to three"
      (nextEnd === null && end !== null && joined === 'to' && !unitAfter.test(tokens[next.to]?.text ?? '')) ||
      (nextEnd === null && end === null && isBareSpan(tokens, number, next, joined)))
  ) {
    return {
      phrase: {
        family: 'clock',
        hour: number.value,
        toHour: joined === 'or' ? null : next.value,
        from: number.from,
        to: nextEnd ?? next.to,
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
