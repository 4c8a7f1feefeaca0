/**
 * Reviewed: the draft with the inspector's decisions laid over it. Made by `applyDecisions(draft, decisions)`;
 * never stored as the truth, always worked out again. Read by the page, the grade and the report.
 * Units are those of the draft. Every field of the draft is kept; the fields below are added.
 *
 * Who reads this should leave out observations that are `rejected` (see `standingObservations`) and treat `open`
 * ones as unsure.
 */
import { z } from 'zod';
import { decisionBodySchema, subjectSchema } from './decision.ts';
import { absentSchema, asideSchema, draftSchema, flagSchema, observationSchema, runSchema } from './draft.ts';

const plainValue = z.union([z.string(), z.number(), z.boolean(), z.null()]);

/**
 * `open`: flagged and not settled. `unflagged`: no flag and nobody decided; the tool stands by it.
 * `confirmed`: a person stands by it. `rejected`: a person says that it is not so.
 */
export const reviewStates = ['confirmed', 'rejected', 'open', 'unflagged'] as const;

const decidedBySchema = z.object({ person: z.string(), time: z.string(), decision: z.string() }).nullable();

const reviewFields = {
  /** How decisions name it. */
  subject: subjectSchema,
  reviewState: z.enum(reviewStates),
  decidedBy: decidedBySchema,
  /** Fields that a person set: what the draft had, who changed it and when. */
  changed: z.record(z.string(), z.object({ was: plainValue, person: z.string(), time: z.string() })),
  /** Flags that are not settled yet. Empty unless `reviewState` is `open`. */
  openFlags: z.array(flagSchema),
  /** It was confirmed, and this draft reads otherwise than what was confirmed: it is open again. */
  reopened: z.array(z.object({ field: z.string(), confirmed: plainValue, now: plainValue })),
  /** Drawn at random among the unflagged: it must be listened to before signing. */
  isDrawn: z.boolean(),
};

export const reviewedObservationSchema = observationSchema.extend({
  ...reviewFields,
  /** `draft` as the tool found it; `added` by a person; `split` off another by a person. */
  source: z.enum(['draft', 'added', 'split']),
});

export const reviewedRunSchema = runSchema.extend({
  ...reviewFields,
  source: z.enum(['draft', 'added']),
  /** The reading of the counter at the access, already taken off every distance of the run. */
  counterStart: z.number(),
});

export const reviewedAbsentSchema = absentSchema.extend({
  subject: subjectSchema,
  reviewState: z.enum(reviewStates),
  decidedBy: decidedBySchema,
  isDrawn: z.boolean(),
});

/** `unplaced` starts `open`, `setAside` starts `unflagged`; `confirmed` means that it holds nothing to write down. */
export const reviewedAsideSchema = asideSchema.extend({
  subject: subjectSchema,
  reviewState: z.enum(reviewStates),
  decidedBy: decidedBySchema,
  isDrawn: z.boolean(),
  /** The observation a person made of it. */
  becameId: z.string().nullable(),
});

export const reviewedSiteFieldSchema = draftSchema.shape.site.unwrap().valueType.extend(reviewFields);

export const orphanedDecisionSchema = z.object({
  decision: z.intersection(
    decisionBodySchema,
    z.object({ n: z.number(), id: z.string(), time: z.string(), person: z.string() }),
  ),
  /** One sentence: why it no longer fits. */
  why: z.string(),
  /** The observation of this draft that comes nearest, if any. */
  nearestId: z.string().nullable(),
});

/** What the listens to unflagged items tell about silent mistakes. */
export const listeningSchema = z.object({
  drawn: z.number().int(),
  listened: z.number().int(),
  wrong: z.number().int(),
  /** Share wrong among those listened to; null before the first. */
  share: z.number().nullable(),
  /** One-sided upper 95 % bound of that share (Clopper-Pearson); null before the first. */
  upper95: z.number().nullable(),
});

export const reviewedSchema = z.object({
  schema: z.literal('lineword/reviewed@1'),
  unit: draftSchema.shape.unit.unwrap(),
  recording: draftSchema.shape.recording,
  site: z.record(z.string(), reviewedSiteFieldSchema),
  runs: z.array(reviewedRunSchema),
  observations: z.array(reviewedObservationSchema),
  absent: z.array(reviewedAbsentSchema),
  unplaced: z.array(reviewedAsideSchema),
  setAside: z.array(reviewedAsideSchema),
  orphanedDecisions: z.array(orphanedDecisionSchema),
  /** Flagged things that nobody settled. Signing needs 0. */
  openCount: z.number().int(),
  /** Of the unflagged observations. */
  listening: listeningSchema,
  /** Of the stretches set aside and the denials. */
  asideListening: listeningSchema,
  /** Decisions that can be taken back, newest last, and those that can be put back, next one last (ids). */
  undoable: z.array(z.string()),
  redoable: z.array(z.string()),
});

export type ReviewState = (typeof reviewStates)[number];
export type ReviewedObservation = z.infer<typeof reviewedObservationSchema>;
export type ReviewedRun = z.infer<typeof reviewedRunSchema>;
export type ReviewedAbsent = z.infer<typeof reviewedAbsentSchema>;
export type ReviewedAside = z.infer<typeof reviewedAsideSchema>;
export type ReviewedSiteField = z.infer<typeof reviewedSiteFieldSchema>;
export type OrphanedDecision = z.infer<typeof orphanedDecisionSchema>;
export type Listening = z.infer<typeof listeningSchema>;
export type Reviewed = z.infer<typeof reviewedSchema>;

/** The observations that stand: all but the rejected ones. */
export function standingObservations(reviewed: Pick<Reviewed, 'observations'>): ReviewedObservation[] {
  return reviewed.observations.filter((observation) => observation.reviewState !== 'rejected');
}
