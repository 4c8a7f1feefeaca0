/** Which part of the line a place lies in. Where the owner's part ends is asked, never assumed. */
import type { GradedRun, Part, Place } from '../../shared/schemas/grade.ts';
import type { Inspection } from '../../shared/schemas/inspection.ts';
import { plays } from '../../shared/vocabulary/grading/roles.ts';
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';

type RunFacts = Pick<GradedRun, 'direction' | 'ownerEndsFeet'>;

/**
 * An end at the main or at a tank puts the whole run in the owner's part; the tap itself only when that was stated.
 * An end elsewhere needs a distance on the run; within the counter's doubt of it nobody can tell.
 */
export function partOf(kind: KindName, place: Place | null, run: RunFacts, ownerPart: Inspection['ownerPart']): Part {
  if (run.ownerEndsFeet !== null) {
    if (place === null || place.feet === null) return 'not-stated';
    const beyond = run.direction === 'upstream' ? run.ownerEndsFeet - place.feet : place.feet - run.ownerEndsFeet;
    if (Math.abs(beyond) <= place.plusMinusFeet) return 'near-boundary';
    return beyond > 0 ? 'beyond-owner' : 'owner';
  }
  if (ownerPart === undefined) return 'not-stated';
  if (ownerPart.endsAt === 'main-with-tap' || ownerPart.endsAt === 'tank') return 'owner';
  if (ownerPart.endsAt === 'main') return plays('meetsMain', kind) ? 'near-boundary' : 'owner';
  return 'not-stated';
}
