/**
 * Two readings weighed as one: where the close reader vouches for what the rules doubted, their doubt is lifted; where it reads
 * otherwise what they were sure of, the inspector is asked to look, and told at what.
 */
import type { Flag } from '../../../shared/schemas/draft.ts';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import type { DoubtFeatures } from '../doubt-features.ts';
import { flagWeakWords } from '../doubts.ts';
import { fieldFlag } from '../flags.ts';
import { placeOffers } from '../offer-places.ts';
import type { Item, Reading } from '../reading.ts';
import { weighFeatures } from '../weigh-features.ts';
import { type CloseFeatures, closeFeatures, worstField } from './close-features.ts';
import { type CloseOpinion, chanceOfField, closeOpinionOf, likelyPlaces } from './close-opinion.ts';
import { CLOSE_THRESHOLD, closeBias, closeWeights } from './close-weights.ts';

/** What was weighed of an item, and whether it is to be looked at whatever came of it. */
export interface Weighed {
  readonly features: CloseFeatures;
  readonly isFirm: boolean;
}

/** `doubts`: what spoke for doubt about each item by the rules. Answers with what was weighed; nothing where the talk was not read closely. */
export function weighClosely(reading: Reading, doubts: ReadonlyMap<Item, DoubtFeatures>): ReadonlyMap<Item, Weighed> {
  const weighed = new Map<Item, Weighed>();
  for (const item of reading.items) {
    const opinion = item.isWithdrawn ? null : closeOpinionOf(reading, item);
    if (!opinion) continue;
    const features = closeFeatures(item, opinion, doubts.get(item) ?? {});
    weighed.set(item, { features, isFirm: item.flags.some((flag) => isFirm(item, flag)) });
    const doubt = weighFeatures(features, closeWeights, closeBias);
    item.certainty.reading = round(1 - doubt);
    item.confidence = round((1 - doubt) * (item.certainty.hearing ?? 1));
    if (doubt <= CLOSE_THRESHOLD) item.flags = item.flags.filter((flag) => isFirm(item, flag));
    if (item.flags.length > 0) continue;
    const flag = doubt > CLOSE_THRESHOLD ? flagOf(item, opinion) : flagWeakWords(reading, item, doubt);
    if (flag) item.flags.push(flag);
  }
  return weighed;
}

/** Something heard weakly, left unsaid, or not fitting the camera's way is to be looked at however well the words are understood. */
const firmReasons: ReadonlySet<Flag['reason']> = new Set(['distance-missing', 'distance-jumps', 'counter-disagrees']);
const isFirm = ({ firmFlags }: Item, flag: Flag): boolean => firmFlags.has(flag) || firmReasons.has(flag.reason);

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
    const [best] = likelyPlaces(opinion.fields);
    const other = best && best.feet !== item.at ? [best.feet] : [];
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
