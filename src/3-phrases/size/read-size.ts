/**
 * Inches: the size of a thing ("half an inch", "an inch and a half", "two inches deep") or the nominal size of the
 * pipe ("four inch cast iron", "size four").
 */
import type { NumberPhrase } from '../number/read-number.ts';
import { readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import type { PhraseOf } from '../phrase.ts';
import type { Token } from '../token/token.ts';
import { nominalInches, pipeAfterInch, pipeBefore, sizeAfter } from './lexicon.ts';

const inchUnit = phraseSet([
  'inch',
  'inches',
  'an inch',
  'of an inch',
  'in diameter',
  'inch diameter',
  'inches in diameter',
]);
const pipeAfter = phraseSet(pipeAfterInch);
const pipeWordsBefore = phraseSet(pipeBefore);
const defectAfter = phraseSet(sizeAfter);
const saysSize = phraseSet([
  'size',
  'size is',
  'size also',
  'size ,',
  'diameter',
  'diameter is',
  'diameter ,',
  'nominal diameter',
  'diameter of',
  'size of',
  'sizes',
]);

const afterInch = phraseSet(['inch to', 'inches to', 'inch to a', 'inch down to', 'inch up to', 'inch by']);
const feetUnit = phraseSet(['feet', 'foot', 'ft', 'and', '%', 'percent', "o'clock"]);

interface SizeContext {
  readonly tokens: readonly Token[];
  /** Whether a pipe material starts at a token, and whether one ends there. */
  readonly materialStartsAt: (index: number) => boolean;
  readonly materialEndsAt: (index: number) => boolean;
  /** Whether the sentence round a token speaks of the pipe itself and of no defect. */
  readonly isPipeTalk: (index: number) => boolean;
  /** Whether the sentence round a token names something that is measured in inches, and no pipe. */
  readonly isDefectTalk: (index: number) => boolean;
}

/** So far before its size, in tokens, what the pipe is of may be said. */
const MATERIAL_TOKENS = 6;

/** "It's clay and it's six inch ten feet there's a crack": without stops, the next number is a place and the size is the pipe's. */
function opensPlace({ tokens, materialEndsAt }: SizeContext, from: number, to: number): boolean {
  const next = readNumber(tokens, to);
  if (next === null || !/^(feet|foot|ft)$/.test(tokens[next.to]?.text ?? '')) return false;
  for (let at = from; at > from - MATERIAL_TOKENS && at > 0; at -= 1) {
    if (materialEndsAt(at)) return true;
    if (
      !/^(and|it|'s|is|this|that|so|here|pipe|line|about|a|also|which|all|now|still|of|in|um|uh)$/.test(
        tokens[at - 1]?.text ?? '',
      )
    )
      return false;
    if (readNumber(tokens, at - 1) !== null || /stop|question/.test(tokens[at - 1]?.breakAfter ?? 'stop')) return false;
  }
  return false;
}

function isPipeSize(context: SizeContext, from: number, to: number, inches: number): boolean {
  if (!nominalInches.has(inches)) return false;
  const { tokens } = context;
  const isAcross = tokens[to]?.text === 'across' && context.isPipeTalk(from);
  if (!isAcross && phraseAfter(tokens, to, defectAfter)) return false;
  if (isAcross) return true;
  if (context.materialStartsAt(to)) return true;
  const isJoined = (tokens[to - 1]?.breakAfter ?? 'stop') === 'none';
  if (isJoined && phraseAfter(tokens, to, pipeAfter)) return true;
  if (isJoined && tokens[to] && (context.materialStartsAt(to + 1) || context.materialStartsAt(to + 2))) return true;
  const isOneInch = tokens[to - 1]?.text === 'inch';
  if (isOneInch && context.materialEndsAt(from) && inches >= 1.25) return true;
  if (isOneInch && inches >= 1.25 && opensPlace(context, from, to)) return true;
  const endsSentence =
    !isJoined ||
    to >= tokens.length ||
    /^(so|and|now|the|that|which|but|this|here|they|i|we|it|you|he|she|there)$/.test(tokens[to]?.text ?? '');
  if (endsSentence && context.materialEndsAt(from)) return true;
  if (endsSentence && inches >= 1.25 && context.isPipeTalk(from)) return true;
  // "Black pipe, and it's a three inch at the start."
  const goesOn =
    /^(at|to|for|from|here|all|right|by|as|or|when|while|if|because|with|until|till|coming|going|then|not)$/;
  if (isOneInch && goesOn.test(tokens[to]?.text ?? '') && inches >= 1.25 && context.isPipeTalk(from)) return true;
  // "Cast iron, four inch." and "Three inch this time."
  const isSingular = tokens[to - 1]?.text === 'inch';
  // "A sag at nine feet, two inch."
  if (context.isDefectTalk(from) && !phraseBefore(tokens, from, pipeWordsBefore)) return false;
  const startsClause = from === 0 || tokens[from - 1]?.breakAfter !== 'none';
  if (isSingular && startsClause && (endsSentence || context.materialStartsAt(to + 1)))
    return inches >= 1.25 && inches !== 1;
  return isSingular && endsSentence && phraseBefore(tokens, from, pipeWordsBefore) !== null && inches >= 2;
}

/** A size read at a number. */
export function readSize(context: SizeContext, number: NumberPhrase): PhraseOf<'inches'> | PhraseOf<'diameter'> | null {
  const { tokens } = context;
  const unit = phraseAfter(tokens, number.to, inchUnit);
  if (!unit) {
    if (nominalInches.has(number.value) && phraseBefore(tokens, number.from, saysSize)) {
      return { family: 'diameter', inches: number.value, from: number.from, to: number.to, rule: 'size <number>' };
    }
    // "four inch to three": the unit is said once.
    if (
      nominalInches.has(number.value) &&
      phraseBefore(tokens, number.from, afterInch) !== null &&
      !phraseAfter(tokens, number.to, feetUnit)
    )
      return { family: 'diameter', inches: number.value, from: number.from, to: number.to, rule: '<size> to <number>' };
    // "from three to four inch".
    const other = tokens[number.to]?.text === 'to' ? readNumber(tokens, number.to + 1) : null;
    if (
      other &&
      nominalInches.has(number.value) &&
      nominalInches.has(other.value) &&
      phraseAfter(tokens, other.to, inchUnit)
    )
      return { family: 'diameter', inches: number.value, from: number.from, to: number.to, rule: '<number> to <size>' };
    return null;
  }
  const isPipe =
    / diameter/.test(unit.text) ||
    phraseBefore(tokens, number.from, saysSize) !== null ||
    isPipeSize(context, number.from, unit.to, number.value);
  return isPipe && nominalInches.has(number.value)
    ? { family: 'diameter', inches: number.value, from: number.from, to: unit.to, rule: '<number> inch <pipe>' }
    : { family: 'inches', inches: number.value, from: number.from, to: unit.to, rule: '<number> inches' };
}

const saysPart =
  /^(half|quarter|eighth|eighths|quarters|thirds|sixteenth|sixteenths|each|every|per|this|that|few|many)$/;

/** "an inch and a half", "inch and a half", "an inch": no number stands before the unit. */
export function readSizeAtUnit(context: SizeContext, at: number): PhraseOf<'inches'> | PhraseOf<'diameter'> | null {
  const { tokens } = context;
  if (tokens[at]?.text !== 'inch') return null;
  const before = tokens[at - 1];
  const hasArticle = before !== undefined && before.breakAfter === 'none' && /^(an|a|good|full)$/.test(before.text);
  const isJoined = tokens[at]?.breakAfter === 'none';
  const fraction = isJoined && tokens[at + 1]?.text === 'and' ? readNumber(tokens, at + 2) : null;
  const from = hasArticle ? at - 1 : at;
  if (fraction?.isFraction) {
    const inches = 1 + fraction.value;
    const shared = { inches, from, to: fraction.to, rule: 'an inch and <fraction>' };
    return isPipeSize(context, from, fraction.to, inches)
      ? { family: 'diameter', ...shared }
      : { family: 'inches', ...shared };
  }
  // "maybe inch of water": where no number and no article was printed, it is one.
  const isOne =
    isJoined && /^(of|deep|thick|wide|or)$/.test(tokens[at + 1]?.text ?? '') && !saysPart.test(before?.text ?? '');
  return hasArticle || isOne ? { family: 'inches', inches: 1, from, to: at + 1, rule: 'an inch' } : null;
}
