/**
 * Things announced by their number and placed one by one: "Two wyes, one after the other. The first is at eighteen and carries the
 * kitchen, the second is at twenty one."
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { setField } from './assign-attributes.ts';
import { type Claim, kindTakes, newClaim } from './claim.ts';
import { LIKENESS, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How several of a kind are counted, before their name. */
const counted = /\b(two|three|four|five|six|[2-6]|a couple|couple of|a pair of|several|a few|both|more)( \S+){0,2}$/;
/** How one of them is spoken of. */
const oneOfThem =
  /^(the |and |then |but )*(first|second|third|fourth|fifth|last|next|other|one|another)( one| of (them|those|these|the two))?(?= |$)/;
const saysWhere =
  /^(right |just |way |back |down |up )*('s|is|was|'re|sits?|lies|comes?|came|starts?|begins?|runs?|shows?|takes|carries|serves|enters|joins|ties|at|on|over|up|to|from|about|here|there|in)\b/;
/** What all of them have by name is said of none of them by likeness. */
export const ONE_OF_SEVERAL = 'one of several';
/** The first of them is told within so many sentences, and so is every other after it. */
const NEXT_SENTENCES = 2;
const LOOKED_AT_TOKENS = 5;

/** Where in a sentence one of several is spoken of. */
function heads(sentence: Sentence, tokens: readonly Token[]): number[] {
  const found: number[] = [];
  for (let at = sentence.from; at < sentence.to; at += 1) {
    const opens =
      at === sentence.from ||
      tokens[at - 1]?.breakAfter !== 'none' ||
      /^(and|then|but)$/.test(tokens[at - 1]?.text ?? '');
    if (!opens || at < (found.at(-1) ?? -1) + 2) continue;
    const text = textOf(tokens, at, Math.min(sentence.to, at + LOOKED_AT_TOKENS));
    const head = oneOfThem.exec(text)?.[0];
    if (head === undefined) continue;
    const after = at + head.split(' ').length;
    const isPaused = after >= sentence.to || tokens[after - 1]?.breakAfter !== 'none';
    if (isPaused || saysWhere.test(textOf(tokens, after, after + LOOKED_AT_TOKENS))) found.push(at);
  }
  return found;
}

/** Whether a sentence places one of several and names nothing itself. */
const isOfList = (sentence: Sentence | undefined, tokens: readonly Token[]): boolean =>
  sentence !== undefined &&
  phrasesOf(sentence.phrases, 'thing').every(({ rule }) => rule === LIKENESS) &&
  phrasesOf(sentence.phrases, 'distance').length > 0 &&
  heads(sentence, tokens).length > 0;

/** Whether all that a sentence claims is told one by one in those after it. */
export function announcesList(reading: Reading, sentence: Sentence, claims: readonly Claim[]): boolean {
  const { tokens } = reading.phrases;
  const kinds = new Set(claims.map(({ kind }) => kind));
  const claim = claims[0];
  if (!claim || kinds.size > 1 || sentence.isQuestion || phrasesOf(sentence.phrases, 'distance').length > 0)
    return false;
  const lead = textOf(tokens, Math.max(sentence.from, claim.from - LOOKED_AT_TOKENS), claim.from);
  // "Two branches" may be the name as a whole.
  if (!counted.test(lead) && !counted.test(textOf(tokens, claim.from, claim.from + 2))) return false;
  const next = reading.sentences.slice(sentence.index + 1, sentence.index + 1 + NEXT_SENTENCES);
  if (!next.some((other) => isOfList(other, tokens))) return false;
  reading.listed = { claim, sentence: sentence.index, from: sentence.from, to: sentence.to };
  return true;
}

/** The things that a sentence places one by one. */
export function readListed(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim[] {
  const { listed } = reading;
  const { tokens } = reading.phrases;
  if (!listed || sentence.index === listed.sentence) return [];
  if (
    sentence.index - listed.sentence > NEXT_SENTENCES ||
    claims.some(({ rule }) => rule !== LIKENESS) ||
    !isOfList(sentence, tokens)
  )
    return [];
  reading.listed = { ...listed, sentence: sentence.index };
  const starts = heads(sentence, tokens);
  const places = phrasesOf(sentence.phrases, 'distance');
  return starts.flatMap((from, index): Claim[] => {
    const to = starts[index + 1] ?? sentence.to;
    // What stands before the first of them is said of it: "At twelve, the first one."
    const least = index === 0 ? sentence.from : from;
    const place = places.find((phrase) => phrase.from >= least && phrase.to <= to);
    if (!place) return [];
    const claim: Claim = {
      ...newClaim(listed.claim.kind, ONE_OF_SEVERAL, { from, to: from + 1 }, 1),
      place,
      fields: { ...listed.claim.fields },
    };
    for (const phrase of sentence.phrases)
      if (phrase.from >= least && phrase.to <= to) setField(claim.fields, phrase, claim.kind);
    if (place.distance.toFeet !== null && kindTakes(claim.kind, 'to')) claim.fields.to = place.distance.toFeet;
    return [claim];
  });
}
