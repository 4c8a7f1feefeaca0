/**
 * The inspection: what is asked of the inspector and never taken from the talk or assumed. Kept in `inspection.json`
 * in the folder of the recording. Everything may be left out; the report then prints "not stated".
 * Distances are on the camera's counter, in the unit of the draft (feet, or metres for a metric job).
 */
import { z } from 'zod';
import { actionNames, severityNames } from '../vocabulary/grading/levels.ts';
import { kindNames } from '../vocabulary/kinds/index.ts';

const words = z.string().trim().min(1);
const isoDate = z.iso.date('give a date as YYYY-MM-DD');

export const ownerEnds = ['main', 'main-with-tap', 'property-line', 'tank', 'other'] as const;

/** Which observation is meant, with enough of its content to notice when a new draft has given its id to another. */
const meantSchema = z.strictObject({
  observation: z.string(),
  kind: z.enum(kindNames),
  run: z.number().int().positive(),
  at: z.number().nullable(),
});

export const ownGradeSchema = meantSchema.extend({
  severity: z.enum(severityNames).nullable(),
  action: z.enum(actionNames),
  reason: words,
  by: words.optional(),
});

export const answerSchema = meantSchema.extend({
  /** Whether soil shows around the joint. */
  soilExposed: z.boolean().optional(),
  /** The inside of a pipe out of round, measured upright and across. */
  heightIn: z.number().positive().optional(),
  widthIn: z.number().positive().optional(),
});

export const inspectionRunSchema = z.strictObject({
  n: z.number().int().positive(),
  /** The access point by compass: "southeast corner of the basement". */
  compass: words.optional(),
  /** The access point in words, when the talk did not give it. */
  access: words.optional(),
  /** The counter reading where the camera enters the pipe (a riser, a distance from the wall). */
  entryOffset: z.number().optional(),
  /** Where the owner's part ends on this run, on the counter. */
  ownerEndsAt: z.number().nonnegative().optional(),
  /** Fall of the pipe in inches a foot, when it was measured. */
  slopeInchesPerFoot: z.number().positive().optional(),
});

export const inspectionSchema = z.strictObject({
  schema: z.literal('lineword/inspection@1'),
  /** What the report prints lengths in. */
  units: z.enum(['feet', 'meters']).optional(),
  property: z
    .strictObject({
      address: words.optional(),
      client: words.optional(),
      yearBuilt: z.number().int().optional(),
      occupied: z.boolean().optional(),
    })
    .optional(),
  date: isoDate.optional(),
  startTime: words.optional(),
  inspector: z
    .strictObject({
      name: words.optional(),
      company: words.optional(),
      license: words.optional(),
      contact: words.optional(),
    })
    .optional(),
  conditions: z
    .strictObject({
      weather: words.optional(),
      /** Whether water was run before or during the inspection. */
      waterRun: words.optional(),
      /** Whether the line was cleaned before. */
      cleaned: words.optional(),
      other: words.optional(),
    })
    .optional(),
  equipment: words.optional(),
  ownerPart: z
    .strictObject({
      endsAt: z.enum(ownerEnds),
      words: words.optional(),
      /** Who said so: the city's page, the district, the seller. */
      statedBy: words.optional(),
    })
    .optional(),
  runs: z.array(inspectionRunSchema).default([]),
  ownGrades: z.array(ownGradeSchema).default([]),
  answers: z.array(answerSchema).default([]),
});

export type Inspection = z.infer<typeof inspectionSchema>;
export type InspectionRun = z.infer<typeof inspectionRunSchema>;
export type OwnGrade = z.infer<typeof ownGradeSchema>;
export type Answer = z.infer<typeof answerSchema>;
export type OwnerEnd = (typeof ownerEnds)[number];
