/**
 * A thing and the worse thing it has become, named in one breath: "cracked, and the pieces have moved" is one fracture, "out of
 * round and then fallen in" one collapse.
 */
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { fillFields, mentionAgain } from './items.ts';
import { milderKinds } from './kind-roles.ts';
import type { Item, Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How far apart, in tokens, the two may stand. */
const REACH_TOKENS = 12;

interface Named {
  readonly kind: KindName;
  readonly source: string;
}
const isListed = (kind: KindName, than: KindName): boolean => milderKinds.get(than)?.includes(kind) ?? false;
/** Of two that can each begin as the other, the one described says more than the one named. */
const isMilder = (one: Named, than: Named): boolean =>
  isListed(one.kind, than.kind) &&
  (!isListed(than.kind, one.kind) || (than.source === 'sign' && one.source !== 'sign'));
const anotherThing = /\b(another|also|plus|too|as well|second|next)\b/;
const renaming =
  /\b((that|it|this) (is|'s)|call it|call that|calling it|more like|more than|worse than|past|beyond|into)\b/;
const nouned = /^(a|an|another|some|one|the|hairline|small|big)$/;

/** Whether a claim only says how the worse one beside it began. Two places in reach make them two things. */
export function isOutgrown(
  claim: Claim,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
): boolean {
  return claims.some((worse) => {
    if (worse.source === 'weak' || !isMilder(claim, worse)) return false;
    const [first, second] = claim.from < worse.from ? [claim, worse] : [worse, claim];
    if (second.from - first.to > REACH_TOKENS) return false;
    const places = sentence.phrases.filter(
      (phrase) =>
        (phrase.family === 'distance' || phrase.family === 'relative') &&
        phrase.from >= first.from - REACH_TOKENS &&
        phrase.to <= second.to + REACH_TOKENS,
    );
    if (places.length > 1) return false;
    const between = textOf(tokens, first.to, second.from);
    // "No cracks, breaks or holes" is a list of what is not there.
    const isDenied = sentence.phrases.some(
      (phrase) => phrase.family === 'assertion' && phrase.cue.axis === 'denied' && phrase.to <= second.from,
    );
    const isPlural = (item: Claim): boolean => /s$/.test(tokens[item.to - 1]?.text ?? '');
    if ((isDenied || (isPlural(first) && isPlural(second))) && !renaming.test(between)) return false;
    if (anotherThing.test(between)) return false;
    // "A crack and a chunk gone": two nouns with "and a" between are a list.
    const isNoun = (item: Claim): boolean => nouned.test(tokens[item.from - 1]?.text ?? '');
    const isList =
      isNoun(claim) &&
      (/\b(and|with) (a|an|one|some)$/.test(between) || /^(a|an) /.test(tokens[worse.from]?.text ?? ''));
    return renaming.test(between) || !isNoun(claim) || (worse.source === 'sign' && !isList);
  });
}

/** "The pipe's cracked at 33. Pieces have moved." What was just listed becomes the worse thing. */
export function growWorse(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
  if (claim.source === 'weak' || claim.place !== null || claim.relative !== null) return null;
  if (assertion.isDenied || assertion.aside !== null || assertion.isDefinite || sentence.isQuestion) return null;
  if (reading.isSummary || sentence.index - reading.focusSentence !== 1 || anotherThing.test(sentence.text))
    return null;
  const item = reading.focus.at(-1);
  if (
    !item ||
    item.isWithdrawn ||
    item.status === 'suspected' ||
    !isMilder({ kind: item.kind, source: item.evidence.source }, claim)
  )
    return null;
  if (claim.source === 'word' && !renaming.test(sentence.text)) return null;
  item.evidence.notes.push(`first called ${item.kind}`);
  item.kind = claim.kind;
  if (assertion.isHedged) item.status = 'suspected';
  fillFields(item, claim);
  mentionAgain(reading, item, sentence.from, sentence.to);
  return item;
}
