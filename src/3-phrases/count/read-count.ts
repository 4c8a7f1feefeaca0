/** Numbers that are no place in the pipe. Reading them keeps them from being taken for one. */

import { isEndOfClause, readRelative } from '../distance/read-feet.ts';
import { isCleanFor, isTravelled } from '../distance/travel.ts';
import { type NumberPhrase, readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import type { PhraseOf } from '../phrase.ts';
import { isSilentBefore } from '../token/silence.ts';
import { type Token, textOf } from '../token/token.ts';
import { afterCount, beforeCount, lengthAfter, lengthBefore, lengthVerbs, mayEndName } from './lexicon.ts';

const afterSets = Object.entries(afterCount).map(([what, words]) => ({ what, set: phraseSet(words) }));
const beforeSets = Object.entries(beforeCount).map(([what, words]) => ({ what, set: phraseSet(words) }));
const feetUnit = phraseSet(['feet', 'foot', 'ft', '.']);

const lengthUnit = phraseSet(lengthAfter);
const lengthVerb = phraseSet(lengthVerbs);
const lengthLead = phraseSet(lengthBefore);

/** "ten feet long", "for the next five feet". */
export function readLength(tokens: readonly Token[], number: NumberPhrase): PhraseOf<'length'> | null {
  const after = phraseAfter(tokens, number.to, lengthUnit);
  if (after)
    return { family: 'length', feet: number.value, from: number.from, to: after.to, rule: '<number> feet long' };
  const unit = phraseAfter(tokens, number.to, feetUnit);
  const isLed =
    unit !== null &&
    !isTravelled(tokens, number.from) &&
    !isCleanFor(tokens, number.from, unit.to) &&
    phraseBefore(tokens, number.from, lengthLead) !== null;
  if (isBareLength(tokens, number))
    return { family: 'length', feet: number.value, from: number.from, to: number.to, rule: 'goes on for <number>' };
  const runs = unit !== null && phraseBefore(tokens, number.from, lengthVerb) !== null;
  if (runs && readRelative(tokens, number.from, unit.to) === null)
    return { family: 'length', feet: number.value, from: number.from, to: unit.to, rule: 'runs <number> feet' };
  return isLed && unit
    ? { family: 'length', feet: number.value, from: number.from, to: unit.to, rule: 'for <number> feet' }
    : null;
}

const goesOn = phraseSet([
  'goes|runs|carries|keeps|lasts on? for about|another?',
  'going|running on? for about|another?',
]);

/** "A low spot, and that goes on for another eight": the unit is left out. */
const isBareLength = (tokens: readonly Token[], number: NumberPhrase): boolean =>
  !number.isFraction &&
  number.value >= 2 &&
  isEndOfClause(tokens, number.to) &&
  phraseBefore(tokens, number.from, goesOn) !== null;

/** "… running about a foot": no number stands before the unit. */
export function readLengthAtUnit(tokens: readonly Token[], at: number): PhraseOf<'length'> | null {
  if (tokens[at]?.text !== 'foot' || tokens[at - 1]?.text !== 'a' || !isEndOfClause(tokens, at + 1)) return null;
  const lead = phraseBefore(tokens, at - 1, lengthVerb) ?? phraseBefore(tokens, at - 1, lengthLead);
  return lead === null ? null : { family: 'length', feet: 1, from: at - 1, to: at + 1, rule: 'runs a foot' };
}

/** "Nineteen no twenty": the "no" takes the first number back. */
const isTakenBack = (tokens: readonly Token[], { from }: NumberPhrase): boolean =>
  tokens[from - 1]?.text === 'no' &&
  (/^(feet|foot|ft)$/.test(tokens[from - 2]?.text ?? '') || readNumber(tokens, from - 2) !== null);

/** Words that say how deep the pipe lies. */
const ofDepth =
  /\b(locat\w+|sonde|deep|depth|dig|digging|dug|excavat\w+|buried|surface|grade|cover|ground|dirt|soil|trench|hole to)\b/;
const leadsPlace = /^(about|around|roughly|maybe|at|and|then|now|okay|so|just|only|say|alright|right|here)$/;
const SENTENCE_TOKENS = 30;

/** "Nine feet down there's a ball", "fourteen feet down, roots": said first, it is where the camera is and no depth. */
function isDownLine(
  tokens: readonly Token[],
  number: NumberPhrase,
  match: { readonly text: string; readonly to: number },
): boolean {
  if (!/^(feet|foot) down$/.test(match.text)) return false;
  let from = number.from;
  while (from > 0 && tokens[from - 1]!.breakAfter !== 'stop' && leadsPlace.test(tokens[from - 1]!.text)) from -= 1;
  const opens = from === 0 || tokens[from - 1]!.breakAfter !== 'none' || tokens[number.from - 1]?.text === 'at';
  const goesOn =
    tokens[match.to - 1]?.breakAfter === 'comma' ||
    /^(there|here|i|we|it|a|an|some|you|is|comes)$/.test(tokens[match.to]?.text ?? '');
  if (!opens || !goesOn || tokens[match.to - 1]?.breakAfter === 'stop') return false;
  let to = match.to;
  while (to < tokens.length && to < match.to + SENTENCE_TOKENS && !/stop|question/.test(tokens[to - 1]!.breakAfter))
    to += 1;
  return !ofDepth.test(textOf(tokens, from, to));
}

/** Whether a word at the start of a clause, or after one that points, is all there is to a name. */
const isCalledSo = (tokens: readonly Token[], at: number): boolean =>
  isEndOfClause(tokens, at) || /^(at|the|this|that|from|past|to|by|on|in|and|is|'s)$/.test(tokens[at - 1]!.text);

export function readCount(tokens: readonly Token[], number: NumberPhrase): PhraseOf<'count'> | null {
  const make = (what: string, to: number): PhraseOf<'count'> => ({
    family: 'count',
    what,
    from: number.from,
    to,
    rule: `<number> as ${what}`,
  });
  if (/^\$/.test(tokens[number.from]?.text ?? '')) return make('money', number.to);
  if (number.isFourFigure) {
    return make(number.value >= 1800 && number.value <= 2040 ? 'year' : 'count', number.to);
  }
  for (const { what, set } of afterSets) {
    const match = phraseAfter(tokens, number.to, set);
    // "twenty feet down the line" is along it.
    const isAlong = match?.text.endsWith(' down') && /^(the|this|in|from)$/.test(tokens[match.to]?.text ?? '');
    if (match && !isAlong && !isDownLine(tokens, number, match)) return make(what, match.to);
  }
  const hasUnit = phraseAfter(tokens, number.to, feetUnit) !== null;
  if (hasUnit) return null;
  if (isSilentBefore(tokens[number.from])) return null;
  for (const { what, set } of beforeSets) {
    const match = phraseBefore(tokens, number.from, set);
    if (!match || match.text.endsWith(',') || isTakenBack(tokens, number)) continue;
    if (!mayEndName.has(match.text) || isCalledSo(tokens, match.from)) return make(what, number.to);
  }
  return null;
}
