/**
 * A second, plainer reader: every named thing takes the place that stands nearest in the talk, unless "no" stands just before.
 * It knows no runs, corrections or repeats. Its use is to disagree: where it and the rules give the same place, both are
 * seldom wrong.
 */

import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import type { Phrases } from '../3-phrases/find-phrases.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';

export interface NearestReading {
  readonly kind: KindName;
  readonly token: number;
  readonly feet: number | null;
}

/** A place further off than this, in tokens, is not taken. */
const REACH_TOKENS = 16;
const denials = /^(no|not|don't|didn't|isn't|never|without|zero)$/;

/** What the plain reader makes of the talk. */
export function readNearest({ tokens, phrases }: Phrases): NearestReading[] {
  const places = phrasesOf(phrases, 'distance');
  return phrasesOf(phrases, 'thing').flatMap((thing) => {
    if (tokens.slice(Math.max(0, thing.from - 4), thing.from).some((token) => denials.test(token.text))) return [];
    let feet: number | null = null;
    let least = REACH_TOKENS;
    for (const place of placesNear(places, thing.from)) {
      const [from, to] = place.to <= thing.from ? [place.to, thing.from] : [thing.to, place.from];
      const stops = tokens
        .slice(Math.max(0, from - 1), to)
        .filter((token) => token.breakAfter === 'stop' || token.breakAfter === 'question').length;
      const gap = to - from + stops * 3;
      if (gap < least) {
        least = gap;
        feet = place.distance.feet;
      }
    }
    return [{ kind: thing.kind, token: thing.from, feet }];
  });
}

/** The places within reach of a token; places are in order. */
function placesNear(places: readonly PhraseOf<'distance'>[], token: number): readonly PhraseOf<'distance'>[] {
  const first = places.findIndex((place) => place.to >= token - REACH_TOKENS);
  if (first < 0) return [];
  let last = first;
  while (last < places.length && (places[last]?.from ?? 0) <= token + REACH_TOKENS) last += 1;
  return places.slice(first, last);
}

/** How far apart the two readers' mentions of one thing may be, in tokens. */
const NEAR_TOKENS = 30;

/** Whether the plain reader gives the same place for the same kind near by: true, false, or null when it names none there. */
export function agrees(
  nearest: readonly NearestReading[],
  item: { readonly kind: KindName; readonly at: number | null; readonly from: number },
): boolean | null {
  const near = nearest.filter(
    (reading) => reading.kind === item.kind && Math.abs(reading.token - item.from) <= NEAR_TOKENS,
  );
  if (near.length === 0) return null;
  return near.some((reading) =>
    reading.feet === null ? item.at === null : item.at !== null && Math.abs(reading.feet - item.at) <= 0.3,
  );
}
