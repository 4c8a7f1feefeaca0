import { kindTitle } from '../../shared/vocabulary/kind-titles.ts';
import type { Unit } from '../../shared/wording/short.ts';
import type { Item } from './reading.ts';

/** "Roots at 23 ft" */
export function nameOfObservation(item: Item, unit: Unit): string {
  const place =
    item.at === null
      ? ''
      : item.fields.to === null
        ? ` at ${item.at} ${unit}`
        : ` ${item.at} to ${item.fields.to} ${unit}`;
  return `${kindTitle(item.kind)}${place}${item.status === 'suspected' ? ', suspected' : ''}`;
}
