/** Places whose number was heard only a little better than one that sounds like it ("fifty" and "fifteen"). */

import type { Flag } from '../../shared/schemas/draft.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { numberIn, soundsLikeNumber } from '../../shared/vocabulary/sounds-like-number.ts';
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { placeOffers } from './offer-places.ts';
import { type Item, liveItems, type Reading } from './reading.ts';

/** Eight of eight wrong numbers lay nearer than this, and six of forty-two right ones (docs/hearing.md). */
const NEAR_NATS = 5.5;
/** Counters slip by so much. */
const SLACK_FEET = 1;
/** A place may be said so many sentences before or after its thing. */
const REACH_SENTENCES = 3;

/** The flag for an item whose `at` or `to` may be the other number, both offered; null when it was heard well. */
export function soundsAlike(reading: Reading, item: Item, words: Words): Flag | null {
  const near = reading.sentences.slice(
    Math.max(0, item.sentence - REACH_SENTENCES),
    item.sentence + REACH_SENTENCES + 1,
  );
  const places = near.flatMap((sentence) => phrasesOf(sentence.phrases, 'distance'));
  for (const place of places)
    for (const other of othersIn(place, reading, words)) {
      const swapped = (feet: number) => feet - other.heard + other.taken;
      const about = (['at', 'to'] as const).find((field) => {
        const feet = feetOf(item, field);
        return feet !== null && isTakenFrom(feet, place, other) && fitsPush(reading, item, swapped(feet));
      });
      if (!about) continue;
      const feet = feetOf(item, about)!;
      return {
        reason: 'distance-unsure',
        about,
        detail: `${other.heard} sounds like ${other.taken}`,
        offers: placeOffers(feet, swapped(feet)),
      };
    }
  return null;
}

const feetOf = (item: Item, field: 'at' | 'to'): number | null => (field === 'at' ? item.at : item.fields.to) ?? null;

/** Whether a value was read from a place, and its whole feet from the number in doubt. */
const isTakenFrom = (feet: number, { distance }: PhraseOf<'distance'>, other: Other): boolean =>
  (feet === distance.feet || feet === distance.toFeet) && Math.floor(feet) === Math.floor(other.heard);

/** Whether the camera can have been there: between what was named before and after it on the way out. */
function fitsPush(reading: Reading, item: Item, feet: number): boolean {
  if (item.evidence.isOnWayBack) return true;
  const named = liveItems(reading, item.run).filter((other) => other.at !== null && !other.evidence.isOnWayBack);
  const at = named.indexOf(item);
  const before = named[at - 1]?.at ?? 0;
  const after = named[at + 1]?.at ?? Number.POSITIVE_INFINITY;
  return feet >= before - SLACK_FEET && feet <= after + SLACK_FEET;
}

interface Other {
  readonly heard: number;
  readonly taken: number;
}

/** The numbers of a place that lie near one that sounds like them. */
function othersIn({ from, to }: PhraseOf<'distance'>, reading: Reading, words: Words): Other[] {
  return reading.phrases.tokens.slice(from, to).flatMap(({ firstWord }) => {
    const word = words.words[firstWord]!;
    if (!word.alternatives) return [];
    const heard = numberIn(word.text);
    const taken = soundsLikeNumber(heard);
    const isNear = word.alternatives.some(({ text, behindNats }) => text === taken && behindNats < NEAR_NATS);
    return taken !== null && isNear ? [{ heard: Number(heard), taken: Number(taken) }] : [];
  });
}
