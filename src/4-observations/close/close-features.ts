/**
 * What the rules' doubt and the close reader's opinion say together about an item, as numbers. Each is named for what it
 * means: the part before the colon tells which part of the item the close reader reads otherwise.
 */
import type { ComparedField } from '../../../shared/vocabulary/attributes.ts';
import { comparedFieldsOf } from '../claim.ts';
import type { Item } from '../reading.ts';
import { type CloseOpinion, chanceOfField } from './close-opinion.ts';

export type CloseFeatures = Readonly<Record<string, number>>;

/** From here on it all but denies something, or all but vouches for it. */
const UNLIKELY = 0.1;
const SURE = 0.9;

const is = (value: boolean): number => (value ? 1 : 0);
const BOUND = 0.001;
/** Log odds in steps of three, so that all features are of one size. */
const odds = (chance: number): number => Math.log((chance + BOUND) / (1 - Math.min(1, chance) + BOUND)) / 3;

/** The field it holds least likely, its place aside, and how likely. */
export function worstField(opinion: CloseOpinion, item: Item): { field: ComparedField; chance: number } {
  const judged = comparedFieldsOf(item.kind).map((field) => ({ field, chance: chanceOfField(opinion, item, field) }));
  return judged.reduce((worst, each) => (each.chance < worst.chance ? each : worst));
}

/** `doubt` is that of the rules, from 0 to 1; `isFlagged` whether they would have the item looked at. */
export function closeFeatures(item: Item, opinion: CloseOpinion, doubt: number, isFlagged: boolean): CloseFeatures {
  const { own, other } = opinion;
  const place = chanceOfField(opinion, item, 'at');
  const chances = comparedFieldsOf(item.kind).map((field) => chanceOfField(opinion, item, field));
  const worst = Math.min(...chances);
  return {
    'rules:doubt': odds(doubt) * 3,
    'rules:flagged': is(isFlagged),
    'rules:several': is(isFlagged && item.flags.length > 1),
    'kind:odds': odds(own),
    'kind:unlikely': is(own < UNLIKELY),
    'kind:sure': is(own > SURE),
    'other:odds': odds(other),
    'other:likely': is(other > 0.5),
    'at:odds': odds(place),
    'at:unlikely': is(place < UNLIKELY),
    'at:sure': is(place > SURE),
    'field:odds': odds(worst),
    'field:unlikely': is(worst < UNLIKELY),
    'field:all': chances.reduce((sum, chance) => sum + Math.log(chance + BOUND), 0) / 3,
    'any:least': Math.min(odds(own), odds(place), odds(worst)),
  };
}
