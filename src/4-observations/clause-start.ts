/** Where, between two things, the second statement begins, when the recogniser printed nothing: at a silence or at a word that opens a clause. */
import type { Phrase } from '../3-phrases/phrase.ts';
import { isSilentBefore } from '../3-phrases/token/silence.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';

export const pausesAt = (tokens: readonly Token[], at: number): boolean =>
  isSilentBefore(tokens[at]) && !leansOn.test(tokens[at - 1]?.text ?? '');

/** Words that need another after them: no statement ends with one. */
const leansOn =
  /^(a|an|the|of|to|in|on|at|with|is|'s|are|'re|'m|was|were|like|kind|some|any|no|my|your|our|his|her|and|or|for|from|by|into|through|about|around|got|have|has|see|say|see|how|just|very|really|pretty|more|another|same|little|big|old|good|it's|there's|that's|call|if|when|where|because|than|'ve|'ll|'d|not|don't|can't|be|been|first|next|second|i|we|they)$/;
/** Words after which nobody stops of their own will; the others that lean on the next may also be the last ("here we are"). */
const leansHard =
  /^(a|an|the|of|to|at|with|into|my|our|your|his|their|and|or|because|than|very|really|'m|'re|'ve|'ll|'d|i|we|they|it's|there's|that's|kind|some|don't|not)$/;

/** Whether the silence before a token surely tears a statement. */
export const tearsAt = (tokens: readonly Token[], at: number): boolean =>
  isSilentBefore(tokens[at]) && leansHard.test(tokens[at - 1]?.text ?? '');

/** What a statement opens with, the surest first. */
const openings: readonly (readonly [RegExp, number])[] = [
  [/^(and|so|then|but|now|okay|ok|alright|anyway|well|oh|um|uh|also|next|whoa|hey|all right) /, 1.6],
  [/^(there|here) ('s|is|are|was|we|i|comes|goes) /, 1.6],
  [/^(we|i) ('ve|got|have|see|'m|'re|can|hit|had) /, 1.4],
  [/^(that|it|this|they|these|those) ('s|is|are|was|looks|goes|has|turns|ends|starts) /, 1.1],
  [/^(at|from|another|between|past|after|before|just past|coming up) /, 0.9],
  [/^(that|this|the|a|an|my|we|i|you|it|some|more|no) /, 0.3],
];

/** "i didn't see any" belongs to the thing it denies. */
const denies =
  /^((i|we) )?(don't|didn't|haven't|do not|did not|have not|never|not) (see|saw|seen|seeing|find|found|have|got|notice) /;
const DENIAL = 1.6;

const NEARER = 0.1;
const PAUSE = 3;
const PLACE = 0.9;
const LEANING = -4;
const INSIDE = -9;
/** A clause is looked for this far before a thing, in tokens. */
const REACH_TOKENS = 12;

/** The token between `floor` and `at` at which the statement of what stands at `at` most likely begins. */
export function clauseStart(tokens: readonly Token[], floor: number, at: number, phrases: readonly Phrase[]): number {
  let best = at;
  let bestScore = Number.NEGATIVE_INFINITY;
  const near = phrases.filter((phrase) => phrase.to > floor && phrase.from <= at);
  for (let start = at; start >= Math.max(floor, at - REACH_TOKENS); start -= 1) {
    const words = `${textOf(tokens, start, start + 4)} `;
    let score = -(at - start) * NEARER;
    if (isSilentBefore(tokens[start])) score += PAUSE;
    score += openings.find(([words_]) => words_.test(words))?.[1] ?? 0;
    if (denies.test(words)) score += DENIAL;
    if (near.some((phrase) => phrase.family === 'distance' && phrase.from === start)) score += PLACE;
    if (leansOn.test(tokens[start - 1]?.text ?? '')) score += LEANING;
    if (near.some((phrase) => phrase.family !== 'assertion' && phrase.from < start && phrase.to > start))
      score += INSIDE;
    if (score > bestScore) {
      bestScore = score;
      best = start;
    }
  }
  return best;
}
