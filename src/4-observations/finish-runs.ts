/** What can only be said of a run when all of it is read: its direction where none was said, its end, items left without one. */
import { endKinds } from './kind-roles.ts';
import { liveItems, type Reading } from './reading.ts';

export function finishRuns(reading: Reading): void {
  if (reading.runs.length === 0) return;
  for (const run of reading.runs) {
    const items = liveItems(reading, run.n);
    const ends = items.filter(
      (item) => endKinds[item.kind] !== undefined && item.status === 'present' && !item.evidence.isOnWayBack,
    );
    const end = ends.at(-1);
    run.end = end
      ? { at: end.at, reason: endKinds[end.kind] ?? 'other' }
      : run.end && items.length > 0
        ? run.end
        : null;
    if (end && end.at === null) {
      const furthest = run.furthest > 0 ? run.furthest : null;
      run.end = { at: furthest, reason: endKinds[end.kind] ?? 'other' };
    }
    // A run that reached the main, a tank or a manhole went with the flow; one that ended inside the house went against it.
    if (run.direction === null && run.end && /^(main|tank|manhole|end-of-line)$/.test(run.end.reason))
      run.direction = /^(main|tank|manhole)$/.test(run.end.reason)
        ? 'downstream'
        : run.end.reason === 'end-of-line'
          ? 'upstream'
          : null;
  }
}
