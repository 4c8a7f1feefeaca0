/**
 * The draft: what one recording came to. Written to `draft.json` by stage 4, read by review, grade and report.
 * Distances are counter readings in feet (metres when `unit` is "m"); times are seconds from the start of the
 * recording; clock positions look the way the camera looks (12 top, 3 right, 6 bottom, 9 left).
 */
import { z } from 'zod';
import { degrees, directions, distanceBases, endReasons, positions, statuses } from '../vocabulary/attributes.ts';
import { kindNames } from '../vocabulary/kinds/index.ts';
import { materialNames } from '../vocabulary/materials.ts';
import { serviceNames } from '../vocabulary/services.ts';

export const reviewReasons = [
  'distance-missing',
  'distance-unsure',
  'distance-jumps',
  'word-unsure',
  'hedged',
  'negation-unsure',
  'maybe-repeat',
  'run-unsure',
  'corrected',
  'value-odd',
  'readers-disagree',
  'counter-disagrees',
  'speech-lost',
] as const;

export const heardSchema = z.object({
  start: z.number().nonnegative(),
  end: z.number().nonnegative(),
  text: z.string(),
});

export const flagSchema = z.object({
  reason: z.enum(reviewReasons),
  /** The field the doubt is about ("at", "kind", "status" …), when it is about one. */
  about: z.string().optional(),
  detail: z.string().optional(),
  /** Values the inspector may take instead, best first. */
  offers: z.array(z.object({ value: z.union([z.string(), z.number(), z.null()]), label: z.string() })).optional(),
});

const nullableNumber = z.number().nullable().default(null);

export const observationSchema = z.object({
  id: z.string(),
  run: z.number().int().positive(),
  kind: z.enum(kindNames),
  status: z.enum(statuses),
  at: nullableNumber,
  atBasis: z.enum(distanceBases).nullable().default(null),
  /** For a distance worked out from the track: how far it may be off, in feet. */
  atPlusMinus: z.number().nonnegative().optional(),
  to: nullableNumber,
  position: z.enum(positions).nullable().default(null),
  clock: z.number().int().min(1).max(12).nullable().default(null),
  /** The other end of a clock span, clockwise from `clock`. */
  clockTo: z.number().int().min(1).max(12).nullable().optional(),
  degree: z.enum(degrees).nullable().default(null),
  percent: z.number().min(0).max(100).nullable().default(null),
  inches: nullableNumber,
  material: z.enum(materialNames).nullable().default(null),
  diameterIn: nullableNumber,
  fromMaterial: z.enum(materialNames).nullable().default(null),
  toMaterial: z.enum(materialNames).nullable().default(null),
  serves: z.enum(serviceNames).nullable().default(null),
  angleDeg: nullableNumber,
  heard: heardSchema,
  again: z.array(heardSchema).default([]),
  confidence: z.number().min(0).max(1),
  /** Hearing and reading certainty apart, and the reading certainty of single fields. */
  certainty: z
    .object({
      hearing: z.number().min(0).max(1).nullable(),
      reading: z.number().min(0).max(1),
      fields: z.record(z.string(), z.number().min(0).max(1)).optional(),
    })
    .optional(),
  /** Values that were said and then corrected aloud, kept on record. */
  corrected: z
    .array(z.object({ field: z.string(), was: z.union([z.string(), z.number(), z.null()]), heard: heardSchema }))
    .optional(),
  /** Words read as something other than they were printed. */
  respelled: z.array(z.object({ heard: z.string(), taken: z.string() })).optional(),
  review: z.array(flagSchema).default([]),
});

const siteField = z.object({
  value: z.union([z.string(), z.number(), z.boolean()]),
  heard: heardSchema,
  confidence: z.number().min(0).max(1),
  review: z.array(flagSchema).default([]),
});

export const runSchema = z.object({
  n: z.number().int().positive(),
  access: z.string().nullable(),
  direction: z.enum(directions).nullable(),
  heard: heardSchema.nullable(),
  end: z.object({ at: z.number().nullable(), reason: z.enum(endReasons) }).nullable(),
  review: z.array(flagSchema).default([]),
  /** Counter readings over time, as said: the camera's track. */
  track: z.array(z.object({ seconds: z.number(), feet: z.number() })).optional(),
});

export const absentSchema = z.object({ run: z.number().int().positive(), kind: z.enum(kindNames), heard: heardSchema });
export const asideSchema = z.object({ heard: heardSchema, why: z.string() });

export const draftSchema = z.object({
  schema: z.literal('lineword/draft@1'),
  unit: z.enum(['ft', 'm']).default('ft'),
  recording: z.object({ file: z.string(), sha256: z.string(), seconds: z.number().nonnegative() }),
  site: z.record(z.string(), siteField).default({}),
  runs: z.array(runSchema),
  observations: z.array(observationSchema),
  absent: z.array(absentSchema),
  unplaced: z.array(asideSchema),
  setAside: z.array(asideSchema),
});

export type ReviewReason = (typeof reviewReasons)[number];
export type Heard = z.infer<typeof heardSchema>;
export type Flag = z.infer<typeof flagSchema>;
export type Observation = z.infer<typeof observationSchema>;
export type Run = z.infer<typeof runSchema>;
export type Absent = z.infer<typeof absentSchema>;
export type Aside = z.infer<typeof asideSchema>;
export type Draft = z.infer<typeof draftSchema>;
