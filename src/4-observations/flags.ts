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

/** A flag that rests on what was heard, was not said, or is told by one reading alone: weighing both does not lift it. */
export function addFirmFlag(item: Item, flag: Flag): void {
  addFlag(item, flag);
  item.firmFlags.add(flag);
}

/** A flag that only weighing raises. */
export function addSoftFlag(item: Item, flag: Flag): void {
  addFlag(item, flag);
  item.softFlags.add(flag);
}

/** Asks for a field to be checked; `why` goes on after "check where it ends, ". */
export function fieldFlag(field: ComparedField | 'at', why: string): Flag {
  const about = attributeOf(field);
  return { reason: 'value-odd', about, detail: `check ${attributeTitles[about].asked}, ${why}` };
}
