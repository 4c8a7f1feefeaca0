/**
 * The grade: the reviewed inspection with a grade, an owner's part and the computations of each finding. Written to
 * `grade.json` by stage 6; the report is written from it alone. Distances are feet; `counterFeet` is what the camera's
 * counter showed (converted when the job is metric), `feet` the distance from where the camera entered the pipe.
 */
import { z } from 'zod';
import { degrees, directions, distanceBases, endReasons, positions, statuses } from '../vocabulary/attributes.ts';
import { actionNames, severityNames, tradeNames } from '../vocabulary/grading/levels.ts';
import { kindNames } from '../vocabulary/kinds/index.ts';
import { materialNames } from '../vocabulary/materials.ts';
import { serviceNames } from '../vocabulary/services.ts';
import { absentSchema, asideSchema, flagSchema, heardSchema } from './draft.ts';
import { gradeRuleSchema } from './grade-rule.ts';
import { inspectionSchema } from './inspection.ts';

const valueSchema = z.union([z.string(), z.number()]);

/** A value worked out, with everything it was worked out from. */
export const computationSchema = z.object({
  name: z.string(),
  inputs: z.array(z.object({ name: z.string(), value: valueSchema, unit: z.string(), source: z.string() })),
  formula: z.string(),
  results: z.array(z.object({ name: z.string(), value: z.number(), unit: z.string() })),
  /** What the result does not take into account, when a reader could be misled. */
  note: z.string().optional(),
});

export const placeSchema = z.object({
  counterFeet: z.number(),
  /** `null` when the reading lies before the entry into the pipe: such a place is in the riser. */
  feet: z.number().nullable(),
  plusMinusFeet: z.number().nonnegative(),
  basis: z.enum(distanceBases).nullable(),
});

export const pipeHereSchema = z.object({
  material: z.enum(materialNames).nullable(),
  nominalIn: z.number().nullable(),
  insideIn: z.number().nullable(),
  insideSource: z.string().nullable(),
});

export const parts = ['owner', 'beyond-owner', 'near-boundary', 'not-stated'] as const;

export const gradeSchema = z.object({
  severity: z.enum(severityNames).nullable(),
  action: z.enum(actionNames),
  again: z.string().nullable(),
  trade: z.enum(tradeNames),
  /** The rule that gave the grade, and all that held. */
  rule: z.string().nullable(),
  rulesHeld: z.array(z.string()),
  needsCorrection: z.array(z.string()),
  isInformation: z.boolean(),
  next: z.string(),
  /** The inspector's own grade, which then stands above; what the rules gave is kept here. */
  own: z
    .object({
      reason: z.string(),
      by: z.string().nullable(),
      rulesGave: z.object({ severity: z.enum(severityNames).nullable(), action: z.enum(actionNames) }),
    })
    .nullable(),
});

const nullableNumber = z.number().nullable();

export const findingSchema = z.object({
  id: z.string(),
  run: z.number().int().positive(),
  kind: z.enum(kindNames),
  group: z.enum(['fitting', 'defect', 'limit']),
  status: z.enum(statuses),
  reviewState: z.enum(['confirmed', 'unflagged', 'open']),
  at: placeSchema.nullable(),
  to: placeSchema.nullable(),
  position: z.enum(positions).nullable(),
  clock: nullableNumber,
  clockTo: nullableNumber,
  degree: z.enum(degrees).nullable(),
  percent: nullableNumber,
  inches: nullableNumber,
  material: z.enum(materialNames).nullable(),
  diameterIn: nullableNumber,
  fromMaterial: z.enum(materialNames).nullable(),
  toMaterial: z.enum(materialNames).nullable(),
  serves: z.enum(serviceNames).nullable(),
  angleDeg: nullableNumber,
  heard: heardSchema,
  again: z.array(heardSchema),
  /** Why the item is still open, as the draft says. */
  review: z.array(flagSchema),
  pipeHere: pipeHereSchema,
  part: z.enum(parts),
  /** `null` for what is not graded: fittings that inform of nothing, suspicions, open items, limits. */
  grade: gradeSchema.nullable(),
  computations: z.array(computationSchema),
});

export const stretchSchema = z.object({
  fromFeet: z.number(),
  toFeet: z.number(),
  material: z.enum(materialNames).nullable(),
  nominalIn: z.number().nullable(),
});

export const gradedRunSchema = z.object({
  n: z.number().int().positive(),
  access: z.string().nullable(),
  compass: z.string().nullable(),
  direction: z.enum(directions).nullable(),
  heard: heardSchema.nullable(),
  entryOffsetFeet: z.number().nullable(),
  end: z.object({ at: placeSchema.nullable(), reason: z.enum(endReasons) }).nullable(),
  /** How far the camera came, from the entry; `null` when no distance of this run is known. */
  reachedFeet: z.number().nullable(),
  reachedPlusMinusFeet: z.number().nullable(),
  notSeen: z.array(z.object({ fromFeet: z.number(), toFeet: z.number().nullable(), why: z.string() })),
  seenFeet: z.number().nullable(),
  stretches: z.array(stretchSchema),
  computations: z.array(computationSchema),
  ownerEndsFeet: z.number().nullable(),
});

export const gradedSchema = z.object({
  schema: z.literal('lineword/grade@1'),
  recording: z.object({ file: z.string(), sha256: z.string(), seconds: z.number().nonnegative() }),
  counterUnit: z.enum(['ft', 'm']),
  inspection: inspectionSchema,
  site: z.record(z.string(), z.object({ value: z.union([z.string(), z.number(), z.boolean()]), isOpen: z.boolean() })),
  runs: z.array(gradedRunSchema),
  /** Everything confirmed or unflagged, and what is suspected or open, in order of run and distance. */
  findings: z.array(findingSchema),
  absent: z.array(absentSchema),
  unplaced: z.array(asideSchema),
  rules: z.object({
    table: z.string(),
    /** The rules that held for some finding, whole, so that the report needs no table. */
    used: z.array(gradeRuleSchema),
    local: z
      .object({
        name: z.string(),
        authority: z.string(),
        sha256: z.string(),
        replaced: z.array(z.string()),
        added: z.array(z.string()),
        dropped: z.array(z.string()),
        hasSlope: z.boolean(),
      })
      .nullable(),
  }),
  /** What the inspector is asked, because a rule needs it and nobody said it. */
  questions: z.array(
    z.object({
      about: z.enum(['soil', 'ownerPart', 'date', 'inspector', 'entryOffset', 'compass']),
      observation: z.string().nullable(),
      run: z.number().int().nullable(),
      question: z.string(),
    }),
  ),
});

export type Computation = z.infer<typeof computationSchema>;
export type Place = z.infer<typeof placeSchema>;
export type PipeHere = z.infer<typeof pipeHereSchema>;
export type Part = (typeof parts)[number];
export type Grade = z.infer<typeof gradeSchema>;
export type Finding = z.infer<typeof findingSchema>;
export type Stretch = z.infer<typeof stretchSchema>;
export type GradedRun = z.infer<typeof gradedRunSchema>;
export type Graded = z.infer<typeof gradedSchema>;
