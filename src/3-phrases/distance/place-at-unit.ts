/** "a foot past it", "a foot and a half on": no number stands before the unit. */
import { readNumber } from '../number/read-number.ts';
import type { Token } from '../token/token.ts';
import { isEndOfClause, readRelative } from './read-feet.ts';
import type { Place } from './read-place.ts';

export function readPlaceAtUnit(tokens: readonly Token[], at: number): Place | null {
  if (tokens[at]?.text !== 'foot') return null;
  const before = tokens[at - 1];
  const hasArticle = before !== undefined && before.breakAfter === 'none' && /^(a|one)$/.test(before.text);
  const opens = before === undefined || before.breakAfter !== 'none';
  const fraction =
    tokens[at]?.breakAfter === 'none' && tokens[at + 1]?.text === 'and' ? readNumber(tokens, at + 2) : null;
  if (!hasArticle && !(opens && fraction?.isFraction)) return null;
  const from = hasArticle ? at - 1 : at;
  const isHalf = hasArticle && tokens[from - 1]?.text === 'half';
  const feet = isHalf ? 0.5 : fraction?.isFraction ? 1 + fraction.value : 1;
  const to = fraction?.isFraction ? fraction.to : at + 1;
  const relative = readRelative(tokens, from, to);
  if (relative)
    return {
      from,
      to: relative.to,
      feet,
      frame: 'unit',
      sign: relative.sign,
      needsAnchor: relative.needsAnchor,
      isEnd: false,
    };
  // "For about a foot in there I couldn't see": how long it lasts, and of what.
  const isIn =
    tokens[to]?.text === 'in' &&
    (isEndOfClause(tokens, to + 1) ||
      !/^(there|here|it|that|the|this|length|width|diameter)$/.test(tokens[to + 1]?.text ?? ''));
  const isPlace = isIn || (fraction?.isFraction === true && isEndOfClause(tokens, to));
  return isPlace ? { from, to, feet, frame: 'unit', sign: null, needsAnchor: false, isEnd: false } : null;
}
