/**
 * Decisions: what the inspector settled. One JSON object a line in `decisions.jsonl`, only ever appended.
 * A decision names its subject by content (kind, distance as drafted, words heard), never by position or id,
 * so that it still finds its subject after the recording was drafted again.
 * `previous` is the `sum` of the line before; `sum` is the SHA-256 of the line without its `sum` (see
 * `src/5-review/decision-line.ts`), so that a changed, removed or inserted line shows.
 */
import { z } from 'zod';
import { kindNames } from '../vocabulary/kinds/index.ts';
import { heardSchema, observationSchema } from './draft.ts';

const plainValue = z.union([z.string(), z.number(), z.boolean(), z.null()]);
const words = z.string();
/** Which one, in order of time, among subjects that are otherwise the same. */
const nth = z.number().int().nonnegative();

export const subjectSchema = z.discriminatedUnion('what', [
  z.object({ what: z.literal('observation'), kind: z.enum(kindNames), at: z.number().nullable(), words, nth }),
  /** An observation or a run that a decision brought in: named by the id of that decision. */
  z.object({ what: z.literal('added'), id: z.string() }),
  z.object({ what: z.literal('absent'), kind: z.enum(kindNames), words, nth }),
  z.object({ what: z.literal('unplaced'), words, nth }),
  z.object({ what: z.literal('set-aside'), words, nth }),
  z.object({ what: z.literal('run'), words, nth }),
  z.object({ what: z.literal('site'), name: z.string() }),
]);

/** Field name to its value before and after. */
export const changesSchema = z.record(z.string(), z.object({ was: plainValue, now: plainValue }));

/** The fields of an observation that a person can set. */
export const enteredObservationSchema = observationSchema
  .omit({ id: true, confidence: true, certainty: true, corrected: true, respelled: true, review: true, again: true })
  .extend({ heard: heardSchema });

export const decisionBodySchema = z.discriminatedUnion('action', [
  z.object({
    action: z.literal('confirm'),
    subject: subjectSchema,
    changes: changesSchema.optional(),
    /** What was on screen when it was confirmed, after `changes`. A later draft that reads otherwise opens it again. */
    values: z.record(z.string(), plainValue),
  }),
  z.object({ action: z.literal('reject'), subject: subjectSchema }),
  z.object({
    action: z.literal('change'),
    subject: subjectSchema,
    changes: changesSchema,
    /** Flags this settles, as "reason|about". */
    answers: z.array(z.string()).optional(),
  }),
  /** A new observation; `from` is the stretch it was made of, when it was one. */
  z.object({ action: z.literal('add'), from: subjectSchema.nullable(), observation: enteredObservationSchema }),
  z.object({ action: z.literal('merge'), subject: subjectSchema, others: z.array(subjectSchema).min(1) }),
  z.object({
    action: z.literal('split'),
    subject: subjectSchema,
    changes: changesSchema,
    observation: enteredObservationSchema,
  }),
  /** From this second on the counter runs anew: what was heard later in the run becomes a run of its own. */
  z.object({
    action: z.literal('start-run'),
    run: z.number().int().positive(),
    atSeconds: z.number().nonnegative(),
    /** Taken off the distances of the new run: the reading where it begins, when the counter itself was not zeroed. */
    lessFeet: z.number(),
  }),
  /** A run that is none of its own: it goes on from the one before, with `addFeet` added to its distances. */
  z.object({ action: z.literal('join-run'), subject: subjectSchema, addFeet: z.number() }),
  z.object({ action: z.literal('undo'), of: z.string() }),
  z.object({ action: z.literal('redo'), of: z.string() }),
]);

const stampSchema = z.object({
  n: z.number().int().positive(),
  /** Made by the page; the same id is never written twice. */
  id: z.string().min(1),
  time: z.iso.datetime({ offset: true }),
  person: z.string(),
  previous: z.string().nullable(),
});

export const decisionSchema = z.intersection(decisionBodySchema, stampSchema);

export type Subject = z.infer<typeof subjectSchema>;
export type Changes = z.infer<typeof changesSchema>;
export type PlainValue = z.infer<typeof plainValue>;
export type EnteredObservation = z.infer<typeof enteredObservationSchema>;
export type DecisionBody = z.infer<typeof decisionBodySchema>;
export type DecisionStamp = z.infer<typeof stampSchema>;
export type Decision = DecisionBody & DecisionStamp;
