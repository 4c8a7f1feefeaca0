/** What no reading may leave behind: a place before the start of the count, an end without a beginning, an end before it. */

import { placelessKinds } from './kind-roles.ts';
import { placeOffers } from './offer-places.ts';
import { type Item, liveItems, type Reading } from './reading.ts';

export function settlePlaces(reading: Reading): void {
  for (const item of reading.runs.flatMap((run) => liveItems(reading, run.n))) {
    if (placelessKinds.has(item.kind)) {
      item.at = null;
      item.basis = null;
      item.fields.to = null;
    }
    if (item.at !== null && item.at < 0) item.at = null;
    if (item.fields.to !== null && item.fields.to < 0) item.fields.to = null;
    settleEnd(item);
    // A place that came by a correction where none was before.
    if (item.at !== null) item.basis ??= 'nearby';
  }
}

/** A lone end is the one place that was said; a spoken stretch told backwards is turned round. Both are for the inspector to see. */
function settleEnd(item: Item): void {
  const { at } = item;
  const { to } = item.fields;
  // A stretch without a length is a place.
  if (to === at) item.fields.to = null;
  if (to === null || (at !== null && at <= to)) return;
  const isToldBackwards = at !== null && item.basis === 'spoken';
  item.at = to;
  item.basis = 'spoken';
  item.fields.to = isToldBackwards ? at : null;
  item.flags.push({
    reason: 'distance-unsure',
    about: 'at',
    detail: isToldBackwards ? `heard as ${at} to ${to}` : 'where it begins was not said plainly',
    offers: placeOffers(to, ...(at === null || isToldBackwards ? [] : [at])),
  });
}
