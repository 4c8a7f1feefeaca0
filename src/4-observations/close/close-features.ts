/**
 * What the rules' doubt and the close reader's opinion say together about an item, as numbers. Each is named for what it
 * means: the part before the colon tells which part of the item the close reader reads otherwise.
 */
import type { Flag } from '../../../shared/schemas/draft.ts';
import type { ComparedField } from '../../../shared/vocabulary/attributes.ts';
import { comparedFieldsOf } from '../claim.ts';
import type { DoubtFeatures } from '../doubt-features.ts';
import type { Item } from '../reading.ts';
import { type CloseOpinion, chanceOfField, chancesOfPlace } from './close-opinion.ts';

export type CloseFeatures = Readonly<Record<string, number>>;

/** From here on it all but denies something, or all but vouches for it. */
const UNLIKELY = 0.1;
const SURE = 0.9;
/** Of places the rules counted or took from the talk around, 97 of a hundred were right from the first on, half below the second. */
const LIKE = 0.2;
const UNLIKE = 0.05;

const is = (value: boolean): number => (value ? 1 : 0);
const BOUND = 0.001;
/** Log odds in steps of three, so that all features are of one size. */
const odds = (chance: number): number => Math.log((chance + BOUND) / (1 - Math.min(1, chance) + BOUND)) / 3;

/** The field it holds least likely, its place aside, and how likely. */
export function worstField(opinion: CloseOpinion, item: Item): { field: ComparedField; chance: number } {
  const judged = comparedFieldsOf(item.kind).map((field) => ({ field, chance: chanceOfField(opinion, item, field) }));
  return judged.reduce((worst, each) => (each.chance < worst.chance ? each : worst));
}

/** `doubts` is what spoke for doubt by the rules; a feature beside it for each flag they raised, and for each field read closely. */
export function closeFeatures(item: Item, opinion: CloseOpinion, doubts: DoubtFeatures): CloseFeatures {
  const { own, other } = opinion;
  const place = chanceOfField(opinion, item, 'at');
  const { here, other: elsewhere } = chancesOfPlace(opinion, item);
  const isCounted = item.at !== null && item.basis !== 'spoken';
  const fields = comparedFieldsOf(item.kind).map((field) => ({ field, chance: chanceOfField(opinion, item, field) }));
  const chances = fields.map(({ chance }) => chance);
  const worst = Math.min(...chances);
  return {
    ...doubts,
    'rules:doubt': odds(1 - item.certainty.reading) * 3,
    'rules:flagged': is(item.flags.length > 0),
    'rules:several': is(item.flags.length > 1),
    ...Object.fromEntries(item.flags.map((flag) => [flagName(item, flag), 1])),
    'kind:odds': odds(own),
    'kind:unlikely': is(own < UNLIKELY),
    'kind:sure': is(own > SURE),
    'other:odds': odds(other),
    'other:likely': is(other > 0.5),
    'at:odds': odds(place),
    'at:unlikely': is(place < UNLIKELY),
    'at:sure': is(place > SURE),
    'at:here': odds(here),
    'at:other': odds(elsewhere),
    'at:counted-so': is(isCounted && here > LIKE),
    'at:counted-otherwise': is(isCounted && here < UNLIKE),
    ...Object.fromEntries(fields.map(({ field, chance }) => [`field:${field}`, odds(chance)])),
    'field:odds': odds(worst),
    'field:unlikely': is(worst < UNLIKELY),
    'field:all': chances.reduce((sum, chance) => sum + Math.log(chance + BOUND), 0) / 3,
    'any:least': Math.min(odds(own), odds(place), odds(worst)),
    [`basis=${item.basis}`]: 1,
  };
}

/** A flag by its reason, what it is about, and whether only weighing raised it. */
const flagName = ({ softFlags }: Item, flag: Flag): string =>
  `flag:${flag.reason}/${flag.about}${softFlags.has(flag) ? '/soft' : ''}`;
