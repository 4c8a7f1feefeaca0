/**
 * Two readings weighed as one: where the close reader vouches for what the rules doubted, their doubt is lifted; where it reads
 * otherwise what they were sure of, the inspector is asked to look, and told at what.
 */
import type { Flag } from '../../../shared/schemas/draft.ts';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { fieldFlag } from '../flags.ts';
import { placeOffers } from '../offer-places.ts';
import type { Item, Reading } from '../reading.ts';
import { weighFeatures } from '../weigh-features.ts';
import { type CloseFeatures, closeFeatures, worstField } from './close-features.ts';
import { type CloseOpinion, chanceOfField, closeOpinionOf } from './close-opinion.ts';
import { CLOSE_THRESHOLD, closeBias, closeWeights } from './close-weights.ts';

export function weighClosely(reading: Reading): void {
  for (const item of reading.items) {
    const opinion = item.isWithdrawn ? null : closeOpinionOf(reading, item);
    if (!opinion) continue;
    const doubt = closeDoubtOf(closeFeatures(item, opinion, 1 - item.certainty.reading, item.flags.length > 0));
    item.certainty.reading = round(1 - doubt);
    item.confidence = round((1 - doubt) * (item.certainty.hearing ?? 1));
    if (doubt <= CLOSE_THRESHOLD) item.flags = item.flags.filter((flag) => !item.softFlags.has(flag));
    else if (item.flags.length === 0) item.flags.push(flagOf(item, opinion));
  }
}

/** The chance that something about the item is wrong, from 0 to 1. */
const closeDoubtOf = (features: CloseFeatures): number => weighFeatures(features, closeWeights, closeBias);

/** Says what the close reader holds least likely. */
function flagOf(item: Item, opinion: CloseOpinion): Flag {
  const place = chanceOfField(opinion, item, 'at');
  const { field, chance } = worstField(opinion, item);
  const least = Math.min(opinion.own, place, chance);
  if (least === opinion.own)
    return {
      reason: 'readers-disagree',
      about: 'kind',
      detail: `a second reading of the talk is not sure that this is ${kindTitle(item.kind).toLowerCase()}`,
    };
  if (least === place) {
    const [best] = opinion.fields.get('at') ?? [];
    const other = typeof best?.value === 'number' && best.value !== item.at ? [best.value] : [];
    return {
      reason: 'readers-disagree',
      about: 'at',
      detail: 'a second reading of the talk is not sure of this distance',
      ...(item.at !== null && other.length > 0 ? { offers: placeOffers(item.at, ...other) } : {}),
    };
  }
  if (field === 'status')
    return {
      reason: 'hedged',
      about: 'status',
      detail: 'a second reading of the talk is not sure that it was said without doubt',
    };
  return fieldFlag(field, 'which a second reading reads otherwise');
}

const round = (value: number): number => Math.round(value * 100) / 100;
