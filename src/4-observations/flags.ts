/** Flags on items, and the one that asks for a field to be checked. */
import type { Flag } from '../../shared/schemas/draft.ts';
import { attributeTitles } from '../../shared/vocabulary/attribute-titles.ts';
import type { ComparedField } from '../../shared/vocabulary/attributes.ts';
import { attributeOf } from './claim.ts';
import type { Item } from './reading.ts';

/** One flag for each reason is enough. */
export function addFlag(item: Item, flag: Flag): void {
  if (!item.flags.some((other) => other.reason === flag.reason)) item.flags.push(flag);
}

/** A flag that rests on how the talk was read: a second reading may lift it. */
export function addSoftFlag(item: Item, flag: Flag): void {
  addFlag(item, flag);
  item.softFlags.add(flag);
}

/** Asks for a field to be checked; `why` goes on after "check where it ends, ". */
export function fieldFlag(field: ComparedField | 'at', why: string): Flag {
  const about = attributeOf(field);
  return { reason: 'value-odd', about, detail: `check ${attributeTitles[about].asked}, ${why}` };
}
