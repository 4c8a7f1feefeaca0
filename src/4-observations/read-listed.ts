/**
 * Things announced by their number and placed one by one: "Two wyes, one after the other. The first is at eighteen and carries the
 * kitchen, the second is at twenty one."
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { setField } from './assign-attributes.ts';
import { type Claim, kindTakes, newClaim } from './claim.ts';
import { yieldingKinds } from './kind-roles.ts';
import { LIKENESS, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How several of a kind are counted, before their name. */
const counted = /\b(two|three|four|five|six|[2-6]|a couple|couple of|a pair of|several|a few|both|more)( \S+){0,2}$/;
/** How one of them is spoken of, and what goes on to place it. */
const oneOfThem =
  /^(the |and |then |but )*(first|second|third|fourth|fifth|last|next|other|one|another)( one| of (them|those|these|the two))?(?= |$)/;
const saysWhere =
  /^(right |just |way |back |down |up )*('s|is|was|'re|sits?|lies|comes?|came|starts?|begins?|runs?|goes|shows?|takes|picks|carries|serves|enters|joins|ties|at|on|off|over|up|to|from|about|here|there|in)\b/;
/** The rule of a claim that has its kind from the announcement. */
export const ONE_OF_SEVERAL = 'one of several';
/** The first of them is told within so many sentences, and so is every other after it. */
const TOLD_SENTENCES = 4;
const LOOKED_AT_TOKENS = 5;

/** Where in a sentence one of several is spoken of. */
function heads(sentence: Sentence, tokens: readonly Token[]): number[] {
  const found: number[] = [];
  const places = phrasesOf(sentence.phrases, 'distance');
  for (let at = sentence.from; at < sentence.to; at += 1) {
    const opens =
      at === sentence.from ||
      tokens[at - 1]?.breakAfter !== 'none' ||
      /^(and|then|but)$/.test(tokens[at - 1]?.text ?? '') ||
      // "The first at eighteen the second at twenty one": no pause was heard between them.
      places.some(({ to }) => to === at);
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

/** A name taken by likeness, or a description that fits what was announced ("and picks up the kitchen"), is no other thing. */
const isOwnName = ({ kind, source, rule }: Pick<Claim, 'kind' | 'source' | 'rule'>): boolean =>
  rule === LIKENESS || (source === 'sign' && yieldingKinds.has(kind));

const namesOther = ({ phrases }: Sentence): boolean => phrasesOf(phrases, 'thing').some((thing) => !isOwnName(thing));

/** Whether a sentence places one of several and names nothing itself. */
const isOfList = (sentence: Sentence, tokens: readonly Token[]): boolean =>
  !sentence.isQuestion &&
  !namesOther(sentence) &&
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
  const next = reading.sentences
    .slice(sentence.index + 1, sentence.index + 1 + TOLD_SENTENCES)
    .find((other) => namesOther(other) || isOfList(other, tokens));
  if (!next || namesOther(next)) return false;
  reading.listed = { claim, sentence: sentence.index, from: sentence.from, to: sentence.to };
  return true;
}

/** The things that a sentence places one by one. */
export function readListed(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim[] {
  const { listed } = reading;
  const { tokens } = reading.phrases;
  if (!listed || sentence.index === listed.sentence) return [];
  // Once another thing was named, "the next one" is one of those.
  if (sentence.index - listed.sentence > TOLD_SENTENCES || !claims.every(isOwnName)) {
    reading.listed = null;
    return [];
  }
  if (!isOfList(sentence, tokens)) return [];
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
