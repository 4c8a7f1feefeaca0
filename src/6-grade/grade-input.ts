/** What grading takes: the reviewed inspection, or a draft that nobody has reviewed yet. */
import type { Absent, Aside, Draft, Observation, Run } from '../../shared/schemas/draft.ts';

export type ReviewState = 'confirmed' | 'rejected' | 'open' | 'unflagged';

export interface GradableObservation extends Observation {
  readonly reviewState: ReviewState;
}

/** A stretch or denial with its state, when it has been reviewed. */
type MaybeReviewed<T> = T & { readonly reviewState?: ReviewState };

export interface GradeInput {
  readonly unit: 'ft' | 'm';
  readonly recording: Draft['recording'];
  readonly site: Readonly<Record<string, MaybeReviewed<Draft['site'][string]>>>;
  readonly runs: readonly MaybeReviewed<Run & { readonly counterStart?: number }>[];
  readonly observations: readonly GradableObservation[];
  readonly absent: readonly MaybeReviewed<Absent>[];
  readonly unplaced: readonly MaybeReviewed<Aside>[];
}

/** A draft with no decision taken: what is flagged is open, the rest stands. */
export function draftAsReviewed(draft: Draft): GradeInput {
  return {
    ...draft,
    observations: draft.observations.map((o) => ({ ...o, reviewState: o.review.length > 0 ? 'open' : 'unflagged' })),
    unplaced: draft.unplaced.map((aside) => ({ ...aside, reviewState: 'open' as const })),
  };
}
