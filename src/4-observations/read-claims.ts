/** All claims of one sentence, with their places and attributes. */
import { type Phrase, type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { assignAttributes } from './assign-attributes.ts';
import { assignPlaces } from './assign-places.ts';
import { type Claim, kindTakes } from './claim.ts';
import { farEnds } from './kind-roles.ts';
import { namedThings } from './name-things.ts';
import type { Fields } from './reading.ts';
import { rejectMisnamed } from './rename-kind.ts';
import type { Sentence } from './sentence.ts';

/** A thing taken back in its own sentence hands its place and side to what it turned out to be. */
function dropRejected(claims: readonly Claim[]): Claim[] {
  const kept: Claim[] = [];
  let rejected: Claim | null = null;
  for (const claim of claims) {
    if (claim.isRejected) {
      rejected = claim;
      continue;
    }
    if (rejected) {
      claim.place ??= rejected.place;
      for (const [name, value] of Object.entries(rejected.fields) as [keyof Fields, never][])
        if (kindTakes(claim.kind, name) && claim.fields[name] === undefined) claim.fields[name] = value;
      rejected = null;
    }
    kept.push(claim);
  }
  return kept;
}

/** "Liner from twelve to fifty": where it starts and where it ends are two things. */
function splitEnds(claim: Claim): Claim[] {
  const kind = farEnds.get(claim.kind);
  const { place } = claim;
  if (kind === undefined || place === null || place.distance.toFeet === null) return [claim];
  const { toFeet } = place.distance;
  const end: Claim = {
    ...claim,
    kind,
    things: [...claim.things],
    respelled: [...claim.respelled],
    fields: {},
    place: { ...place, distance: { ...place.distance, feet: toFeet, toFeet: null } },
  };
  claim.place = { ...place, distance: { ...place.distance, toFeet: null } };
  return [claim, end];
}

/** Which of several things of one sentence a place ends: the one named again there, the one the others lie in, or the last. */
function endedBy(claims: readonly Claim[], end: PhraseOf<'distance'>, sentence: Sentence): Claim | null {
  const long = claims.filter((claim) => kindTakes(claim.kind, 'to') && claim.place !== end);
  const before = long.filter((claim) => claim.to <= end.from);
  const last = before.at(-1);
  if (!last) return long[0] ?? null;
  const begun = before.find((claim) => claim !== last && claim.kind === last.kind);
  const isInside = /\b(in|inside|of|middle of) (it|that|there|them|this)\b/.test(sentence.text);
  return begun ?? (isInside ? before[0]! : last);
}

export interface SentenceClaims {
  readonly claims: Claim[];
  /** Attributes no thing in the sentence takes. */
  readonly loose: Phrase[];
}

/** All claims of one sentence. */
export function readClaims(sentence: Sentence, tokens: readonly Token[]): SentenceClaims {
  const named = namedThings(sentence, tokens);
  const loose = assignAttributes(named, sentence, tokens);
  const claims = assignPlaces(named, sentence, tokens);
  rejectMisnamed(claims, sentence, tokens);
  const kept = dropRejected(claims);
  const end = phrasesOf(sentence.phrases, 'distance').find((phrase) => phrase.distance.isEnd === true);
  const ending = end ? endedBy(kept, end, sentence) : null;
  for (const claim of kept) {
    const isEndOfClaim = end !== undefined && claim === ending && claim.place !== end;
    if (
      isEndOfClaim &&
      (claim.place === null || (claim.place.distance.toFeet === null && end.distance.feet > claim.place.distance.feet))
    )
      claim.fields.to = end.distance.feet;
    if (claim.place?.distance.toFeet !== null && claim.place && kindTakes(claim.kind, 'to'))
      claim.fields.to = claim.place.distance.toFeet;
  }
  return { claims: kept.flatMap(splitEnds), loose };
}
