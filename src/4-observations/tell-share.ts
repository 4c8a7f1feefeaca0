/** "Roots at 18, forty percent blocked": the words with the share name no second thing, they say how much of the pipe is left. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Assertion } from './assert-claim.ts';
import { type Claim, kindTakes } from './claim.ts';
import { mentionAgain } from './items.ts';
import { shareKinds } from './kind-roles.ts';
import type { Item, Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How far, in tokens, the share may stand from its word. */
const BESIDE_TOKENS = 2;

/** How far behind its word what fills the pipe may be named ("blocked with heavy grease"). */
const FILLING_TOKENS = 3;

const shareBeside = (claim: Claim, sentence: Sentence): number | null =>
  phrasesOf(sentence.phrases, 'share').find(
    (share) =>
      share.from < claim.to + BESIDE_TOKENS &&
      share.to > claim.from - BESIDE_TOKENS &&
      (share.from < claim.from || !share.isBare),
  )?.percent ?? null;

/** Whether the claim only gives the share of another thing named before it in the sentence. */
export function isShareOfOther(claim: Claim, claims: readonly Claim[], sentence: Sentence): boolean {
  if (!shareKinds.has(claim.kind) || shareBeside(claim, sentence) === null) return false;
  const places = phrasesOf(sentence.phrases, 'distance').filter((place) => place.from < claim.to);
  return claims.some(
    (other) =>
      // "forty percent blocked with grease": what fills it may be named after.
      (other.to <= claim.from || (other.from >= claim.to && other.from - claim.to <= FILLING_TOKENS)) &&
      !shareKinds.has(other.kind) &&
      kindTakes(other.kind, 'percent') &&
      !places.some((place) => place.from >= other.to && places.length > 1),
  );
}

/** The same, said in the sentence after. */
export function tellShare(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
  if (!shareKinds.has(claim.kind) || claim.place !== null || claim.relative !== null) return null;
  if (assertion.isDenied || assertion.aside !== null || sentence.isQuestion || reading.isSummary) return null;
  const percent = shareBeside(claim, sentence);
  const item = reading.focus.findLast((known) => !known.isWithdrawn);
  if (percent === null || !item || sentence.index - reading.focusSentence > 1) return null;
  if (shareKinds.has(item.kind) || !kindTakes(item.kind, 'percent') || item.fields.percent !== null) return null;
  item.fields.percent = percent;
  mentionAgain(reading, item, sentence.from, sentence.to);
  return item;
}
