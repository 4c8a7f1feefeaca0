/** Gives each claim the place said for it in its sentence, or the way from another thing. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { type Claim, kindTakes } from './claim.ts';
import { tokenGap } from './name-things.ts';
import { isOneBreath } from './pair-places.ts';
import type { Sentence } from './sentence.ts';

/** Gives each claim the place said for it in this sentence, if any. */
export function assignPlaces(claims: readonly Claim[], sentence: Sentence, tokens: readonly Token[]): Claim[] {
  const all = phrasesOf(sentence.phrases, 'distance');
  // "The liner ends at 33": for what has no length an ending is its place.
  let places = all.filter(
    (phrase) => phrase.distance.isEnd !== true || claims.every((claim) => !kindTakes(claim.kind, 'to')),
  );
  const relatives = phrasesOf(sentence.phrases, 'relative');
  places = places.filter(
    (place) =>
      // "Five feet short of thirty": it is counted from there.
      !relatives.some(
        ({ from, to, relative }) =>
          relative.shape === 'offset' && relative.anchor?.from === place.from && place.from === to && place.from > from,
      ),
  );
  const inOrder = tellsInOrder(claims, places, tokens);
  const placesFirst = places[0] !== undefined && claims[0] !== undefined && places[0].from < claims[0].from;
  const placed: Claim[] = [];
  for (const [index, claim] of claims.entries()) {
    const place = inOrder ? places[index]! : choosePlace(claim, claims, index, places, placesFirst, tokens);
    const relative = chooseRelative(claim, claims, relatives);
    const isRelativeNearer =
      relative !== null &&
      (place === null ||
        (!isBesideOnly(relative, claim, claims, place) && tokenGap(relative, claim) < tokenGap(place, claim)));
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

/** "A tee and then a little grit, and them's at nine and twelve": as many numbers in a list as things before it, in their order. */
function tellsInOrder(
  claims: readonly Claim[],
  places: readonly PhraseOf<'distance'>[],
  tokens: readonly Token[],
): boolean {
  if (claims.length < 2 || places.length !== claims.length) return false;
  if (!places.every(({ distance }) => distance.toFeet === null)) return false;
  const isAfter = claims.every((claim) => claim.to <= places[0]!.from);
  const isList = places.slice(1).every((place, index) => listed.test(textOf(tokens, places[index]!.to, place.from)));
  return isAfter && isList;
}

/** What stands between two numbers of a list. */
const listed = /^(and|then|and then|at|and at|)$/;

/** "Behind it there's gravel, at ten": beside something, and placed by its own number all the same. */
function isBesideOnly(
  relative: PhraseOf<'relative'>,
  claim: Claim,
  claims: readonly Claim[],
  place: PhraseOf<'distance'>,
): boolean {
  if (relative.relative.shape !== 'same' || !/ (it|that)$/.test(relative.rule)) return false;
  const from = Math.min(claim.to, place.to);
  const to = Math.max(claim.from, place.from);
  return claims.every((other) => other === claim || other.from >= to || other.to <= from);
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
  if (next && claim.things.some((thing) => isOneBreath(tokens, thing, next)))
    return choosePlace(next, claims, index + 1, places, placesFirst, tokens);
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
    // "A wye, eight feet, and beyond that a crack, call it nine": said of what was named last.
    if (ofLast.test(textOf(tokens, Math.max(0, place.from - 3), place.from))) {
      const named = claims.findLast((other) => other.to <= place.from);
      if (named) cost += named === claim ? -6 : 8;
    }
    // "Six down to four, at 33": a number by itself gives way to one that is said to be a place.
    if (place.distance.frame === 'bare' && places.some((other) => isFirm(other))) cost += 2;
    // A place after which another thing follows directly belongs to that one.
    if (!isBefore && next && next.from >= place.to && next.from - place.to <= 2 && placesFirst) cost += 4;
    if (cost < bestCost) {
      best = place;
      bestCost = cost;
    }
  }
  return best;
}

const ofLast = /(that 's|it 's|call it|make it|put it|that one 's)( at)?$/;
const isFirm = ({ distance }: PhraseOf<'distance'>): boolean => distance.frame !== 'bare' && distance.isEnd !== true;

function chooseRelative(
  claim: Claim,
  claims: readonly Claim[],
  relatives: readonly PhraseOf<'relative'>[],
): PhraseOf<'relative'> | null {
  let best: PhraseOf<'relative'> | null = null;
  for (const relative of relatives) {
    // "That's the main, right there": it points at the picture and says nothing of where.
    if (/^(right|just) (there|here)$/.test(relative.rule)) continue;
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

/** "Two bends, the first at eight and the second at eleven", "one at nine, one at twelve": the next of them. */
const nextOne =
  /^(and |then |feet |foot )*(the )?(second|third|fourth|other|next|last|one|another)( one)?( more)?( ('s|is|comes|sits|starts))?( down| up| over| out| along)?( at| about| around)*$/;

/** "12 feet, 15 feet and 21": several places for one thing, when only commas and "and" stand between them. */
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
    const between = last ? textOf(tokens, last.to, place.from) : null;
    if (
      list &&
      last &&
      between !== null &&
      (listed.test(between) || /^(and )?again at$/.test(between) || nextOne.test(between)) &&
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
  const isCounted = list.slice(1).every((place, index) => nextOne.test(textOf(tokens, list[index]!.to, place.from)));
  const saysEach = isCounted || /\b(each|every|both|all of|all three|in all)\b/.test(sentence.text);
  const isPlural = claim.things.some((thing) => /s$/.test(tokens[thing.to - 1]?.text ?? ''));
  return list.length > 1 && (hasAnd || saysEach) && (isPlural || saysEach || list.length > 2) ? list : [];
}
