/**
 * Where the rules gave a thing one distance and the close reader is all but sure of another that was said, it is listed there, with
 * both to choose from. On talk neither had seen the close reader was right twice as often. What had no place gets one in the same way.
 */
import type { DistanceBasis } from '../../../shared/vocabulary/attributes.ts';
import { addFirmFlag } from '../flags.ts';
import { placelessKinds } from '../kind-roles.ts';
import { placeOffers } from '../offer-places.ts';
import type { Item, Reading } from '../reading.ts';
import { type CloseOpinion, chanceOfField, chancesOfPlace, closeOpinionOf, likelyPlaces } from './close-opinion.ts';

/** From which chance on its word counts for more, by how the rules came by the place. */
const SURE: Readonly<Record<DistanceBasis | 'none', number>> = {
  spoken: 0.98,
  nearby: 0.95,
  counter: 0.95,
  track: 0.9,
  relative: 0.9,
  none: 0.8,
};
/** Where a place that the rules counted otherwise rests on counting: of eight such seven were right, and the rules in none. */
const SURE_COUNT = 0.6;
/** The rules' own place must be as good as denied, and the thing itself likely. */
const DENIED = 0.05;
const LIKELY = 0.5;

export function movePlaces(reading: Reading): void {
  if (reading.close === null) return;
  for (const item of reading.items) {
    if (item.isWithdrawn || placelessKinds.has(item.kind)) continue;
    const feet = betterPlace(reading, item);
    if (feet === null || (item.fields.to !== null && item.fields.to <= feet)) continue;
    addFirmFlag(item, {
      reason: 'readers-disagree',
      about: 'at',
      detail: item.at === null ? 'only a second reading finds a distance for it' : 'two readings give it two distances',
      ...(item.at === null ? {} : { offers: placeOffers(feet, item.at) }),
    });
    item.evidence.notes.push(`place ${item.at ?? 'none'} by the rules, ${feet} by the close reader`);
    item.at = feet;
    item.basis = 'nearby';
  }
}

function betterPlace(reading: Reading, item: Item): number | null {
  const opinion = closeOpinionOf(reading, item);
  const [best] = opinion ? likelyPlaces(opinion.fields) : [];
  if (!opinion || !best) return null;
  const isCounted = item.basis === 'relative' && best.countedChance >= SURE_COUNT;
  const isSure = isCounted || best.chance >= SURE[item.at === null ? 'none' : (item.basis ?? 'none')];
  if (!isSure || opinion.own < LIKELY) return null;
  return item.at === null || isDenied(opinion, item) ? best.feet : null;
}

/** What was counted otherwise is not denied by being told elsewhere. */
const isDenied = (opinion: CloseOpinion, item: Item): boolean =>
  Math.min(chanceOfField(opinion, item, 'at'), chancesOfPlace(opinion, item).here) < DENIED;
