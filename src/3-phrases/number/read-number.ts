/**
 * Reads one number at a token, however it was said or printed: "forty two and a half", "11.5", "eleven point four",
 * "one oh six", "two twelve", "a hundred and five", "three quarters", "a couple", "11. And a half".
 * It gives the value and the tokens it took; what the number is for is decided by the families that use it.
 * Published number grammars stop short of these forms or fail silently on them, so this one is ours.
 */
import { fractionParts, misheardOnes, noughts, ones, teens, tens } from './lexicon.ts';
import { type NumberPart, runsOn, type Tokens, text } from './number-part.ts';
import { readFraction } from './read-fraction.ts';

export interface NumberPhrase {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  /** True for "half", "a quarter": a part of one and nothing else. */
  readonly isFraction: boolean;
  /** True for "a couple". */
  readonly isVague: boolean;
  /** A four-figure reading such as a year or a house number ("nineteen fifty eight"). */
  readonly isFourFigure: boolean;
  /** Set when a word was taken for another ("fifty to feet" for "fifty two feet"). */
  readonly respelled?: { readonly heard: string; readonly taken: string };
}

function readTwoFigures(tokens: Tokens, at: number): NumberPart | null {
  const word = text(tokens, at);
  const teen = teens.get(word);
  if (teen !== undefined) return { value: teen, to: at + 1 };
  const ten = tens.get(word);
  if (ten === undefined) return null;
  const one = runsOn(tokens, at + 1) ? ones.get(text(tokens, at + 1)) : undefined;
  return one === undefined ? { value: ten, to: at + 1 } : { value: ten + one, to: at + 2 };
}

function readBelowHundred(tokens: Tokens, at: number): NumberPart | null {
  const two = readTwoFigures(tokens, at);
  if (two) return two;
  const one = ones.get(text(tokens, at));
  return one === undefined ? null : { value: one, to: at + 1 };
}

function readHundreds(tokens: Tokens, at: number): NumberPart | null {
  const counted = ones.get(text(tokens, at));
  const isArticle = text(tokens, at) === 'a';
  const hundredAt = counted !== undefined || isArticle ? at + 1 : at;
  if (text(tokens, hundredAt) !== 'hundred' || (hundredAt > at && !runsOn(tokens, hundredAt))) return null;
  const base = (counted ?? 1) * 100;
  let restAt = hundredAt + 1;
  if (!runsOn(tokens, restAt)) return { value: base, to: restAt };
  if (text(tokens, restAt) === 'and') restAt += 1;
  const isFraction =
    /^(a|one|three)$/.test(text(tokens, restAt)) && fractionParts.get(text(tokens, restAt + 1)) !== undefined;
  const rest = isFraction ? null : readBelowHundred(tokens, restAt);
  return rest ? { value: base + rest.value, to: rest.to } : { value: base, to: hundredAt + 1 };
}

function readWords(tokens: Tokens, at: number): NumberPart | null {
  if (text(tokens, at) === 'zero') return { value: 0, to: at + 1 };
  // "Nought point six"; alone the word may be an "oh".
  const none: NumberPart = { value: 0, to: at + 1 };
  if (noughts.has(text(tokens, at)) && readDecimals(tokens, none)) return none;
  const hundreds = readHundreds(tokens, at);
  if (hundreds) return hundreds;
  const first = readBelowHundred(tokens, at);
  if (!first) return null;
  if (!runsOn(tokens, first.to)) return first;
  const next = text(tokens, first.to);
  const isNought = noughts.has(next);
  const afterNought = isNought && runsOn(tokens, first.to + 1) ? ones.get(text(tokens, first.to + 1)) : undefined;
  if (afterNought !== undefined) {
    return { value: first.value * 100 + afterNought, to: first.to + 2, isFourFigure: first.value >= 10 };
  }
  const second = readTwoFigures(tokens, first.to);
  const isPlural =
    /^(fives|nineties)$/.test(text(tokens, second?.to ?? -1)) || /^(fives|nineties)$/.test(text(tokens, first.to + 1));
  if (isPlural) return first;
  if (second && first.value < 10) return { value: first.value * 100 + second.value, to: second.to };
  if (second && first.value <= 99 && first.value >= 10 && second.value !== first.value + 1 && second.value > 9) {
    const isYearOrHouse = first.value <= 20 || second.to - first.to === 2;
    if (isYearOrHouse) return { value: first.value * 100 + second.value, to: second.to, isFourFigure: true };
  }
  if (next === 'thousand' && first.value < 100) {
    const rest = runsOn(tokens, first.to + 1) ? readBelowHundred(tokens, first.to + 1) : null;
    return { value: first.value * 1000 + (rest?.value ?? 0), to: rest?.to ?? first.to + 1, isFourFigure: true };
  }
  return first;
}

function readDigits(tokens: Tokens, at: number): NumberPart | null {
  const word = text(tokens, at);
  const station = /^(\d{1,2})\+(\d{2}(?:\.\d+)?)$/.exec(word);
  if (station) return { value: Number(station[1]) * 100 + Number(station[2]), to: at + 1 };
  if (!/^\d+(\.\d+)?$/.test(word)) return null;
  // "52. 5 feet": a decimal point torn off by the recogniser.
  if (/^\d{2,}$/.test(word) && tokens[at]?.breakAfter === 'stop' && /^\d$/.test(text(tokens, at + 1))) {
    const isUnit = /^(feet|foot)$/.test(text(tokens, at + 2)) && runsOn(tokens, at + 2);
    const isJoined = (tokens[at + 1]?.pauseBeforeSeconds ?? 1) < 0.3;
    if (isUnit && isJoined) return { value: Number(`${word}.${text(tokens, at + 1)}`), to: at + 2 };
  }
  return { value: Number(word), to: at + 1, isFourFigure: /^\d{4,}$/.test(word) };
}

function readDecimals(tokens: Tokens, whole: NumberPart): NumberPart | null {
  return runsOn(tokens, whole.to) ? readAfterPoint(tokens, whole) : null;
}

function readAfterPoint(tokens: Tokens, whole: NumberPart): NumberPart | null {
  if (text(tokens, whole.to) !== 'point') return null;
  let digits = '';
  let at = whole.to + 1;
  while (digits.length < 2) {
    const word = text(tokens, at);
    if (digits !== '' && !runsOn(tokens, at)) break;
    const one = ones.get(word);
    if (one !== undefined) digits += String(one);
    else if (noughts.has(word)) digits += '0';
    else if (/^\d{1,2}$/.test(word) && digits === '') digits += word;
    else if (digits === '' && readTwoFigures(tokens, at)) {
      const two = readTwoFigures(tokens, at)!;
      return { value: Number(`${whole.value}.${two.value}`), to: two.to };
    } else break;
    at += 1;
  }
  return digits === '' ? null : { value: Number(`${whole.value}.${digits}`), to: at };
}

function readTail(tokens: Tokens, whole: NumberPart): NumberPart | null {
  const direct =
    runsOn(tokens, whole.to) && /^\d+\/\d+$/.test(text(tokens, whole.to)) ? readFraction(tokens, whole.to) : null;
  if (direct) return { value: whole.value + direct.value, to: direct.to };
  // "11. And a half": the stop was printed inside the number.
  const isClose = (tokens[whole.to]?.pauseBeforeSeconds ?? 1) < 0.5;
  if (text(tokens, whole.to) !== 'and' || !(runsOn(tokens, whole.to) || isClose)) return null;
  const fraction = runsOn(tokens, whole.to + 1) ? readFraction(tokens, whole.to + 1) : null;
  return fraction ? { value: whole.value + fraction.value, to: fraction.to } : null;
}

const unitWords = /^(feet|foot|inch|inches|%)$/;

function readMisheardTail(tokens: Tokens, at: number): NumberPhrase | null {
  const ten = tens.get(text(tokens, at)) ?? (/^[2-9]0$/.test(text(tokens, at)) ? Number(text(tokens, at)) : undefined);
  const one = misheardOnes.get(text(tokens, at + 1));
  if (ten === undefined || one === undefined || !runsOn(tokens, at + 1)) return null;
  // "From thirty to, let's see, thirty eight."
  if (text(tokens, at + 1) === 'to' && /^(from|between|starting|starts|begins|beginning)$/.test(text(tokens, at - 1)))
    return null;
  // "40 for." and "50 for and we have the main" cannot be the small words.
  const isCutOff = at + 2 >= tokens.length || !runsOn(tokens, at + 2) || /^(and|so|okay)$/.test(text(tokens, at + 2));
  if (!unitWords.test(text(tokens, at + 2)) && !isCutOff) return null;
  const heard = `${text(tokens, at)} ${text(tokens, at + 1)}`;
  return {
    from: at,
    to: at + 2,
    value: ten + one,
    isFraction: false,
    isVague: false,
    isFourFigure: false,
    respelled: { heard, taken: String(ten + one) },
  };
}

/** "fifty two five": the tenths read aloud, believed only where a unit or a break follows. */
function readSpokenTenths(tokens: Tokens, whole: NumberPart): NumberPart | null {
  const tenths = readBelowTen(tokens, whole.to)?.value;
  if (tenths === undefined || whole.value < 10 || whole.value % 1 !== 0) return null;
  // "12 4 feet" is two readings; "52 five" and "fifty two five" are one.
  if (/^\d/.test(text(tokens, whole.to)) && /^\d/.test(text(tokens, whole.to - 1))) return null;
  const isLast = whole.to + 1 >= tokens.length;
  const ends = isLast || !runsOn(tokens, whole.to + 1) || /^(feet|foot)$/.test(text(tokens, whole.to + 1));
  return ends && whole.value % 10 !== 0 ? { value: whole.value + tenths / 10, to: whole.to + 1 } : null;
}

/** "Station one plus sixty four", "at one plus oh five": hundreds of feet, and feet, which are always two figures. */
function readStation(tokens: Tokens, at: number): NumberPart | null {
  const hundreds = noughts.has(text(tokens, at))
    ? { value: 0, to: at + 1 }
    : (readDigits(tokens, at) ?? readWords(tokens, at));
  if (!hundreds || text(tokens, hundreds.to) !== 'plus' || !runsOn(tokens, hundreds.to)) return null;
  const from = hundreds.to + 1;
  if (!runsOn(tokens, from)) return null;
  const isPadded = /^(zero|0)$/.test(text(tokens, from)) || noughts.has(text(tokens, from));
  const padded = isPadded ? readBelowTen(tokens, from + 1) : null;
  const feet = padded ?? readDigits(tokens, from) ?? readWords(tokens, from);
  if (!feet || feet.value >= 100) return null;
  // "Nine plus ten more": feet are added to the last place.
  const isStation =
    hundreds.value < 10 && (padded !== null || feet.value >= 10) && !moreWords.test(text(tokens, feet.to));
  if (text(tokens, at - 1) !== 'station' && !isStation) return null;
  const tenths = readDecimals(tokens, feet) ?? readTail(tokens, feet);
  return { value: hundreds.value * 100 + (tenths ?? feet).value, to: (tenths ?? feet).to };
}

const moreWords = /^(more|further|farther|additional|on|years?|bucks|dollars)$/;

function readBelowTen(tokens: Tokens, at: number): NumberPart | null {
  const printed = /^\d$/.test(text(tokens, at)) ? Number(text(tokens, at)) : undefined;
  const value = ones.get(text(tokens, at)) ?? printed;
  return value === undefined || !runsOn(tokens, at) ? null : { value, to: at + 1 };
}

const unitAfter = (tokens: Tokens, at: number): string =>
  text(tokens, at) === 'of' ? [0, 1, 2].map((next) => text(tokens, at + next)).join(' ') : text(tokens, at);

/** Reads the number that starts at token `at`, or gives null. */
export function readNumber(tokens: Tokens, at: number): NumberPhrase | null {
  const phrase = (part: NumberPart, more: { isFraction?: boolean; isVague?: boolean } = {}): NumberPhrase => ({
    from: at,
    to: part.to,
    value: part.value,
    isFraction: more.isFraction ?? false,
    isVague: more.isVague ?? false,
    isFourFigure: part.isFourFigure ?? false,
  });
  const couple =
    text(tokens, at) === 'couple' ? at : text(tokens, at) === 'a' && text(tokens, at + 1) === 'couple' ? at + 1 : -1;
  if (couple >= 0)
    return phrase({ value: 2, to: text(tokens, couple + 1) === 'of' ? couple + 2 : couple + 1 }, { isVague: true });
  const misheard = readMisheardTail(tokens, at);
  if (misheard) return misheard;
  const station = readStation(tokens, at);
  if (station) return phrase(station);
  // "Point seven five of an inch": the nought is left out.
  const isBarePoint =
    text(tokens, at) === 'point' &&
    !/^(that|this|the|a|one|some|no|which|good|my|your|high|low)$/.test(text(tokens, at - 1));
  const bare = isBarePoint ? readAfterPoint(tokens, { value: 0, to: at }) : null;
  if (
    bare &&
    /^(of an inch|inch|inches|percent|%|feet|foot|metre|metres|meter|meters)$/.test(unitAfter(tokens, bare.to))
  )
    return phrase(bare, { isFraction: text(tokens, bare.to) === 'of' });
  const whole = readDigits(tokens, at) ?? readWords(tokens, at);
  const fraction = readFraction(tokens, at);
  if (fraction && (!whole || fraction.to > whole.to)) return phrase(fraction, { isFraction: true });
  if (!whole) return null;
  return phrase(readDecimals(tokens, whole) ?? readTail(tokens, whole) ?? readSpokenTenths(tokens, whole) ?? whole);
}

/** Every number in the talk, leftmost first, none overlapping. */
export function readNumbers(tokens: Tokens): NumberPhrase[] {
  const numbers: NumberPhrase[] = [];
  for (let at = 0; at < tokens.length; ) {
    const number = readNumber(tokens, at);
    if (number) numbers.push(number);
    at = number ? number.to : at + 1;
  }
  return numbers;
}
