/**
 * One sentence at a time: which things it names, which place and which attributes each of them takes.
 * Nothing is decided here about whether the thing is there; that is `assert-claim.ts`.
 */
import type { AttributeName } from '../../shared/vocabulary/attributes.ts';
import { type KindName, kinds } from '../../shared/vocabulary/kinds/index.ts';
import { type Phrase, type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { sidewaysKinds, yieldingKinds, yieldsTo } from './kind-roles.ts';
import type { Fields } from './reading.ts';
import type { Sentence } from './sentence.ts';

export interface Claim {
  kind: KindName;
  source: 'word' | 'sign' | 'weak';
  rule: string;
  from: number;
  to: number;
  /** Every thing phrase that makes it up. */
  things: { from: number; to: number }[];
  respelled: { heard: string; taken: string }[];
  place: PhraseOf<'distance'> | null;
  relative: PhraseOf<'relative'> | null;
  /** Whether the words of a relative place stand nearer than a plain one. */
  isRelativeNearer: boolean;
  fields: Partial<Fields>;
  /** How many of it are claimed in one word ("two forty fives"). */
  count: number;
  placeTokens: number | null;
  /** Set when the same sentence says that it is not one after all ("a tee, it's not a tee, it's a wye"). */
  isRejected: boolean;
}

const takes = new Map<string, ReadonlySet<AttributeName>>(
  kinds.map((kind) => [kind.name, new Set<AttributeName>(kind.takes)]),
);
export const kindTakes = (kind: KindName, field: string): boolean =>
  takes.get(kind)?.has((field === 'clock' ? 'position' : field) as AttributeName) ?? false;

const isBreakBetween = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some((token) => token.breakAfter !== 'none');
const tokenGap = (a: { from: number; to: number }, b: { from: number; to: number }): number =>
  a.to <= b.from ? b.from - a.to : b.to <= a.from ? a.from - b.to : 0;

function namedThings(sentence: Sentence, tokens: readonly Token[]): Claim[] {
  const claims: Claim[] = [];
  const anchors = anchorThings(sentence);
  for (const phrase of sentence.phrases) {
    if (anchors.has(phrase)) continue;
    if (phrase.family === 'thing') {
      claims.push(
        newClaim(phrase.kind, phrase.source, phrase.rule, phrase, phrase.respelled ? [phrase.respelled] : []),
      );
    } else if (
      phrase.family === 'angle' &&
      phrase.isNoun &&
      !sentence.phrases.some((other) => other.family === 'thing' && isFittingBeside(other, phrase, tokens))
    ) {
      claims.push({ ...newClaim('bend', 'word', phrase.rule, phrase, []), count: phrase.count });
    }
  }
  return mergeSameThings(
    claims.filter((claim) => !givesWay(claim, claims, tokens)),
    sentence,
    tokens,
  );
}

/** The things that only say where another thing is: "past the wye", "between the wye and the main". */
function anchorThings(sentence: Sentence): Set<Phrase> {
  const anchors = new Set<Phrase>();
  for (const { relative } of phrasesOf(sentence.phrases, 'relative')) {
    if (!relative.anchor) continue;
    const { from, to } = relative.anchor;
    const inside = sentence.phrases.filter(
      (phrase) =>
        (phrase.family === 'thing' || phrase.family === 'material' || (phrase.family === 'angle' && phrase.isNoun)) &&
        phrase.from >= from &&
        phrase.to <= to + 1,
    );
    for (const phrase of inside.slice(0, relative.shape === 'between' ? 2 : 1)) anchors.add(phrase);
  }
  return anchors;
}

/** "a 45 degree bend", "long sweep 90", "a ninety turn": the angle names no second fitting. */
function isFittingBeside(thing: PhraseOf<'thing'>, angle: Phrase, tokens: readonly Token[]): boolean {
  if (thing.kind !== 'bend' && thing.kind !== 'wye') return false;
  return (
    tokenGap(thing, angle) <= 6 &&
    !tokens
      .slice(Math.min(thing.to, angle.to), Math.max(thing.from, angle.from))
      .some((token) => token.text === 'another')
  );
}

/** How near, in tokens, another thing must stand for a description to give way to it. */
const YIELD_TOKENS = 9;

function givesWay(claim: Claim, claims: readonly Claim[], tokens: readonly Token[]): boolean {
  const upper = claim.source === 'sign' ? yieldsTo.get(claim.kind) : undefined;
  if (upper && claims.some((other) => other.kind === upper)) return true;
  if (claim.source !== 'sign' || !yieldingKinds.has(claim.kind)) return false;
  return claims.some(
    (other) =>
      other !== claim &&
      other.kind !== claim.kind &&
      tokenGap(other, claim) <= YIELD_TOKENS &&
      !tokens
        .slice(Math.min(other.to, claim.to), Math.max(other.from, claim.from))
        .some((token) => /^(and|another|also|then)$/.test(token.text)),
  );
}

function newClaim(
  kind: KindName,
  source: Claim['source'],
  rule: string,
  phrase: { from: number; to: number },
  respelled: Claim['respelled'],
): Claim {
  return {
    kind,
    source,
    rule,
    from: phrase.from,
    to: phrase.to,
    things: [{ from: phrase.from, to: phrase.to }],
    respelled,
    place: null,
    relative: null,
    isRelativeNearer: false,
    fields: {},
    count: 1,
    placeTokens: null,
    isRejected: false,
  };
}

function mergeSameThings(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): Claim[] {
  const merged: Claim[] = [];
  for (const claim of claims) {
    const before = merged.findLast((other) => other.kind === claim.kind);
    const places = before
      ? sentence.phrases.filter(
          (phrase) => phrase.family === 'distance' && phrase.from >= before.to && phrase.to <= claim.from,
        )
      : [];
    const isAnother =
      before !== undefined &&
      tokens
        .slice(before.to, claim.from + 1)
        .some((token) => /^(another|second|more|also|again|next|plus|other)$/.test(token.text));
    const placesAfter = sentence.phrases.some((phrase) => phrase.family === 'distance' && phrase.from >= claim.to);
    const isReferred = before !== undefined && /^(the|that|this)$/.test(tokens[claim.from - 1]?.text ?? '');
    const isSame = isReferred || (before !== undefined && !isAnother && !(places.length > 0 && placesAfter));
    const isDeniedNow =
      before !== undefined &&
      tokens
        .slice(Math.max(before.to, claim.from - 3), claim.from)
        .some((token) => /^(not|no|isn't|ain't|aren't|wasn't)$/.test(token.text)) &&
      /\b(that|it|this|those|they) ('s|is|are|was|isn't|ain't|aren't|wasn't)\b/.test(
        tokens
          .slice(Math.max(before.to, claim.from - 5), claim.from)
          .map((token) => token.text)
          .join(' '),
      );
    if (before && isDeniedNow) {
      before.to = claim.to;
      before.isRejected = true;
    } else if (before && isSame) {
      before.to = claim.to;
      before.things.push({ from: claim.from, to: claim.to });
      before.respelled.push(...claim.respelled);
      if (before.source !== 'word') before.source = claim.source === 'word' ? 'word' : before.source;
    } else merged.push(claim);
  }
  return merged;
}

/** Gives each claim the place said for it in this sentence, if any. */
function assignPlaces(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): Claim[] {
  const all = phrasesOf(sentence.phrases, 'distance');
  // "The liner ends at 33": for what has no length an ending is its place.
  const places = all.filter(
    (phrase) => phrase.distance.isEnd !== true || claims.every((claim) => !kindTakes(claim.kind, 'to')),
  );
  const relatives = phrasesOf(sentence.phrases, 'relative');
  const placesFirst = places[0] !== undefined && claims[0] !== undefined && places[0].from < claims[0].from;
  const placed: Claim[] = [];
  for (const [index, claim] of claims.entries()) {
    const place = choosePlace(claim, claims, index, places, placesFirst, tokens);
    const relative = chooseRelative(claim, claims, relatives);
    const isRelativeNearer =
      relative !== null && (place === null || tokenGap(relative, claim) < tokenGap(place, claim));
    claim.relative = relative;
    claim.place = place;
    claim.isRelativeNearer = isRelativeNearer;
    claim.placeTokens = claim.place
      ? tokenGap(claim.place, claim)
      : claim.relative
        ? tokenGap(claim.relative, claim)
        : null;
    const list = claims.length === 1 && claim.place ? placeList(places, tokens, sentence, claim) : [];
    if (list.length > 1) placed.push(...list.map((item) => ({ ...claim, fields: { ...claim.fields }, place: item })));
    else placed.push(claim);
  }
  return placed;
}

function choosePlace(
  claim: Claim,
  claims: readonly Claim[],
  index: number,
  places: readonly PhraseOf<'distance'>[],
  placesFirst: boolean,
  tokens: readonly Token[],
): PhraseOf<'distance'> | null {
  if (places.length === 0) return null;
  if (places.length === 1) return places[0] ?? null;
  const previous = claims[index - 1];
  const next = claims[index + 1];
  let best: PhraseOf<'distance'> | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const place of places) {
    const isBefore = place.from < claim.from;
    let cost = tokenGap(place, claim);
    if (isBefore !== placesFirst) cost += 3;
    if (previous && place.to <= previous.from) cost += 8;
    if (previous && isBefore && place.from < previous.from) cost += 4;
    if (next && place.from >= next.from) cost += 12;
    const gap = tokens.slice(Math.min(place.to, claim.to), Math.max(place.from, claim.from));
    cost += gap.filter((token) => token.breakAfter === 'comma').length * (isBefore ? 0.5 : 1.5);
    // "coupling at thirteen": the words tie them together.
    if (
      !isBefore &&
      gap.every((token) => /^(at|is|'s|on|here|there|right|about|,|in|around)$/.test(token.text)) &&
      gap.length <= 3
    )
      cost -= 5;
    // A place after which another thing follows directly belongs to that one.
    if (!isBefore && next && next.from >= place.to && next.from - place.to <= 2 && placesFirst) cost += 4;
    if (cost < bestCost) {
      best = place;
      bestCost = cost;
    }
  }
  return best;
}

function chooseRelative(
  claim: Claim,
  claims: readonly Claim[],
  relatives: readonly PhraseOf<'relative'>[],
): PhraseOf<'relative'> | null {
  let best: PhraseOf<'relative'> | null = null;
  for (const relative of relatives) {
    const anchor = relative.relative.anchor;
    // The thing that names the anchor is not placed by it.
    if (anchor && claim.from >= anchor.from && claim.to <= anchor.to) continue;
    const crossed = claims.some(
      (other) =>
        other !== claim &&
        ((relative.to <= other.from && other.to <= claim.from) ||
          (claim.to <= other.from && other.to <= relative.from)) &&
        !(anchor && other.from >= anchor.from && other.to <= anchor.to),
    );
    if (crossed && relative.relative.shape !== 'same' && relative.from > claim.to) continue;
    if (best === null || tokenGap(relative, claim) < tokenGap(best, claim)) best = relative;
  }
  return best;
}

/** "41 feet, 43 feet and 47": several places for one thing, when only commas and "and" stand between them. */
function placeList(
  places: readonly PhraseOf<'distance'>[],
  tokens: readonly Token[],
  sentence: Sentence,
  claim: Claim,
): PhraseOf<'distance'>[] {
  const lists: PhraseOf<'distance'>[][] = [];
  for (const place of places) {
    const list = lists.at(-1);
    const last = list?.at(-1);
    const between = last
      ? tokens
          .slice(last.to, place.from)
          .map((token) => token.text)
          .join(' ')
      : null;
    if (
      list &&
      last &&
      between !== null &&
      /^(and|and at|and then|at|and again at|again at|)$/.test(between) &&
      place.distance.toFeet === null &&
      last.distance.toFeet === null
    )
      list.push(place);
    else lists.push([place]);
  }
  const list = lists.find((candidate) => claim.place !== null && candidate.includes(claim.place)) ?? [];
  const hasAnd =
    list.length > 1 &&
    tokens[list.at(-1)!.from - 1] !== undefined &&
    tokens.slice(list[0]!.to, list.at(-1)!.from).some((token) => token.text === 'and');
  const saysEach = /\b(each|every|both|all of|all three|in all)\b/.test(sentence.text);
  const isPlural = claim.things.some((thing) => /s$/.test(tokens[thing.to - 1]?.text ?? ''));
  return list.length > 1 && (hasAnd || saysEach) && (isPlural || saysEach || list.length > 2) ? list : [];
}

/** Gives each attribute to the thing it is said of. */
function assignAttributes(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): Phrase[] {
  const loose: Phrase[] = [];
  for (const phrase of sentence.phrases) {
    const field = fieldOf(phrase);
    if (field === null) continue;
    const owner = chooseOwner(phrase, field, claims, sentence, tokens);
    if (owner === null || !setField(owner.fields, phrase, owner.kind)) loose.push(phrase);
  }
  return loose;
}

export function fieldOf(phrase: Phrase): keyof Fields | null {
  switch (phrase.family) {
    case 'position':
      return 'position';
    case 'clock':
      return 'clock';
    case 'degree':
      return 'degree';
    case 'share':
      return 'percent';
    case 'inches':
      return 'inches';
    case 'diameter':
      return 'diameterIn';
    case 'service':
      return 'serves';
    case 'angle':
      return 'angleDeg';
    default:
      return null;
  }
}

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
    if (!isInside && isBefore) cost += isBreakBetween(tokens, phrase.to - 1, claim.from) ? 6 : cost > 3 ? 3 : 0;
    const crossed = claims.filter(
      (other) => other !== claim && other.from >= between[0]! && other.to <= between[1]!,
    ).length;
    cost += crossed * 8;
    const places = sentence.phrases.filter(
      (other) =>
        other.family === 'distance' && other.from >= between[0]! && other.to <= between[1]! && other !== claim.place,
    );
    cost += places.length * 6;
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
  const kept = dropRejected(claims);
  for (const claim of kept) {
    const end = sentence.phrases.find((phrase) => phrase.family === 'distance' && phrase.distance.isEnd === true);
    const isEndOfClaim = end?.family === 'distance' && claim.place !== end && kindTakes(claim.kind, 'to');
    if (
      isEndOfClaim &&
      (claim.place === null || (claim.place.distance.toFeet === null && end.distance.feet > claim.place.distance.feet))
    )
      claim.fields.to = end.distance.feet;
    if (claim.place?.distance.toFeet !== null && claim.place && kindTakes(claim.kind, 'to'))
      claim.fields.to = claim.place.distance.toFeet;
  }
  return { claims: kept, loose };
}
