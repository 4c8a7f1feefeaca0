/**
 * Where fields go wrong, as learnt from mistakes: of talk with its findings known, in which words a field stayed empty or
 * got another value. It knows no value; it only says which field to look at.
 */

import type { Flag } from '../../../shared/schemas/draft.ts';
import type { ComparedField } from '../../../shared/vocabulary/attributes.ts';
import { fieldFlag } from '../flags.ts';
import type { Item, Reading } from '../reading.ts';
import { type FieldCase, fieldCases, itemWords } from './item-words.ts';
import { shippedReader } from './read-taught.ts';

/** In `models/`, written by `npm run teach`. */
export const FIELDS_FILE = 'taught-fields.json';

/** From this chance on that a field is wrong it has to be looked at: of what is flagged so about every third is wrong. */
export const FIELD_DOUBT = 0.07;

/** The field that is most likely wrong, as a flag; null when none is likely to be. */
export function doubtFields(reading: Reading, item: Item): Flag | null {
  const chances = shippedReader(FIELDS_FILE).chances(itemWords(reading, item));
  let worst: FieldCase | null = null;
  let most = FIELD_DOUBT;
  for (const field of fieldCases(item)) {
    const chance = chances.get(field) ?? 0;
    if (chance < most) continue;
    most = chance;
    worst = field;
  }
  return worst && flagOf(worst);
}

function flagOf(doubted: FieldCase): Flag {
  const [field, how] = doubted.split(' ') as [ComparedField, string];
  return fieldFlag(field, how === 'missing' ? 'which the talk may tell' : 'often misread in such words');
}
