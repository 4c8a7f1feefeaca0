/**
 * Whether a speaker says the number and then the thing ("nineteen, offset") or the thing and then the number ("offset,
 * nineteen"). Single pairs tell little; over a talk it shows in the order inside short sentences, and in which order leaves
 * the fewest things and numbers over.
 */
import type { Phrase } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { arrange, groupPlaces, groupThings, isPlace, isThing, type Span } from './pair-places.ts';

export interface Stated {
  readonly from: number;
  readonly to: number;
  readonly phrases: readonly Phrase[];
}

/** "At nineteen there's …" and "… at nineteen" are said by everybody; a bare number tells more. */
const BARE = 1;
const LED = 0.25;
/** What one bare pair is worth beside the costs of an arrangement. */
const PAIR = 0.5;
const leads = /^(at|from|is|'s|about|around|of|on|mark|to)$/;

/** Positive for a speaker who says the place first; the further from nought the surer. */
export function leanOf(tokens: readonly Token[], sentences: readonly Stated[]): number {
  let lean = 0;
  for (const { phrases } of sentences) {
    const things = phrases.filter(isThing);
    const places = phrases.filter(isPlace);
    const [thing] = things;
    const place = places[0];
    if (things.length !== 1 || places.length !== 1 || !thing || !place) continue;
    const weight = leads.test(tokens[place.from - 1]?.text ?? '') ? LED : BARE;
    lean += place.from < thing.from ? weight : -weight;
  }
  return lean * PAIR;
}

/** What pairs that are led ("roots at twenty") are worth beside bare ones in talk without stops. */
const LED_STRETCH = 0.3;

/** The same for talk without stops: how much cheaper the one order is than the other. */
export function leanOfStretches(tokens: readonly Token[], stretches: readonly Stated[]): number {
  let lean = 0;
  for (const stretch of stretches) {
    const phrases = withoutOpenings(stretch.phrases);
    const placed = phrases.filter(isPlace);
    const things = groupThings(tokens, phrases, placed);
    const places = groupPlaces(tokens, placed);
    const gap = (some: readonly Span[], other: readonly Span[]): number =>
      arrange(tokens, some, other, false).cost - arrange(tokens, some, other, true).cost;
    // "Roots at twenty" is said by everybody.
    const ledBy = (thing: Span): Span | undefined =>
      places.find((place) => place.from - thing.to === 1 && /^(at|from)$/.test(tokens[thing.to]?.text ?? ''));
    const bareThings = things.filter((thing) => ledBy(thing) === undefined);
    const led = things.map(ledBy);
    const barePlaces = places.filter((place) => !led.includes(place));
    lean += gap(bareThings, barePlaces) + LED_STRETCH * gap(things, places);
  }
  return lean;
}

/** How near a way to go must stand to the opening a camera goes in by, in tokens. */
const OPENING_TOKENS = 10;
const goesIn = (phrase: Phrase): boolean =>
  phrase.family === 'heading' || (phrase.family === 'camera' && /^(zero|enter|next-run)$/.test(phrase.cue));

/** The opening a camera goes in by has no number of its own. */
export const isOpening = (thing: Phrase, phrases: readonly Phrase[]): boolean =>
  phrases.some(
    (cue) =>
      cue.family === 'camera' &&
      cue.cue === 'access' &&
      cue.from < thing.to &&
      cue.to > thing.from &&
      phrases.some((other) => goesIn(other) && Math.abs(other.from - thing.from) <= OPENING_TOKENS),
  );

/** A material seldom has a number of its own either. */
const withoutOpenings = (phrases: readonly Phrase[]): Phrase[] =>
  phrases.filter((thing) => thing.family !== 'material' && !(isThing(thing) && isOpening(thing, phrases)));
