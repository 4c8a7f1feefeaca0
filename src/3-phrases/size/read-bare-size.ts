/**
 * Sizes said without their unit: "clay, and it's a six", "Cast. Four.", "three inch, no, four", "an inch. No, three quarters."
 * A bare number is as often a place, so each shape asks for words that leave no place to be meant.
 */
import type { NumberPhrase } from '../number/read-number.ts';
import { phraseAfter, phraseSet } from '../number/surroundings.ts';
import type { PhraseOf } from '../phrase.ts';
import type { Token } from '../token/token.ts';
import { nominalInches } from './lexicon.ts';

export type SizePhrase = PhraseOf<'inches'> | PhraseOf<'diameter'>;

export interface BareSizeContext {
  readonly tokens: readonly Token[];
  readonly materialEndsAt: (index: number) => boolean;
  readonly isPipeTalk: (index: number) => boolean;
}

/** How far behind a size, in tokens, it may be put right. */
const RESTATED_TOKENS = 10;
/** The sizes a lone number is taken for: larger ones are as likely to be feet. */
const loneSizes: ReadonlySet<number> = new Set([2, 3, 4, 5, 6]);
const commonSizes: ReadonlySet<number> = new Set([3, 4, 6]);
/** A size of a thing put right is no larger than this; above it the number is a place. */
const MOST_INCHES = 3;

const otherUnit = phraseSet(
  "feet|foot|ft|%|percent|o'clock|degrees|degree|years|minutes|hours|bucks|dollars|and|to|by|or".split('|'),
);
const takesBack =
  /\b(no|nope|nah|wait|sorry|actually|rather|correction|hang|scratch|make|plainly|mistake|meant|mean|but|(?:go|going) with|settle|fussy|precise)\b/;
const leadsToValue =
  /(^| )(no|nope|sorry|wait|actually|rather|correction|'s|is|be|it|that|say|like|than|meant|mean|plainly|only|just|to|about|a|an|with)$/;
const isSizeLead =
  /\b(it|that|this|which|pipe|line|lateral|one|stuff|and|so) ?('s|is|be|'d be|was)?( all| still| only| just| about| probably)* an?$/;

function wordsFrom(tokens: readonly Token[], from: number, to: number): string {
  return tokens
    .slice(Math.max(0, from), to)
    .map((token) => token.text)
    .join(' ');
}

const endsThere = (tokens: readonly Token[], to: number): boolean =>
  (tokens[to - 1]?.breakAfter ?? 'stop') !== 'none' ||
  to >= tokens.length ||
  /^(so|but|now|here|from|all|which|then|throughout|this|i)$/.test(tokens[to]?.text ?? '');

const isStop = (token: Token | undefined): boolean =>
  token === undefined || token.breakAfter === 'stop' || token.breakAfter === 'question';

/** The first token of the sentence that holds or ends at a token. */
function sentenceStart(tokens: readonly Token[], at: number): number {
  let from = at;
  while (from > 0 && !isStop(tokens[from - 1])) from -= 1;
  return from;
}

/** A size put right without its unit, after the size said last. */
function restated(tokens: readonly Token[], number: NumberPhrase, last: SizePhrase | null): SizePhrase | null {
  if (last === null || number.from - last.to > RESTATED_TOKENS || number.from < last.to) return null;
  const between = wordsFrom(tokens, last.to, number.from);
  if (!takesBack.test(between) || !leadsToValue.test(between)) return null;
  const shared = { inches: number.value, from: number.from, to: number.to, rule: '<size> put right' };
  if (last.family === 'diameter') return nominalInches.has(number.value) ? { family: 'diameter', ...shared } : null;
  return number.value <= MOST_INCHES && (number.isFraction || last.inches >= 1)
    ? { family: 'inches', ...shared }
    : null;
}

/** "Four or five inch? Five." */
function answersChoice(tokens: readonly Token[], number: NumberPhrase): boolean {
  const from = number.from;
  if (tokens[from - 1]?.breakAfter !== 'question') return false;
  const asked = tokens.slice(sentenceStart(tokens, from - 1), from).map((token) => token.text);
  const said = tokens[from]!.text;
  const choice = asked.indexOf('or');
  return (
    choice > 0 && asked.length <= 8 && asked.includes(said) && !asked.some((word) => /^(feet|foot|at|%)$/.test(word))
  );
}

/** "Cast. Four.": nothing but a size after nothing but a material. */
function followsMaterial(context: BareSizeContext, number: NumberPhrase): boolean {
  const { tokens, materialEndsAt } = context;
  if (!isStop(tokens[number.to - 1]) || !materialEndsAt(number.from)) return false;
  const from = sentenceStart(tokens, number.from - 1);
  if (!isStop(tokens[number.from - 1])) return commonSizes.has(number.value) && number.from - from <= 4;
  // "Thirty. Clay. Four.": where places stand first, the next number is the next place.
  const before = tokens[from - 1];
  // "Four inch clay. Four. Wye.": the size was said, and the number is a place.
  if (tokens.slice(from, number.from).some((token) => /^inch(es)?$/.test(token.text))) return false;
  const isPlaceFirst = before !== undefined && /^\d/.test(before.text) && before.text !== '0';
  return loneSizes.has(number.value) && number.from - from <= 4 && !isPlaceFirst;
}

export function readBareSize(
  context: BareSizeContext,
  number: NumberPhrase,
  last: SizePhrase | null,
): SizePhrase | null {
  const { tokens } = context;
  if (phraseAfter(tokens, number.to, otherUnit) || !endsThere(tokens, number.to)) return null;
  const again = restated(tokens, number, last);
  if (again) return again;
  if (!nominalInches.has(number.value) || number.value < 2) return null;
  const from = sentenceStart(tokens, number.from);
  const isCalled = isSizeLead.test(wordsFrom(tokens, Math.max(from, number.from - 6), number.from));
  // "Clay tile. It's a six.": the sentence before speaks of the pipe.
  const speaksOfPipe =
    context.isPipeTalk(number.from) || (from > 0 && number.from - from <= 5 && context.isPipeTalk(from - 1));
  if ((isCalled && speaksOfPipe) || followsMaterial(context, number) || answersChoice(tokens, number))
    return { family: 'diameter', inches: number.value, from: number.from, to: number.to, rule: '<pipe> is a <size>' };
  return null;
}
