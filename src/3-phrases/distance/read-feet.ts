/** A number with its foot unit, and the way from somewhere that may follow it. */
import { type NumberPhrase, readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import { isSilentBefore } from '../token/silence.ts';
import type { Token } from '../token/token.ts';
import { relativeAfter } from './lexicon.ts';

export const unit = phraseSet([
  'feet',
  'foot',
  'ft',
  'feet even',
  'foot even',
  'feet or so',
  'feet ish',
  'footer',
  'foot mark',
  'foot marker',
  'feet flat',
  'feet exactly',
  'feet on the nose',
  'feet on the button',
  'feet and change',
  'foot and change',
]);

export const another = phraseSet([
  'another',
  'about another',
  'maybe another',
  'only another',
  'just another',
  'and another',
  'go another',
  'another good',
]);
const relatives = relativeAfter.map((entry) => ({ ...entry, set: phraseSet(entry.words) }));

interface Unit {
  readonly feet: number;
  readonly to: number;
}

/** The number with its foot unit, inches included: "7 foot 6", "nine feet four inches", "seven foot". */
export function readFeet(tokens: readonly Token[], number: NumberPhrase): Unit | null {
  const match = phraseAfter(tokens, number.to, unit);
  if (!match) return null;
  const isBareUnit = match.to === number.to + 1;
  const inches = isBareUnit && tokens[match.to - 1]?.breakAfter === 'none' ? readNumber(tokens, match.to) : null;
  if (inches && !inches.isFraction && Number.isInteger(inches.value) && inches.value >= 1 && inches.value <= 11) {
    const after = tokens[inches.to]?.text ?? '';
    const ends = (tokens[inches.to - 1]?.breakAfter ?? 'stop') !== 'none' || inches.to >= tokens.length;
    if (/^inch(es)?$/.test(after) && !ends) {
      const isSizeOfThing = after === 'inch' && tokens[inches.to]?.breakAfter === 'none';
      if (!isSizeOfThing) return { feet: number.value + inches.value / 12, to: inches.to + 1 };
    } else if (ends || /^(there|i|is|to|through|and|we|it|a)$/.test(after))
      return { feet: number.value + inches.value / 12, to: inches.to };
  }
  const half = readHalfAfter(tokens, match.to);
  return half ? { feet: number.value + half.value, to: half.to } : { feet: number.value, to: match.to };
}

/** "eighteen feet and a half", also where a stop was printed inside ("18 feet. And a half"). */
function readHalfAfter(tokens: readonly Token[], at: number): NumberPhrase | null {
  const next = tokens[at];
  if (next?.text !== 'and' || !(tokens[at - 1]?.breakAfter === 'none' || next.pauseBeforeSeconds < 1)) return null;
  const fraction = readNumber(tokens, at + 1);
  return fraction?.isFraction && !/^(inch|of|the|full)$/.test(tokens[fraction.to]?.text ?? '') ? fraction : null;
}

export function readRelative(
  tokens: readonly Token[],
  from: number,
  to: number,
): { sign: 1 | -1; needsAnchor: boolean; to: number } | null {
  const isAnother = phraseBefore(tokens, from, another) !== null;
  let best: { sign: 1 | -1; needsAnchor: boolean; to: number } | null = null;
  for (const entry of relatives) {
    const match = phraseAfter(tokens, to, entry.set);
    if (!match || (entry.needsAnchor && isEndOfClause(tokens, match.to))) continue;
    // "from forty four feet back to forty feet" is a stretch.
    if (match.text === 'back' && tokens[match.to]?.text === 'to' && readNumber(tokens, match.to + 1)) continue;
    // "after that hole" names an anchor, "after that, …" none.
    if (
      !entry.needsAnchor &&
      / that$/.test(match.text) &&
      !isEndOfClause(tokens, match.to) &&
      !/^(there|i|we|it|is|'s|you|at|the|a|an|and|another)$/.test(tokens[match.to]?.text ?? '')
    )
      continue;
    if (best === null || match.to > best.to || (match.to === best.to && entry.needsAnchor)) {
      best = { sign: entry.sign, needsAnchor: entry.needsAnchor, to: match.to };
    }
  }
  // "24 feet. On the left …" and "24 feet on the left" are places.
  if (
    best &&
    /^(on|in|from|off|after|out|along|away)$/.test(tokens[to]?.text ?? '') &&
    /^(the|a|this|my|your|top|left|right)$/.test(tokens[to + 1]?.text ?? '') &&
    best.to === to + 1 &&
    tokens[to]?.text === 'on' &&
    tokens[to]?.breakAfter === 'none'
  )
    return isAnother ? { sign: 1, needsAnchor: false, to } : null;
  if (best) return best;
  return isAnother ? { sign: 1, needsAnchor: false, to } : null;
}

/** Whether one statement ends and another may begin before the token at `at`, by what is printed or by silence. */
export const isEndOfClause = (tokens: readonly Token[], at: number): boolean =>
  at >= tokens.length || (tokens[at - 1]?.breakAfter ?? 'stop') !== 'none' || isSilentBefore(tokens[at]);
