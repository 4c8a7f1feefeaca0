/**
 * Where no stops are printed every thing takes the place that stands nearest in the way this speaker talks ("twenty roots, thirty
 * a wye" or "roots at twenty"), in order. The best arrangement of all is chosen at once, not thing by thing.
 */
import type { Phrase } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { pausesAt } from './clause-start.ts';

const openers = /^(okay|ok|alright|now|anyway|oh|well)$/;
const turning = /^(pulling|coming|backing) (back|home|up|out|in)$/;
const existentials = /^(there|here)$/;
export const isThing = (phrase: Phrase): boolean =>
  phrase.family === 'thing' || phrase.family === 'material' || (phrase.family === 'angle' && phrase.isNoun);
export const isPlace = (phrase: Phrase): boolean =>
  phrase.family === 'distance' || (phrase.family === 'relative' && phrase.relative.shape !== 'same');

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What an arrangement costs. Fitted by hand on the development narrations; only their order of size matters. */
const costs = {
  token: 0.12,
  crossedThing: 0.6,
  crossedPlace: 1.5,
  againstHabit: 1.2,
  ledIn: -1.5,
  ledOn: -1.2,
  followed: -0.9,
  opensNext: 1.2,
  ofLast: 1.5,
  adjacent: -0.8,
  broken: 2.5,
  pause: 1.6,
  unusedPlace: 1.2,
  noPlace: 2.6,
} as const;
const REACH_TOKENS = 25;
const saysOfLast = /^(call|make|say) (it|that)$|'s at$|(^| )reads$/;

export const breaksAt = (tokens: readonly Token[], at: number): boolean => {
  const text = tokens[at]?.text ?? '';
  return openers.test(text) || turning.test(`${text} ${tokens[at + 1]?.text ?? ''}`);
};

function cost(
  tokens: readonly Token[],
  thing: Span,
  place: Span,
  things: readonly Span[],
  places: readonly Span[],
  placeFirst: boolean,
): number {
  const isBefore = place.from < thing.from;
  const [from, to] = isBefore ? [place.to, thing.from] : [thing.to, place.from];
  if (to - from > REACH_TOKENS) return Number.POSITIVE_INFINITY;
  let sum = Math.max(0, to - from) * costs.token;
  sum += things.filter((other) => other !== thing && other.from >= from && other.to <= to).length * costs.crossedThing;
  sum += places.filter((other) => other !== place && other.from >= from && other.to <= to).length * costs.crossedPlace;
  for (let at = from; at <= to; at += 1) {
    if (breaksAt(tokens, at) && at < to) sum += costs.broken;
    if (pausesAt(tokens, at)) sum += costs.pause;
  }
  if (isBefore) {
    const isLedIn = placeFirst && to - from <= 1 && /^(at|from|about|by)$/.test(tokens[place.from - 1]?.text ?? '');
    // "Two feet past that there's …", "At 20 we've got …".
    // "… call it 19": it is of what was named before.
    if (saysOfLast.test(textOf(tokens, Math.max(0, place.from - 2), place.from))) sum += costs.ofLast;
    const isFollowed = existentials.test(tokens[place.to]?.text ?? '') && to - from <= REACH_TOKENS / 3;
    return (
      sum +
      (placeFirst ? 0 : costs.againstHabit) +
      (isLedIn ? costs.ledOn : 0) +
      (isFollowed ? costs.followed : 0) +
      (placeFirst && to - from <= 0 && !isLedIn ? costs.adjacent : 0)
    );
  }
  const lead = tokens[place.from - 1]?.text ?? '';
  const isIntroduced = tokens.slice(from, to).some((token) => existentials.test(token.text));
  const isLed = /^(at|from|about|between|on|is|'s)$/.test(lead) && !isIntroduced;
  const opensNext = existentials.test(tokens[place.to]?.text ?? '');
  return (
    sum +
    (placeFirst ? costs.againstHabit : 0) +
    (opensNext ? costs.opensNext : 0) +
    (isLed ? costs.ledIn : 0) +
    (to - from <= 0 ? costs.adjacent : 0)
  );
}

/** Places that only correct or extend the one before ("make that 46", "out of it at 38") are one with it. */
export function groupPlaces(tokens: readonly Token[], places: readonly Phrase[]): Span[] {
  const groups: { from: number; to: number }[] = [];
  for (const place of places) {
    const lead = textOf(tokens, Math.max(0, place.from - 3), place.from);
    const last = groups.at(-1);
    const follows = last !== undefined && place.from - last.to <= 8;
    // "Plastic up to 47 and another coupling": the end of the one is the place of the other.
    const opensNext = /^(and|then) (a|an|another|there|we|i)\b/.test(textOf(tokens, place.to, place.to + 2));
    const isPart =
      (place.family === 'distance' && place.distance.isEnd === true && !opensNext) ||
      /\b(make that|make it|call it|no|sorry|i mean|wait)( it 's)?$/.test(lead);
    if (follows && isPart) last.to = place.to;
    else groups.push({ from: place.from, to: place.to });
  }
  return groups;
}

/** "can't get past the bend": things with no more than an article between them are named in one breath and share a place. */
export const isOneBreath = (tokens: readonly Token[], first: Span, second: Span): boolean =>
  second.from - first.to === 1 &&
  /^(the|this|that)$/.test(tokens[first.to]?.text ?? '') &&
  tokens.slice(first.to - 1, second.from).every((token) => token.breakAfter === 'none');

/** "cast iron to clay": two things that make one. */
const isPair = (tokens: readonly Token[], first: Span, second: Span): boolean =>
  /^(to|into|in to|in two|2|two|over to|meets)$/.test(textOf(tokens, first.to, second.from)) &&
  tokens.slice(first.to - 1, second.from).every((token) => token.breakAfter === 'none');

/** How far apart, in tokens, two namings of one kind may stand and still be of one thing. */
const SAME_THING_TOKENS = 9;

/** "it's a fork, there's a fork in the pipe": named twice, with nothing between that makes it two. */
function isNamedTwice(tokens: readonly Token[], first: Phrase, second: Phrase, places: readonly Phrase[]): boolean {
  if (first.family !== 'thing' || second.family !== 'thing' || first.kind !== second.kind) return false;
  return (
    second.from - first.to <= SAME_THING_TOKENS &&
    !places.some((place) => place.from >= first.to && place.to <= second.from) &&
    !tokens
      .slice(first.to, second.from)
      .some((token) => /^(another|more|second|next|then|again|also)$/.test(token.text))
  );
}

const attributes = /^(position|clock|degree|share|inches|service|angle)$/;
const between = /^(on|the|at|from|about|maybe|a|an|of|in|to|our|your|and|for)$/;
/** So many small words may stand before what is said of a thing after it ("wye on the left"). */
const BETWEEN_TOKENS = 2;

/** Where what is said of a thing after it ends: it stands between the thing and its number and tells nothing of which that is. */
function withAttributes(to: number, phrases: readonly Phrase[], tokens: readonly Token[]): number {
  for (const phrase of phrases) {
    if (phrase.from < to) continue;
    if (phrase.from - to > BETWEEN_TOKENS || isThing(phrase) || isPlace(phrase)) return to;
    if (!tokens.slice(to, phrase.from).every((token) => between.test(token.text))) return to;
    if (attributes.test(phrase.family)) to = phrase.to;
  }
  return to;
}

export function groupThings(tokens: readonly Token[], phrases: readonly Phrase[], places: readonly Phrase[]): Span[] {
  const things = phrases.filter(isThing);
  const groups: { from: number; to: number }[] = [];
  things.forEach((thing, index) => {
    const last = groups.at(-1);
    const before = things[index - 1];
    const joins =
      last &&
      before &&
      (isOneBreath(tokens, last, thing) || isPair(tokens, last, thing) || isNamedTwice(tokens, before, thing, places));
    if (joins) last.to = Math.max(last.to, thing.to);
    else groups.push({ from: thing.from, to: thing.to });
  });
  return groups.map((group) => ({ from: group.from, to: withAttributes(group.to, phrases, tokens) }));
}

export interface Arrangement {
  /** For each thing the index of its place, or -1. */
  readonly given: readonly number[];
  readonly cost: number;
}

/** The cheapest way to give things their places, for a speaker of one habit. */
export function arrange(
  tokens: readonly Token[],
  things: readonly Span[],
  places: readonly Span[],
  placeFirst: boolean,
): Arrangement {
  const width = places.length + 1;
  // Column 0 means that no place was used yet; best[j] is the least cost with place j-1 as the last used.
  let best = new Array<number>(width).fill(Number.POSITIVE_INFINITY);
  best[0] = 0;
  const steps: { from: number; given: number }[][] = [];
  for (const thing of things) {
    const next = new Array<number>(width).fill(Number.POSITIVE_INFINITY);
    const step: { from: number; given: number }[] = Array.from({ length: width }, () => ({ from: 0, given: -1 }));
    const offer = (column: number, sum: number, from: number, given: number): void => {
      if (sum < (next[column] ?? 0)) {
        next[column] = sum;
        step[column] = { from, given };
      }
    };
    // Only the few places within reach can be this thing's, however long the talk.
    const within = places
      .map((place, index) => ({ column: index + 1, place }))
      .filter(({ place }) => place.from - thing.to <= REACH_TOKENS && thing.from - place.to <= REACH_TOKENS)
      .map(({ column, place }) => ({ column, sum: cost(tokens, thing, place, things, places, placeFirst) }));
    for (let last = 0; last < width; last += 1) {
      const sum = best[last] ?? Number.POSITIVE_INFINITY;
      if (!Number.isFinite(sum)) continue;
      offer(last, sum + costs.noPlace, last, -1);
      for (const { column, sum: added } of within) {
        if (column < last) continue;
        offer(column, sum + added + Math.max(0, column - last - 1) * costs.unusedPlace, last, column - 1);
      }
    }
    steps.push(step);
    best = next;
  }
  let column = 0;
  best.forEach((sum, index) => {
    const rest = (width - 1 - index) * costs.unusedPlace;
    if (sum + rest < (best[column] ?? 0) + (width - 1 - column) * costs.unusedPlace) column = index;
  });
  const sum = (best[column] ?? 0) + (width - 1 - column) * costs.unusedPlace;
  const given: number[] = [];
  for (let index = things.length - 1; index >= 0; index -= 1) {
    const step = steps[index]![column]!;
    given.unshift(step.given);
    column = step.from;
  }
  return { given, cost: sum };
}
