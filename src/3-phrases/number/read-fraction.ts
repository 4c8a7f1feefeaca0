/** Parts of one: "half", "three quarters", "halfway up the pipe", "3/4". */
import { fractionParts, ones } from './lexicon.ts';
import { type NumberPart, runsOn, type Tokens, text } from './number-part.ts';

/** "Third of the pipe.", "Eighth of an inch.": the article is left out. */
const partOf = /^of (an inch|the (pipe|bore|line|opening|diameter|way)$)/;

const opensClause = (tokens: Tokens, at: number): boolean =>
  at === 0 || !runsOn(tokens, at) || /^(about|maybe|roughly)$/.test(text(tokens, at - 1));

/** "halfway up the pipe", "about halfway up". */
function readHalfway(tokens: Tokens, at: number): NumberPart | null {
  if (text(tokens, at + 1) !== 'up' || !runsOn(tokens, at + 1)) return null;
  if (tokens[at + 2] === undefined || !runsOn(tokens, at + 2)) return { value: 1 / 2, to: at + 2 };
  const isBore = text(tokens, at + 2) === 'the' && /^(pipe|lens|wall|bore|sides?)$/.test(text(tokens, at + 3));
  return isBore ? { value: 1 / 2, to: at + 1 } : null;
}

/** "half", "a half", "one quarter", "three quarters", "3/4", without a whole number before. */
export function readFraction(tokens: Tokens, at: number): NumberPart | null {
  const printed = /^(\d+)\/(\d+)$/.exec(text(tokens, at));
  if (printed?.[1] && printed[2] && Number(printed[2]) !== 0)
    return { value: Number(printed[1]) / Number(printed[2]), to: at + 1 };
  // "2 and a 1/2".
  const isPrintedAfter =
    text(tokens, at) === 'a' && runsOn(tokens, at + 1) && /^\d+\/[1-9]\d*$/.test(text(tokens, at + 1));
  if (isPrintedAfter) return readFraction(tokens, at + 1);
  const alone = fractionParts.get(text(tokens, at));
  if (alone?.standsAlone) return { value: alone.worth, to: at + 1 };
  const word = text(tokens, at);
  if (word === 'halfway') return readHalfway(tokens, at);
  if (alone && opensClause(tokens, at) && partOf.test([1, 2, 3].map((next) => text(tokens, at + next)).join(' ')))
    return { value: alone.worth, to: at + 1 };
  const count =
    word === 'a' || word === 'an' || word === '1'
      ? 1
      : (ones.get(word) ?? (/^[2-9]$/.test(word) ? Number(word) : undefined));
  // "a good third", "a solid quarter".
  const partAt =
    count === 1 && /^(good|solid|full|strong|healthy|bare|scant|decent)$/.test(text(tokens, at + 1)) ? at + 2 : at + 1;
  const part = fractionParts.get(text(tokens, partAt));
  if (count === undefined || part === undefined || !runsOn(tokens, at + 1) || !runsOn(tokens, partAt)) return null;
  return count * part.worth < 1 ? { value: count * part.worth, to: partAt + 1 } : null;
}
