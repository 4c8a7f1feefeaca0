import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import type { Item } from './reading.ts';

const titles = new Map<string, string>(kinds.map((kind) => [kind.name, kind.title]));

/** "Roots at 23 ft" */
export function nameOfObservation(item: Item): string {
  const place =
    item.at === null ? '' : item.fields.to === null ? ` at ${item.at} ft` : ` ${item.at} to ${item.fields.to} ft`;
  return `${titles.get(item.kind) ?? item.kind}${place}${item.status === 'suspected' ? ', suspected' : ''}`;
}
