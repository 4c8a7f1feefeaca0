/**
 * A grade rule: for which kinds it holds, when, what severity and action follow, where the limit comes from and why.
 * The rule table is data in `shared/vocabulary/grading/rules/`; a local rule file has the same form.
 */
import { z } from 'zod';
import { actionNames, severityNames, tradeNames } from '../vocabulary/grading/levels.ts';
import { kindNames } from '../vocabulary/kinds/index.ts';

/** What a rule may ask about. Shares are percent of the true inside diameter unless the kind says otherwise. */
export const factNames = [
  /** The share as said, 0 to 100. */
  'percent',
  /** The size as said, in inches. */
  'inches',
  /** Depth of standing water as a share of the true inside diameter: worked out from inches, or as said. */
  'waterShare',
  /** The said inches as a share of the true inside diameter. */
  'boreShare',
  'degree',
  /** What the pipe itself is made of (kinds that say what the pipe is). */
  'material',
  /** Whether soil shows around the joint, as answered by the inspector. */
  'soilExposed',
  /** Whether loose or settled material, grease or roots were confirmed within a foot. */
  'solidsNear',
  'rootsNear',
  'voidNear',
  /** Whether the camera could not pass at this place. */
  'stopsCamera',
] as const;

export const conditionSchema = z
  .strictObject({
    fact: z.enum(factNames),
    known: z.boolean().optional(),
    is: z
      .array(z.union([z.string(), z.number(), z.boolean()]))
      .min(1)
      .optional(),
    over: z.number().optional(),
    atLeast: z.number().optional(),
    under: z.number().optional(),
    atMost: z.number().optional(),
  })
  .refine((condition) => Object.keys(condition).length > 1, 'a condition needs something to compare the fact with');

export const gradeRuleSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'use small letters, digits and hyphens'),
  kinds: z.array(z.enum(kindNames)).min(1),
  /** All must hold. None means: always. */
  when: z.array(conditionSchema).default([]),
  /** `null` for a rule that only informs or only puts the finding on the list of things in need of correction. */
  severity: z.enum(severityNames).nullable(),
  action: z.enum(actionNames),
  /** For an action of looking again: when ("every two to five years"). */
  again: z.string().optional(),
  /** Who does it, when it is not the one who usually does. */
  trade: z.enum(tradeNames).optional(),
  /** Whether a published list names this among the things to report as in need of correction. */
  needsCorrection: z.boolean().default(false),
  isInformation: z.boolean().default(false),
  /** The limit in words, as the report prints it. */
  limit: z.string().min(1),
  source: z.string().min(1),
  why: z.string().min(1),
  /** What to do, when the usual words for the kind do not fit this severity. */
  next: z.string().optional(),
});

/** A local rule file: rules of the same id take the place of ours, `drop` takes ours away, others are added. */
export const localRulesSchema = z.strictObject({
  schema: z.literal('lineword/rules@1'),
  name: z.string().min(1),
  /** Who says so: the city, the district, the client. */
  authority: z.string().min(1),
  rules: z.array(gradeRuleSchema).default([]),
  drop: z.array(z.string()).default([]),
  slope: z
    .strictObject({
      rows: z
        .array(z.strictObject({ upToIn: z.number().positive().nullable(), inchesPerFoot: z.number().positive() }))
        .min(1),
      source: z.string().min(1),
    })
    .optional(),
});

export type FactName = (typeof factNames)[number];
export type Condition = z.infer<typeof conditionSchema>;
export type GradeRule = z.infer<typeof gradeRuleSchema>;
export type GradeRuleInput = z.input<typeof gradeRuleSchema>;
export type LocalRules = z.infer<typeof localRulesSchema>;
