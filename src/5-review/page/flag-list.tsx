import type { QueueItem } from '../queue.ts';
import { offersOf, takeOffer } from './actions.ts';
import { flagSentence } from './words-shown.ts';

/** Why the item is flagged, each with the values one may take instead. */
export function FlagList({ item }: { item: QueueItem }) {
  const flags = 'openFlags' in item.item ? item.item.openFlags : [];
  if (flags.length === 0) return null;
  const offers = offersOf(item);
  return (
    <ul class="flags" aria-label="Why it is flagged">
      {flags.map((flag) => (
        <li key={`${flag.reason}|${flag.about}`}>
          <p class="why">{flagSentence(flag)}</p>
          <div class="offers">
            {offers
              .filter((offer) => offer.flag === flag)
              .map((offer) => (
                <button key={offer.number} type="button" class="offer" onClick={() => takeOffer(offer.number)}>
                  <kbd>{offer.number}</kbd> {offer.label}
                </button>
              ))}
          </div>
        </li>
      ))}
    </ul>
  );
}
