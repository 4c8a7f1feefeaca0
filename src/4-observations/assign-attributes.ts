/** Gives each size, side, share and degree to the thing it is said of. */
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import type { Phrase } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { type Claim, kindTakes } from './claim.ts';
import { sidewaysKinds } from './kind-roles.ts';
import { isBreakBetween, tokenGap } from './name-things.ts';
import { fieldOf } from './phrase-value.ts';
import type { Fields } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { idleServices } from './serves-words.ts';

/** Gives each attribute to the thing it is said of. */
export function assignAttributes(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): Phrase[] {
  const loose: Phrase[] = [];
  const idle = idleServices(sentence, tokens);
  for (const phrase of sentence.phrases) {
    const field = fieldOf(phrase);
    if (field === null || idle.has(phrase) || isOfPipe(phrase, claims, sentence)) continue;
    // "the hall bath tub": of two fixtures in a row the last is meant, the first says which.
    if (
      phrase.family === 'service' &&
      sentence.phrases.some((other) => other.family === 'service' && other.from === phrase.to)
    )
      continue;
    const owner = isOfSubject(phrase, claims, sentence, tokens)
      ? null
      : chooseOwner(phrase, field, claims, sentence, tokens);
    if (owner === null && isSizeOfNext(phrase, claims)) continue;
    if (owner === null || !setField(owner.fields, phrase, owner.kind)) loose.push(phrase);
  }
  for (const claim of claims)
    if (kindTakes(claim.kind, 'degree') && isCalledLittle(claim, tokens)) claim.fields.degree ??= 'light';
  return loose;
}

/** "A little lip", "tiny step": of one thing it says how bad it is; "little stones" and "that little one" say how large or which. */
const isCalledLittle = ({ from, to }: Claim, tokens: readonly Token[]): boolean =>
  /^(little|tiny|teeny|wee)$/.test(tokens[from - 1]?.text ?? '') &&
  !/^(that|this|the|those|these|next|past|your|our|same)$/.test(tokens[from - 2]?.text ?? '') &&
  !/s$/.test(tokens[to - 1]?.text ?? '');

/** "Three inch branch on the left": the size of a drain that keeps none is not that of the thing before. */
const isSizeOfNext = (phrase: Phrase, claims: readonly Claim[]): boolean =>
  /^(inches|diameter)$/.test(phrase.family) &&
  claims.some((claim) => claim.from >= phrase.to && claim.from - phrase.to <= 1);

/** "Three inch cast iron this way, at five there's a tee": a size with its material is the pipe's, unless the fitting is named right after. */
const isOfPipe = (phrase: Phrase, claims: readonly Claim[], sentence: Sentence): boolean => {
  if (phrase.family !== 'diameter') return false;
  const material = sentence.phrases.find((other) => other.family === 'material' && other.from === phrase.to);
  return material !== undefined && !claims.some((claim) => claim.from >= material.to && claim.from - material.to <= 1);
};

/**
 * "It's heavy, I can see soil behind": what a sentence first says of "it" is of the thing before; the thing it goes
 * on to name has a clause of its own.
 */
function isOfSubject(phrase: Phrase, claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): boolean {
  if (!/^(degree|share|position|clock)$/.test(phrase.family) || claims.some((claim) => claim.from < phrase.to))
    return false;
  const lead = textOf(tokens, sentence.from, phrase.from);
  const isSubject =
    /^((and|so|but|yeah|oh|well|okay) )*(it|that|they|this|those|these) ('s|is|are|'re|was|were)( (all|pretty|really|fairly|quite|very|about|maybe|just|only|kind of|sort of|probably|on|at|in|along|to|the|down|up|over|around))*$/.test(
      lead,
    );
  const next = tokens[phrase.to]?.text ?? '';
  const goesOn = /^(and|but|so|with)$/.test(next);
  // "It's on the left, the wye": the thing itself comes after.
  if (/^(position|clock)$/.test(phrase.family)) return isSubject && goesOn && phrase.to < sentence.to;
  return isSubject && (goesOn || (tokens[phrase.to - 1]?.breakAfter ?? 'stop') !== 'none') && phrase.to < sentence.to;
}

/** Words that bring in the next thing: what was said before them is of another. */
const opensNext = /^(and|then|plus|with)$/;

function chooseOwner(
  phrase: Phrase,
  field: keyof Fields,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
): Claim | null {
  let best: Claim | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const claim of claims) {
    if (
      !kindTakes(claim.kind, field) &&
      !(field === 'percent' && phrase.family === 'share' && phrase.isBare && kindTakes(claim.kind, 'inches'))
    )
      continue;
    const isInside = claim.things.some((thing) => phrase.from >= thing.from && phrase.to <= thing.to);
    let cost = isInside ? 0 : Math.min(...claim.things.map((thing) => tokenGap(phrase, thing)));
    const isBefore = phrase.to <= claim.from;
    const between = isBefore ? [phrase.to, claim.from] : [claim.to, phrase.from];
    if (!isInside && isBefore) {
      const isNext = opensNext.test(tokens[phrase.to]?.text ?? '') && phrase.to < claim.from;
      cost += isBreakBetween(tokens, phrase.to - 1, claim.from) || isNext ? 6 : cost > 3 ? 3 : 0;
    }
    const crossed = claims.filter(
      (other) => other !== claim && other.from >= between[0]! && other.to <= between[1]!,
    ).length;
    cost += crossed * 8;
    const places = sentence.phrases.filter(
      (other) =>
        other.family === 'distance' && other.from >= between[0]! && other.to <= between[1]! && other !== claim.place,
    );
    // "a crack at 24 on the left": its own place parts nothing from it.
    const isOwn = !isBefore && places[0] !== undefined && tokenGap(claim, places[0]) <= 3;
    cost += (places.length - (isOwn ? 1 : 0)) * 6;
    const startsAnother =
      isBefore &&
      tokens.slice(phrase.to, claim.from).some((token) => /^(another|then|next|also|plus)$/.test(token.text));
    if (startsAnother) cost += 6;
    // "Some roots have found that lip, and they're coming from underneath": the lip is known, the roots are told of.
    const isKnown = /^(that|this|those|these)$/.test(tokens[claim.from - 1]?.text ?? '') && claim !== claims[0];
    if (isKnown && claims.some((other) => other !== claim && other.to <= claim.from && kindTakes(other.kind, field)))
      cost += 16;
    if (cost < bestCost) {
      best = claim;
      bestCost = cost;
    }
  }
  return best;
}

/** Sets a field from a phrase. The first value stands; gives false when the field was taken by another value. */
export function setField(fields: Partial<Fields>, phrase: Phrase, kind: KindName, replaces = false): boolean {
  const put = <Name extends keyof Fields>(name: Name, value: Fields[Name]): boolean => {
    const old = fields[name];
    if (old !== undefined && old !== null && !replaces) return old === value;
    fields[name] = value;
    return true;
  };
  switch (phrase.family) {
    case 'position':
      if (sidewaysKinds.has(kind) && !/^(left|right)$/.test(phrase.position)) return true;
      return put('position', phrase.position);
    case 'clock':
      put('clockTo', phrase.toHour);
      return put('clock', phrase.hour);
    case 'degree':
      return put('degree', phrase.degree);
    case 'share':
      if (!kindTakes(kind, 'percent') && kindTakes(kind, 'inches') && phrase.isBare)
        return put('inches', phrase.percent / 100);
      return put('percent', phrase.percent);
    case 'inches':
      return put('inches', phrase.inches);
    case 'diameter':
      return put('diameterIn', phrase.inches);
    case 'service':
      return put('serves', phrase.service);
    case 'angle':
      return put('angleDeg', phrase.degrees);
    default:
      return false;
  }
}
