/** Holds every place against the push: on the way out the counter rises, so a reading that breaks it is doubted. */

import { soundsLikeNumber } from '../../shared/vocabulary/sounds-like-number.ts';
import { placeOffers } from './offer-places.ts';
import { type Item, liveItems, type Reading } from './reading.ts';

export function checkTrack(reading: Reading): void {
  for (const run of reading.runs) {
    const items = liveItems(reading, run.n).filter(
      (item) =>
        item.at !== null &&
        !item.evidence.isOnWayBack &&
        (item.basis === 'spoken' || item.evidence.placeRule.startsWith('place said before')),
    );
    const fitting = longestRise(items);
    for (const item of items) {
      if (fitting.has(item)) continue;
      const before = items.slice(0, items.indexOf(item)).findLast((other) => fitting.has(other));
      const after = items.slice(items.indexOf(item) + 1).find((other) => fitting.has(other));
      item.evidence.notes.push(`does not fit the push (${before?.at ?? 0} before, ${after?.at ?? '?'} after)`);
      const at = item.at!;
      const swapped = confusable(at, before?.at ?? 0, after?.at ?? null);
      item.flags.push({
        reason: 'distance-jumps',
        about: 'at',
        detail: `heard ${at} ${reading.phrases.unit} between ${before?.at ?? 0} and ${after?.at ?? 'the end'}`,
        offers: placeOffers(...(swapped === null ? [] : [swapped]), at),
      });
      if (swapped !== null) item.at = swapped;
    }
  }
}

/** The largest set of items whose places never fall by more than a little. */
function longestRise(items: readonly Item[]): Set<Item> {
  const SLACK_FEET = 0.6;
  const best = items.map(() => 1);
  const from = items.map(() => -1);
  items.forEach((item, index) => {
    for (let other = 0; other < index; other += 1) {
      const before = items[other]!;
      const start = before.at ?? 0;
      if (start <= (item.at ?? 0) + SLACK_FEET && best[other]! + 1 > best[index]!) {
        best[index] = best[other]! + 1;
        from[index] = other;
      }
    }
  });
  let at = best.length === 0 ? -1 : best.lastIndexOf(Math.max(...best));
  const kept = new Set<Item>();
  while (at >= 0) {
    kept.add(items[at]!);
    at = from[at]!;
  }
  return kept;
}

/** The reading that sounds alike (fourteen and forty, fifteen and fifty), where it fits the push. */
export function confusable(feet: number, before: number, after: number | null): number | null {
  const alike = soundsLikeNumber(String(feet));
  const value = alike === null ? null : Number(alike);
  return value !== null && value >= before && (after === null || value <= after) ? value : null;
}
