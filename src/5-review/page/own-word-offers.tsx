import type { Correction } from '../suggest-own-words.ts';
import { ownWordOffers, reloadExtras } from './inspection-state.ts';
import { problem } from './notices.ts';
import { ask } from './server-link.ts';

/** What was corrected twice may become a word of the inspector's own. */
export function OwnWordOffers() {
  const offers = ownWordOffers.value;
  if (offers.length === 0) return null;
  const answer = async (offer: Correction, isAccepted: boolean) => {
    await ask('/api/own-words', { ...offer, isAccepted }).catch((error: Error) => {
      problem.value = error.message;
    });
    await reloadExtras();
  };
  return (
    <aside class="own-words" aria-labelledby="own-words-title">
      <h2 id="own-words-title">Your own words</h2>
      <ul>
        {offers.slice(0, 3).map((offer) => (
          <li key={`${offer.heard}|${offer.said}`}>
            <span>
              You took “{offer.heard}” for {offer.said} twice. Read it so in the next draft?
            </span>
            <span class="answers">
              <button type="button" onClick={() => void answer(offer, true)}>
                Yes
              </button>
              <button type="button" class="quiet" onClick={() => void answer(offer, false)}>
                No
              </button>
            </span>
          </li>
        ))}
      </ul>
    </aside>
  );
}
