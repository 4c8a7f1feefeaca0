/**
 * One name for things in several places, each with its own side or amount: "crack on top at ten and on the bottom at
 * fourteen", "roots at nineteen, light, and at twenty five, heavy". What stands after the "and" is of the second.
 */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { setField } from './assign-attributes.ts';
import type { Claim } from './claim.ts';
import { kindTakes } from './claim.ts';
import { placelessKinds } from './kind-roles.ts';
import { fieldOf } from './phrase-value.ts';
import type { Sentence } from './sentence.ts';

type Place = PhraseOf<'distance'>;

const joins = /^(and|then|plus|also|again|another)$/;
const small =
  /^(and|then|plus|also|again|another|one|more|at|on|in|the|from|a|an|for|with|around|about|by|off|to|it|'s|they|'re|is|are|there|here|too|as|well|them|of|foot|feet|really|pretty|fairly|quite|side|coming|up|over|down|but|ones?)$/;

/** The token at which talk of the next place begins, or null where it is not plain that there is one. */
function splitBefore(place: Place, from: number, sentence: Sentence, tokens: readonly Token[]): number | null {
  for (let at = from; at < place.from; at += 1) if (joins.test(tokens[at]?.text ?? '')) return at;
  let comma: number | null = null;
  for (let at = from; at <= place.from; at += 1) if (tokens[at - 1]?.breakAfter === 'comma') comma = at;
  const hasOwn = sentence.phrases.some(
    (phrase) => fieldOf(phrase) !== null && comma !== null && phrase.from >= comma && phrase.family !== 'inches',
  );
  return hasOwn ? comma : null;
}

/** Whether a stretch holds nothing but attributes, places and small words. */
function saysOnlyFields(sentence: Sentence, tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) {
    const inside = sentence.phrases.find(
      (phrase) => at >= phrase.from && at < phrase.to && (fieldOf(phrase) !== null || phrase.family === 'distance'),
    );
    if (!inside && !small.test(tokens[at]?.text ?? '')) return false;
  }
  return true;
}

/** Takes back from the first what was said after the split. */
function keepOwnFields(claim: Claim, sentence: Sentence, split: number): void {
  const own: Claim = { ...claim, fields: {} };
  for (const phrase of sentence.phrases)
    if (phrase.from < split && fieldOf(phrase) !== null) setField(own.fields, phrase, claim.kind);
  for (const phrase of sentence.phrases) {
    const field = phrase.from >= split ? fieldOf(phrase) : null;
    if (field !== null && claim.fields[field] !== undefined && claim.fields[field] !== own.fields[field])
      delete claim.fields[field];
  }
}

/** The claims that the last claim of a sentence stands for beside itself. */
export function readSecondPlaces(sentence: Sentence, claims: readonly Claim[], tokens: readonly Token[]): Claim[] {
  const first = claims.at(-1);
  if (!first?.place || first.kind === 'pipe' || placelessKinds.has(first.kind)) return [];
  if (claims.some((claim) => claim !== first && claim.from > first.from)) return [];
  if (sentence.phrases.some((phrase) => phrase.family === 'correction' && phrase.from >= first.from)) return [];
  let last = first.place;
  let from = Math.max(first.to, last.to);
  const found: Claim[] = [];
  const others = phrasesOf(sentence.phrases, 'distance').filter(
    (place) => place.from >= from && place.distance.isEnd !== true && !claims.some((claim) => claim.place === place),
  );
  for (const [index, place] of others.entries()) {
    const end = others[index + 1]?.from ?? sentence.to;
    const split = splitBefore(place, from, sentence, tokens);
    if (split === null || place.distance.feet <= last.distance.feet) break;
    const given = sentence.phrases.filter(
      (phrase) => fieldOf(phrase) !== null && phrase.from >= split && phrase.to <= end,
    );
    if (given.length === 0 || !saysOnlyFields(sentence, tokens, split, index + 1 < others.length ? place.to : end))
      break;
    keepOwnFields(found.at(-1) ?? first, sentence, split);
    const claim: Claim = {
      ...first,
      rule: 'the same at another place',
      from: place.from,
      to: place.to,
      things: [{ from: place.from, to: place.to }],
      place,
      relative: null,
      fields: {},
      placeTokens: 1,
    };
    for (const phrase of given)
      if (kindTakes(first.kind, fieldOf(phrase) ?? '')) setField(claim.fields, phrase, first.kind);
    if (place.distance.toFeet !== null && kindTakes(first.kind, 'to')) claim.fields.to = place.distance.toFeet;
    found.push(claim);
    last = place;
    from = place.to;
  }
  return found;
}
