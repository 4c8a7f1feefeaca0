/**
 * Whether a number without a unit stands where a place may: at the beginning of what is said, behind words that count nothing,
 * or before the other end of a stretch.
 */
import { readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseSet } from '../number/surroundings.ts';
import type { Token } from '../token/token.ts';
import { rangeBetween } from './lexicon.ts';
import { isEndOfClause } from './read-feet.ts';

/** Words before a bare number that make it count something, not place it. */
const countLeads =
  /^(the|a|an|those|these|all|my|your|his|her|our|their|of|for|with|by|than|number|every|each|another|first|last|next|old|only|just|had|has|have|were|two|three|got|took|takes|paid|like|lost|over|under|some|any|other|same|to|than|both|least|most|roughly|around|almost|nearly|another|good|other|is|be|as|or|say|says|said|call|calling|called|since|need|needs|want|see|saw|seen|find|found|after|before|within|maybe|done|did)$/;

export function opensPlace(tokens: readonly Token[], at: number, endsPhraseAt: (index: number) => boolean): boolean {
  if (isEndOfClause(tokens, at)) return true;
  const before = tokens[at - 1]?.text ?? '';
  return endsPhraseAt(at) || !countLeads.test(before);
}

const rangeWords = phraseSet(rangeBetween);

/** "Nine and a half down to twelve": the other end follows. */
export function opensRange(tokens: readonly Token[], at: number, feet: number): boolean {
  const words = phraseAfter(tokens, at, rangeWords);
  const other = words === null || words.text === 'or' ? null : readNumber(tokens, words.to);
  return other !== null && (words?.text === 'back to' ? other.value < feet : other.value > feet);
}
