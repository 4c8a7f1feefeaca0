/** Turns of the pipe: "forty five degree bend", "a ninety", "two forty fives". Temperatures are left alone. */
import { type NumberPhrase, readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import type { PhraseOf } from '../phrase.ts';
import { type Token, textOf } from '../token/token.ts';

/** Angles that fittings are made in, in degrees. */
const fittingAngles: ReadonlySet<number> = new Set([11.25, 15, 22, 22.5, 30, 45, 60, 88, 90]);

/** Of these, what nobody calls a bend by without saying degrees: they are places, and hours of the day. */
const neverBare: ReadonlySet<number> = new Set([15, 30]);

const degreeUnit = phraseSet(['degree', 'degrees']);
const weather = phraseSet([
  'degrees out|outside|already|today|fahrenheit|celsius|below|above|in here|in the shade',
  'degrees and',
]);
const nounBefore = phraseSet([
  'a',
  'an',
  'another',
  'the',
  'that',
  'this',
  'my|your|our|his|her|its',
  'one',
  'tight',
  'a tight',
  'long sweep',
  'a long sweep',
  'long turn',
  'short',
  'a short',
  'hard',
  'a hard',
  'sharp',
  'a sharp',
  'gentle',
  'a gentle',
  'sweeping',
  'a sweeping',
  'a long',
  'long',
  'first',
  'second',
  'big',
  'a big',
  "it 's a",
  'quarter bend',
  'vented',
  'sweep',
  'elbow',
  'bend',
  'wye',
  'turns|turn|turning|bends|bend|swings|jogs|kicks|hooks left|right ,',
  'turns|turn|turning|bends|bend|swings|jogs|kicks|hooks to the left|right ,',
  'single',
  'double',
]);
/** What turns by so many degrees, said before the number. */
const change = phraseSet([
  'turns|bends|swings|veers|kicks|jogs|turn|bend',
  'change of direction ,',
  'direction change ,',
]);

/** Turns named by the part of a circle they make. */
const namedAngles: ReadonlyMap<string, number> = new Map([
  ['quarter', 90],
  ['1/4', 90],
  ['eighth', 45],
  ['1/8', 45],
  ['sixteenth', 22.5],
  ['1/16', 22.5],
]);

/** "quarter bend", "an eighth bend", "a right angle". */
export function readNamedAngle(tokens: readonly Token[], at: number): PhraseOf<'angle'> | null {
  const word = tokens[at]?.text ?? '';
  const next = tokens[at]?.breakAfter === 'none' ? (tokens[at + 1]?.text ?? '') : '';
  const degrees = /^(bend|bends|turn|ell|elbow)$/.test(next) ? namedAngles.get(word) : undefined;
  const isRight = word === 'right' && /^(angle|angles)$/.test(next);
  if (degrees === undefined && !isRight) return null;
  return {
    family: 'angle',
    degrees: degrees ?? 90,
    count: 1,
    isNoun: false,
    from: at,
    to: at + 2,
    rule: '<part> bend',
  };
}

const feetUnit = phraseSet([
  'feet',
  'foot',
  'ft',
  'inch',
  'inches',
  '%',
  "o'clock",
  'years',
  'year',
  'minutes',
  'minute',
  'dollars',
  'bucks',
  'mile',
  'miles',
  'pound',
  'gallon',
]);
const turnAfter = phraseSet([
  'to the left|right',
  'left',
  'right',
  'bend',
  'elbow',
  'sweep',
  'turn',
  'ell',
  'long sweep',
  'to the left again',
  'again to the',
  'going|heading|turning|headed|bending|off|toward|towards left|right|down|up|downhill|down_hill|uphill|to|into|in|under',
  'going|heading|turning down|up hill',
  'down',
  'up into',
  'under',
  'into the',
]);
const notFeet = phraseSet(["o'clock", '%', 'percent', 'dollars', 'bucks']);
const plurals: Readonly<Record<string, number>> = { fives: 5, '45s': 45, '90s': 90, nineties: 90, '22s': 22.5 };
const pluralAngle = phraseSet(['fives']);

export function readAngle(
  tokens: readonly Token[],
  number: NumberPhrase,
  lastAngleTo: number,
): PhraseOf<'angle'> | null {
  const make = (degrees: number, count: number, to: number, isNoun: boolean, rule: string): PhraseOf<'angle'> => ({
    family: 'angle',
    // The fitting called a twenty two turns by half a degree more.
    degrees: degrees === 22 ? 22.5 : degrees,
    count,
    isNoun,
    from: number.from,
    to,
    rule,
  });
  const unit = phraseAfter(tokens, number.to, degreeUnit);
  if (unit && !phraseAfter(tokens, number.to, weather)) {
    if (!fittingAngles.has(number.value)) return null;
    const turns =
      phraseAfter(tokens, unit.to, turnAfter) !== null || phraseBefore(tokens, number.from, change) !== null;
    return make(number.value, 1, unit.to, turns, '<angle> degrees');
  }
  // "two forty fives": the number read is the count, the angle stands in the next words.
  const spelled = tokens[number.to];
  if (number.value <= 4 && spelled && /^(forty|45s|90s|nineties)$/.test(spelled.text)) {
    if (spelled.text !== 'forty')
      return make(plurals[spelled.text] ?? 45, number.value, number.to + 1, true, '<count> <angle>s');
    if (phraseAfter(tokens, number.to + 1, pluralAngle))
      return make(45, number.value, number.to + 2, true, '<count> <angle>s');
  }
  if (!fittingAngles.has(number.value) || phraseAfter(tokens, number.to, feetUnit)) return null;
  if (neverBare.has(number.value) || isCorrected(tokens, number)) return null;
  // "Scale from thirty down to forty" is a stretch.
  const turn = phraseAfter(tokens, number.to, turnAfter);
  const isTurned =
    turn !== null &&
    !(turn.text === 'down' && /^(to|through|thru)$/.test(tokens[turn.to]?.text ?? '')) &&
    // "Roots at forty five left side."
    !(/^(left|right)$/.test(turn.text) && /^(side|hand|wall)$/.test(tokens[turn.to]?.text ?? ''));
  // "Coupling at eleven, ninety at fifteen": an angle with a place of its own.
  const opens =
    number.from === 0 ||
    tokens[number.from - 1]?.breakAfter !== 'none' ||
    /^(then|and|another|got)$/.test(tokens[number.from - 1]?.text ?? '');
  const place =
    opens && tokens[number.to]?.text === 'at' && tokens[number.to - 1]?.breakAfter === 'none'
      ? readNumber(tokens, number.to + 1)
      : null;
  const isPlaced =
    place !== null && !phraseAfter(tokens, place.to, notFeet) && /^(22\.5|45|90)$/.test(String(number.value));
  const isNoun =
    isTurned ||
    keepsTurning(tokens, number) ||
    isPlaced ||
    opensTurn(tokens, number) ||
    phraseBefore(tokens, number.from, nounBefore) !== null;
  const repeatsAngle =
    lastAngleTo >= 0 && number.from - lastAngleTo <= 8 && (number.value === 45 || number.value === 90);
  if (!isNoun && (isOfBend(tokens, number) || isAfterPlacedBend(tokens, number) || isLoneAfterBend(tokens, number)))
    return make(number.value, 1, number.to, false, 'bend, <angle>');
  return isNoun || repeatsAngle
    ? make(number.value, 1, number.to, isNoun, isNoun ? 'a <angle>' : '<angle> again')
    : null;
}

/** "Make that forty five": a value given anew. */
const isCorrected = (tokens: readonly Token[], { from }: NumberPhrase): boolean =>
  tokens[from - 1]?.text === 'that' &&
  /^(make|scratch|strike|call|forget|correct|scrap|put|mark|say|move|change)$/.test(tokens[from - 2]?.text ?? '');

/** "Forty five, no, keeps turning": the angle so far. */
const turning =
  /^((no|nope|well|or|and|but|it|she|oh|wait|that|'s|hang on|hold on) )*(keeps?( on)?|still|(goes|carries|going) on|is|'s) (turning|bending|curving|sweeping|going (a?round)|coming (a?round))\b/;
const TURNING_TOKENS = 10;

const keepsTurning = (tokens: readonly Token[], number: NumberPhrase): boolean =>
  /^(22|22\.5|45|90)$/.test(String(number.value)) &&
  turning.test(textOf(tokens, number.to, Math.min(tokens.length, number.to + TURNING_TOKENS)));

/** "Ninety, to the left.": by itself it would be a place with a side. */
const opensTurn = (tokens: readonly Token[], { value, from, to }: NumberPhrase): boolean =>
  /^(22\.5|45|90)$/.test(String(value)) &&
  /^(stop|question)$/.test(tokens[from - 1]?.breakAfter ?? 'stop') &&
  tokens[to - 1]?.breakAfter === 'comma' &&
  /^(to the (left|right)|(long|short|hard|gentle) (sweep|turn|bend)|sweep|bend|elbow)\b/.test(
    textOf(tokens, to, to + 3),
  ) &&
  // "Forty five, to the left there's a tee".
  /^(comma|stop|question)$/.test(tokens[to + 2]?.breakAfter ?? 'stop');

/** "The pipe sweeps at five. Ninety.": alone in its sentence, and the bend before it has its place. */
function isLoneAfterBend(tokens: readonly Token[], { value, from, to }: NumberPhrase): boolean {
  const isStop = (at: number): boolean => /^(stop|question)$/.test(tokens[at]?.breakAfter ?? 'stop');
  if (!/^(22\.5|45|90)$/.test(String(value)) || !isStop(from - 1) || !isStop(to - 1) || from === 0) return false;
  let isTurn = false;
  for (let at = from - 1; at >= 0 && from - at <= 2 * BEND_TOKENS && (at === from - 1 || !isStop(at)); at -= 1) {
    if (bendWord.test(tokens[at]!.text) || /^(sweeps|bending|elbows|curves|swings|rolls)$/.test(tokens[at]!.text))
      isTurn = true;
    else if (isTurn && readNumber(tokens, at) !== null) return true;
  }
  return false;
}

/** How a turn is described between its place and its angle. */
const describesTurn =
  /^(feet|foot|in|slow|long|sweep|sweeps|gentle|hard|sharp|soft|short|slight|one|off|to|the|left|right|a|it|'s|about|just|goes|going|heading|turning|turns|up|down|and|that|this|looks|like|maybe|probably|call|i|'d|say|swings|bears|hooks|of|degrees|uh|um)$/;

/** "Bend at five, slow one, off to the left, twenty two and a half.": its place was said, and nothing else since. */
function isAfterPlacedBend(tokens: readonly Token[], { value, from, to }: NumberPhrase): boolean {
  if (!/^(22\.5|45|90)$/.test(String(value)) || /^(at|reads|says)$/.test(tokens[from - 1]?.text ?? '')) return false;
  const ends = /^(stop|question)$/.test(tokens[to - 1]?.breakAfter ?? 'stop');
  if (value !== 22.5 && !ends && !/^(left|right|to)$/.test(tokens[to]?.text ?? '')) return false;
  let isPlaced = false;
  for (let at = from - 1; at >= Math.max(0, from - 2 * BEND_TOKENS); at -= 1) {
    const { text, breakAfter } = tokens[at]!;
    if (/^(stop|question)$/.test(breakAfter)) return false;
    if (bendWord.test(text) && isPlaced) return true;
    if (!isPlaced && readNumber(tokens, at) !== null && text !== 'one') {
      isPlaced = true;
      at = tokens[at - 1]?.text === 'at' ? at - 1 : at;
    } else if (!describesTurn.test(text)) return false;
  }
  return false;
}

/** So far after the word for it, in tokens, a bend's angle may stand. */
const BEND_TOKENS = 8;
const bendWord = /^(bend|bends|elbow|ell|sweep|turn|turns)$/;

/** Whether a number stands before a token in its sentence. */
function isPlacedBefore(tokens: readonly Token[], at: number): boolean {
  for (let back = at - 1; back >= Math.max(0, at - BEND_TOKENS); back -= 1) {
    if (/^(stop|question)$/.test(tokens[back]!.breakAfter)) return false;
    if (readNumber(tokens, back) !== null) return true;
  }
  return false;
}

/**
 * "Bend, forty five, right", "a bend to the right 45 14 feet": a number beside a bend is its angle where a side or another
 * number follows; by itself ("bend, forty five") it may be where the bend is.
 */
function isOfBend(tokens: readonly Token[], number: NumberPhrase): boolean {
  if (!/^(22|22\.5|45|90)$/.test(String(number.value))) return false;
  if (/^(at|to|from|counter|reads|says)$/.test(tokens[number.from - 1]?.text ?? '')) return false;
  for (let at = number.from - 1; at >= Math.max(0, number.from - BEND_TOKENS); at -= 1) {
    const token = tokens[at]!;
    if (token.breakAfter === 'stop' || token.breakAfter === 'question' || /^\d/.test(token.text)) return false;
    if (!bendWord.test(token.text)) continue;
    // "The pipe is going to bend, forty five."
    if (/^(to|gonna|will|'ll)$/.test(tokens[at - 1]?.text ?? '')) return true;
    const next = tokens[number.to]?.text ?? '';
    // "Ten, bend, left, forty five.": its place was said before it.
    if (
      isPlacedBefore(tokens, at) &&
      (at === number.from - 1 || /^(left|right)$/.test(tokens[number.from - 1]?.text ?? ''))
    )
      return true;
    const goesOn = (tokens[number.to - 1]?.breakAfter ?? 'stop') !== 'stop';
    return goesOn && (/^(left|right|up|down|to)$/.test(next) || readNumber(tokens, number.to) !== null);
  }
  return false;
}
