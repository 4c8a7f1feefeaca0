/** How far a cue of denial or doubt reaches, before and after the thing. */
import { REACH_TOKENS } from '../3-phrases/assertion/lexicon.ts';
import type { PhraseOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import { deniesBefore, endsDenial } from './denial-reach.ts';
import type { Sentence } from './sentence.ts';

export type Cue = PhraseOf<'assertion'>;

const stoppers = /^(but|although|though|except|however|so|because|then|which)$/;
const openers = /^(there|here|that|this|it|they|i|we|you)$/;

export function reachesForward(
  cue: Cue,
  claim: Claim,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
  stopsAtPlace: boolean,
): boolean {
  if (cue.to > claim.from) return false;
  let spent = 0;
  for (let at = cue.to; at < claim.from; at += 1) {
    const before = tokens[at - 1];
    if (before?.breakAfter === 'comma') {
      if (at === cue.to) return false;
      const isList = claims.some(
        (other) => other !== claim && other.from >= cue.to && other.to <= at && at - other.to <= 3,
      );
      if (!isList) return false;
      // "No roots, belly at thirty": what has a place of its own is no further item of the list.
      const joins = /^(and|or|nor)$/.test(tokens[at]?.text ?? '');
      // "Not a wye, a tee": what follows stands against it.
      const isContrast = /^(not|it 's not|that 's not|isn't|wasn't|not a|isn't a)$/.test(cue.rule) && !joins;
      if (isContrast && /^(a|an|just|it|that|more)$/.test(tokens[at]?.text ?? '') && !/ (or|nor) /.test(sentence.text))
        return false;
      if (stopsAtPlace && !joins && claim.place !== null && claim.place.from >= claim.to) return false;
      spent = 0;
    }
    const inside = claims.find((other) => other !== claim && at >= other.from && at < other.to);
    if (inside) {
      const isListed = tokens
        .slice(inside.to - 1, claim.from)
        .some((token) => token.breakAfter === 'comma' || /^(and|or|nor)$/.test(token.text));
      if (!isListed) return false;
      spent = 0;
      continue;
    }
    if (stoppers.test(tokens[at]?.text ?? '') || endsDenial(cue, at, tokens)) return false;
    if (
      at > cue.to &&
      openers.test(tokens[at]?.text ?? '') &&
      !/^(in|from|at|of)$/.test(tokens[at - 1]?.text ?? '') &&
      /^('s|is|are|was)$/.test(tokens[at + 1]?.text ?? '') &&
      cue.cue.axis === 'denied'
    )
      return false;
    spent += 1;
  }
  if (tokens[claim.from - 1]?.breakAfter === 'comma' && cue.to === claim.from) return false;
  if (endsDenial(cue, claim.from, tokens)) return false;
  const isPlaceBetween = sentence.phrases.some(
    (phrase) => phrase.family === 'distance' && phrase.from >= cue.to && phrase.to <= claim.from,
  );
  return spent <= REACH_TOKENS && !(stopsAtPlace && isPlaceBetween);
}

export function reachesBackward(
  cue: Cue,
  claim: Claim,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
): boolean {
  const end = Math.max(...claim.things.map((thing) => thing.to).filter((to) => to <= cue.from), -1);
  if (end < 0) return false;
  if (cue.cue.axis === 'denied' && !deniesBefore(cue, claims, sentence, tokens)) return false;
  if (cue.cue.axis === 'denied' && standsBefore(cue, claim, claims, tokens)) return true;
  if (claims.some((other) => other !== claim && other.from >= end && other.to <= cue.from)) return false;
  const gap = tokens.slice(end, cue.from);
  if (gap.some((token) => stoppers.test(token.text) && token.text !== 'but')) return false;
  const isPlaceBetween = sentence.phrases.some(
    (phrase) => phrase.family === 'distance' && phrase.from >= end && phrase.to <= cue.from,
  );
  const reach = cue.cue.axis === 'hedged' ? REACH_TOKENS * 3 : REACH_TOKENS;
  // "Looks like a break at 22, but it isn't" speaks of the thing itself, whatever stands between.
  const turnsBack = cue.rule.startsWith('but ');
  return gap.length <= reach && !(cue.cue.axis === 'denied' && isPlaceBetween && !turnsBack);
}

export const definites = /^(the|that|those|these|your|our|my|his|her|its|this|same)$/;

const closing =
  /^(also|either|here|there|anywhere|at|all|in|on|through|this|that|side|run|section|line|one|today|so|far|yet|any|none|of|it|them|these|see|seeing|seen|saw|find|finding|found|notice|noticing|noticed|observe|observed)$/;
const betweenThingAndNo =
  /^(and|or|nor|go|goes|concerned|i|we|you|there|'ve|'m|'re|am|are|is|was|were|do|did|have|has|had|also|really|just|still|simply|one|some|any|joints?|pipes?|portion|section)$/;

/** "Cracks I am not seeing", "collapse there is not": nothing is left after the denial for it to reach. */
export function closesDenial(
  cue: Cue,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
): boolean {
  for (let at = cue.to; at < sentence.to && tokens[at - 1]?.breakAfter === 'none'; at += 1)
    if (!closing.test(tokens[at]?.text ?? '') || claims.some((claim) => claim.from === at)) return false;
  return true;
}

/** A thing, or a list of things, with no more than a pronoun and a verb between it and the denial. */
export function standsBefore(cue: Cue, claim: Claim, claims: readonly Claim[], tokens: readonly Token[]): boolean {
  if (claim.to > cue.from) return false;
  let small = 0;
  for (let at = claim.to; at < cue.from; at += 1) {
    const other = claims.find((candidate) => candidate !== claim && at >= candidate.from && at < candidate.to);
    if (other) {
      at = other.to - 1;
      small = 0;
    } else if (!betweenThingAndNo.test(tokens[at]?.text ?? '')) return false;
    else small += 1;
    if (small > 4) return false;
  }
  // "the crack I didn't see" is there.
  const lead = tokens[claim.from - 1]?.text ?? '';
  return !(definites.test(lead) && claim.to + 1 < cue.from);
}
