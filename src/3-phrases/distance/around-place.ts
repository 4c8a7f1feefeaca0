/** What the words round a number say of it: how deep the pipe lies, that a stretch ends there, how far inside something it is. */

import { type NumberPhrase, readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import { type Token, textOf } from '../token/token.ts';
import { leadOf } from './lead.ts';
import { insideAfter } from './lexicon.ts';
import { isEndOfClause } from './read-feet.ts';

/** How far before a number, in tokens, words of depth are looked for. */
const DEPTH_TOKENS = 10;
/** Laterals are no wider. */
const LARGEST_INCHES = 12;

/** "Depth to invert, nine feet", "the locator puts it at seven feet": how deep the pipe lies, not where the camera is. */
export function isDepth(tokens: readonly Token[], number: NumberPhrase): boolean {
  for (let at = number.from - 1; at >= 0 && at >= number.from - DEPTH_TOKENS; at -= 1) {
    if (/^(stop|question)$/.test(tokens[at]?.breakAfter ?? '')) return false;
    const isOfThing = tokens[at]?.text === 'deep' && /^inch(es)?$/.test(tokens[at - 1]?.text ?? '');
    if (!isOfThing && /^(depth|locator|locates|sonde|deep)$/.test(tokens[at]?.text ?? '')) return true;
  }
  return false;
}

/** "Six down to four": what the pipe's size steps down to. */
export function isSizeStep(tokens: readonly Token[], { from, value }: NumberPhrase): boolean {
  if (textOf(tokens, Math.max(0, from - 2), from) !== 'down to') return false;
  const before = readNumber(tokens, from - 3);
  return before !== null && before.to === from - 2 && before.value > value && before.value <= LARGEST_INCHES;
}

const otherUnit = /^(years?|dollars|bucks|minutes|hours|%|percent|degrees|inch|inches|gallons|pounds)$/;
const amends = /^(well|or|maybe|no|like|say|rather|than)$/;

/** "Two hundred gallons, or maybe ninety": what was counted before the comma is counted still. */
export function isOtherAmount(tokens: readonly Token[], number: NumberPhrase): boolean {
  if (!amends.test(tokens[number.from - 1]?.text ?? '') || !isEndOfClause(tokens, number.to)) return false;
  for (let at = number.from - 2; at >= Math.max(0, number.from - DEPTH_TOKENS); at -= 1) {
    if (/^(stop|question)$/.test(tokens[at]!.breakAfter)) return false;
    if (otherUnit.test(tokens[at]!.text)) return true;
    if (/^(feet|foot|ft|at)$/.test(tokens[at]!.text)) return false;
  }
  return false;
}

/** "Four by six", "a bushing from five down to three": sizes, where neither is more than a drain is wide. */
export function isSizePair(tokens: readonly Token[], number: NumberPhrase): boolean {
  const isSize = (value: number): boolean => value >= 1.5 && value <= LARGEST_INCHES;
  if (!isSize(number.value)) return false;
  const first = tokens[number.from - 1]?.text === 'by' ? readNumber(tokens, number.from - 2) : null;
  if (first && first.to === number.from - 1 && isSize(first.value)) return true;
  if ((tokens[number.to - 1]?.breakAfter ?? 'stop') !== 'none') return false;
  const by = tokens[number.to]?.text === 'by' ? readNumber(tokens, number.to + 1) : null;
  if (by && isSize(by.value)) return true;
  const down = textOf(tokens, number.to, number.to + 2) === 'down to' ? readNumber(tokens, number.to + 2) : null;
  return (
    down !== null &&
    isSize(down.value) &&
    down.value < number.value &&
    reduces.test(leadOf(tokens, number.from, SUBJECT_TOKENS))
  );
}

const reduces =
  /\b(reduc\w*|bushing|increaser|necks?|necked|size|sizes|pipe|takes it|taking it|goes from|going from|drops from|steps?)\b/;
/** How far before a number, in tokens, what is spoken of is looked for. */
const SUBJECT_TOKENS = 14;

/** "37, I'm out of it": the ending is told after its number. */
const outAfter =
  /^(feet |foot )?(and |then |and then )?(i 'm|we 're|it 's|i come|we come|i 've come|we 've come) (back )?(out( of (it|that|there|the \w+))?|clear( of it)?|through it|gone|over|past it)( |$)/;

export function endsAfter(tokens: readonly Token[], at: number): boolean {
  // "It begins at thirty one. I'm out of it at forty."
  if (/\b(begin|begins|began|start|starts|started|from)\b/.test(textOf(tokens, Math.max(0, at - 5), at))) return false;
  const words = textOf(tokens, at, at + 9);
  const match = outAfter.exec(words)?.[0];
  if (match === undefined) return false;
  // "I'm out in the street", "we're out of tape": no stretch ends there.
  const next = tokens[at + match.trim().split(' ').length]?.text ?? '';
  // "6 feet it's gone oval": what it has become.
  if (/gone $/.test(`${match.trim()} `) && !/^(|and|again|now|so|then|there|that|i|we|it|the)$/.test(next))
    return false;
  return !/^(in|into|on|at|under|by|to|here|of)$/.test(next);
}

const pulledBack = phraseSet(
  [
    'back up',
    'backing up',
    'backed up',
    'back it up',
    'back off',
    'pull back',
    'pulled back',
    'pull it back',
    'come back',
    'coming back',
    'back her up',
  ].flatMap((words) => [words, `${words} about`, `${words} maybe`, `${words} another`]),
);

/** "Back up two feet": how far, not where. */
export const isPulledBack = (tokens: readonly Token[], at: number): boolean =>
  phraseBefore(tokens, at, pulledBack) !== null;

const inside = phraseSet(insideAfter);
/** What is the pipe itself, or not in it: "five feet into the line" is a place. */
const wholeLine =
  /^(line|pipe|run|lateral|sewer|drain|ground|street|yard|house|wall|hill|main|system|job|inspection|video)$/;

/** "four feet into the liner": the token after "into", or null. */
export function readInside(tokens: readonly Token[], at: number): number | null {
  const match = phraseAfter(tokens, at, inside);
  if (!match) return null;
  if (/ (it|that|this)$/.test(match.text)) return isEndOfClause(tokens, match.to) ? match.to : null;
  const isNamed = /^(the|that|this|our|your)$/.test(tokens[match.to]?.text ?? '');
  return isNamed && !wholeLine.test(tokens[match.to + 1]?.text ?? '') ? match.to : null;
}
