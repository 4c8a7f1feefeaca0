/** Finds what the inspector meant in an own grade or an answer, and refuses when a new draft no longer fits it. */
import { GradeError } from './grade-error.ts';
import type { GradableObservation } from './grade-input.ts';

interface Meant {
  readonly observation: string;
  readonly kind: string;
  readonly run: number;
  readonly at: number | null;
}

/**
 * An id alone could name another thing after the recording was drafted again, so the content has to fit too; where the
 * id does not fit and exactly one other observation does, that one is meant.
 */
export function meantObservation(
  meant: Meant,
  observations: readonly GradableObservation[],
  what: string,
): GradableObservation {
  const fits = observations.filter((o) => o.kind === meant.kind && o.run === meant.run && o.at === meant.at);
  const byId = fits.find((o) => o.id === meant.observation);
  if (byId) return byId;
  if (fits.length === 1) return fits[0]!;
  const place = meant.at === null ? 'without a distance' : `at ${meant.at}`;
  throw new GradeError(
    `The ${what} for ${meant.kind} ${place} in run ${meant.run} fits no observation any more: take it out of inspection.json or give it again.`,
  );
}
