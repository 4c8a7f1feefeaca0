import type { Flag } from '../../../shared/schemas/draft.ts';
import type { QueueItem } from '../queue.ts';
import { ChoiceButtons } from './choice-buttons.tsx';
import { flagSentence } from './words-shown.ts';

/** Why the item is flagged, each with the values one may take instead. */
export function FlagList({ item }: { item: QueueItem }) {
  const flags: readonly Flag[] = 'openFlags' in item.item ? item.item.openFlags : [];
  if (flags.length === 0) return null;
  return (
    <ul class="flags" aria-label="Why it is flagged">
      {flags.map((flag) => (
        <li key={`${flag.reason}|${flag.about}`}>
          <p class="why">{flagSentence(flag)}</p>
          <ChoiceButtons isShown={(choice) => choice.what === 'value' && choice.flag === flag} />
        </li>
      ))}
    </ul>
  );
}
