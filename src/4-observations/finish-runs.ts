/** What can only be said of a run when all of it is read: its direction where none was said, its end, items left without one. */
import type { EndReason } from '../../shared/vocabulary/attributes.ts';
import { leadsDown } from './access-words.ts';
import { implyStop } from './imply-stop.ts';
import { endKinds, lastKinds, mayEndKinds } from './kind-roles.ts';
import { startUnannounced } from './read-runs.ts';
import { furthestOf, type Item, liveItems, type Reading, type RunState } from './reading.ts';
import { LEAP_FEET, placeAtEnd, settleEnds } from './settle-ends.ts';

export function finishRuns(reading: Reading): void {
  const [first] = reading.sentences;
  if (reading.runs.length === 0 && first && (reading.items.length > 0 || reading.absent.length > 0))
    startUnannounced(reading, first);
  dropEmptyRuns(reading);
  settleEnds(reading);
  for (const run of reading.runs) {
    run.end = endOf(reading, run);
    placeAtEnd(reading, run);
    implyStop(reading, run);
    decideDirection(run, reading.runs[run.n - 2] ?? null);
  }
}

/** A run in which nothing was found and no place was read is no run: its talk belongs to the one before. */
function dropEmptyRuns(reading: Reading): void {
  const kept: RunState[] = [];
  for (const run of reading.runs) {
    const isEmpty = run.track.length === 0 && liveItems(reading, run.n).length === 0;
    if (isEmpty && kept.length > 0) {
      reading.owners.forEach((owner, index) => {
        if (owner?.sort === 'run' && owner.run === run.n)
          reading.owners[index] = { sort: 'aside', why: 'about the run' };
      });
    } else kept.push(run);
  }
  kept.forEach((run, index) => {
    const n = index + 1;
    if (run.n === n) return;
    for (const item of reading.items) if (item.run === run.n) item.run = n;
    for (const entry of reading.absent) if (entry.run === run.n) entry.run = n;
    reading.owners.forEach((owner, at) => {
      if ((owner?.sort === 'run' || owner?.sort === 'absent') && owner.run === run.n)
        reading.owners[at] = { ...owner, run: n };
    });
    run.n = n;
  });
  reading.runs = kept;
}

/** Lets each run end where the thing lies that ends it, once places were moved and things listed that only a second reading finds. */
export function followEnds(reading: Reading): void {
  for (const run of reading.runs) {
    const end = endingItem(liveItems(reading, run.n));
    if (!end || end.at === null) continue;
    const isNew = run.end === null || run.end.reason === 'other';
    if (isNew || end.at > (run.end?.at ?? 0)) run.end = { at: end.at, reason: endKinds[end.kind] ?? 'other' };
  }
}

const endingItem = (items: readonly Item[]): Item | undefined =>
  items.findLast(
    (item) => endKinds[item.kind] !== undefined && item.status === 'present' && !item.evidence.isOnWayBack,
  );

function endOf(reading: Reading, run: RunState): RunState['end'] {
  const items = liveItems(reading, run.n);
  const end = endingItem(items);
  if (!end)
    return items.length > 0
      ? (run.end ?? chosenEnd(items, run) ?? blockedEnd(items) ?? reachedEnd(items) ?? leftOff(items))
      : null;
  const reason: EndReason = endKinds[end.kind] ?? 'other';
  return { at: end.at ?? (run.furthest > 0 ? run.furthest : null), reason };
}

/** How near the furthest place, in feet, the talk must say that the run is ended. */
const END_FEET = 1.5;

/** An end by choice, or where the camera came out: the vent or cleanout it came to, else another reason. */
function chosenEnd(items: readonly Item[], run: RunState): RunState['end'] {
  const at = run.finishedAt;
  // What a summary names of other runs is no place this one reached.
  const seen = items.filter((item) => item.sentence <= run.finishedIn);
  const furthest = Math.max(0, ...seen.map(furthestOf));
  if (at === null || at <= 0 || at < furthest - END_FEET) return null;
  const reached = items.findLast(
    (item) => mayEndKinds[item.kind] !== undefined && item.at !== null && Math.abs(item.at - at) <= END_FEET,
  );
  return { at, reason: (reached && mayEndKinds[reached.kind]) ?? 'other' };
}

/** Where the furthest thing seen fills the pipe, that is where the camera ended. */
function blockedEnd(items: readonly Item[]): RunState['end'] {
  const furthest = Math.max(...items.map(furthestOf));
  const last = items.findLast(
    (item) =>
      lastKinds[item.kind] !== undefined &&
      item.status === 'present' &&
      item.at !== null &&
      furthestOf(item) >= furthest,
  );
  return last ? { at: last.at, reason: lastKinds[last.kind] ?? 'other' } : null;
}

/** A cleanout or vent that is the last and furthest thing of a run: the camera came out there. */
function reachedEnd(items: readonly Item[]): RunState['end'] {
  const placed = items.filter((item) => item.at !== null && !item.evidence.isOnWayBack);
  const last = placed.at(-1);
  const reason = last && mayEndKinds[last.kind];
  if (!last || !reason || last.at === null || last.at <= 0) return null;
  return placed.every((item) => furthestOf(item) <= (last.at ?? 0)) ? { at: last.at, reason } : null;
}

/** Where nothing says how a run ended, the furthest thing seen is where it was left. */
function leftOff(items: readonly Item[]): RunState['end'] {
  const places = items.filter((item) => !item.evidence.isOnWayBack).map(furthestOf);
  const sorted = places.sort((a, b) => a - b);
  const at = sorted.findLast((feet, index) => feet <= (sorted[index - 1] ?? 0) + LEAP_FEET) ?? 0;
  return at > 0 ? { at, reason: 'other' } : null;
}

function decideDirection(run: RunState, before: RunState | null): void {
  const reached = run.end?.reason ?? 'other';
  // A run that reached the main, a tank or a manhole went with the flow, unless the talk plainly says otherwise.
  if (/^(main|tank|manhole)$/.test(reached) && !run.isDirectionPlain) run.direction = 'downstream';
  // "The upstairs toilet's pulled": from there no other way is likely.
  const isOwnAccess = run.access !== null && run.access !== before?.access;
  if (isOwnAccess && run.direction === 'upstream' && !run.isDirectionPlain && leadsDown(run.access ?? ''))
    run.direction = reached === 'end-of-line' ? 'upstream' : 'downstream';
  if (run.direction !== null) return;
  if (run.isOppositeWay && before?.direction) {
    run.direction = before.direction === 'downstream' ? 'upstream' : 'downstream';
    run.isDirectionAssumed = before.isDirectionAssumed;
    return;
  }
  if (reached === 'end-of-line' && !(isOwnAccess && leadsDown(run.access ?? ''))) run.direction = 'upstream';
  else {
    run.direction = 'downstream';
    // From a toilet or a vent there is no other way.
    run.isDirectionAssumed = run.access === null || !leadsDown(run.access);
  }
}
