import { kindTitle } from '../../shared/vocabulary/kind-titles.ts';
import type { Item } from './reading.ts';

/** "Roots at 23 ft" */
export function nameOfObservation(item: Item): string {
  const place =
    item.at === null ? '' : item.fields.to === null ? ` at ${item.at} ft` : ` ${item.at} to ${item.fields.to} ft`;
  return `${kindTitle(item.kind)}${place}${item.status === 'suspected' ? ', suspected' : ''}`;
}
