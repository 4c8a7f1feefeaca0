/**
 * The report: everything that is printed, composed and in order. The page, the PDF, the tables and the short text are
 * all written from this, so that none of them can say more than another. Lengths are already in words.
 */
import { z } from 'zod';
import { findingSchema } from './grade.ts';

const labelled = z.object({ label: z.string(), value: z.string() });

/** A computation in words: what came out, and from what. */
const sumSchema = z.object({ name: z.string(), result: z.string(), inputs: z.string(), note: z.string() });

/** One row of the findings table. */
export const reportFindingSchema = z.object({
  number: z.number().int().positive(),
  id: z.string(),
  run: z.number().int(),
  place: z.string(),
  counter: z.string(),
  plusMinus: z.string(),
  what: z.string(),
  where: z.string(),
  size: z.string(),
  /** "minor", "moderate", "severe", "suspected", "information" or "not graded". */
  severity: z.string(),
  severityRank: z.number().int(),
  action: z.string(),
  meaning: z.string(),
  next: z.string(),
  trade: z.string(),
  part: z.string(),
  words: z.string(),
  time: z.string(),
  computations: z.array(sumSchema),
});

export const reportStillSchema = z.object({
  number: z.number().int(),
  caption: z.string(),
  /** JPEG bytes, base64; `null` when no picture could be taken. */
  jpeg: z.string().nullable(),
  why: z.string().nullable(),
});

export const drawingSchema = z.object({
  title: z.string(),
  alt: z.string(),
  svg: z.string(),
  widthPoints: z.number(),
  heightPoints: z.number(),
});

export const reportSchema = z.object({
  schema: z.literal('lineword/report@1'),
  units: z.enum(['feet', 'meters']),
  title: z.string(),
  address: z.string(),
  /** Said on every page while nobody has signed; `null` once signed. */
  draftNotice: z.string().nullable(),
  short: z.array(z.string()),
  openItems: z.array(z.object({ what: z.string(), why: z.string(), words: z.string(), time: z.string() })),
  next: z.array(
    z.object({
      title: z.string(),
      trades: z.array(
        z.object({
          title: z.string(),
          steps: z.array(z.object({ step: z.string(), where: z.array(z.string()) })),
        }),
      ),
    }),
  ),
  facts: z.array(labelled),
  drawings: z.array(drawingSchema),
  runs: z.array(
    z.object({
      number: z.number().int(),
      title: z.string(),
      sentences: z.array(z.string()),
      computations: z.array(sumSchema),
      fittings: z.array(z.object({ place: z.string(), what: z.string(), details: z.string(), time: z.string() })),
    }),
  ),
  findings: z.array(reportFindingSchema),
  /** Said in place of an empty table. */
  noFinding: z.string(),
  stills: z.array(reportStillSchema),
  notSeen: z.array(z.string()),
  notInspected: z.array(z.object({ what: z.string(), why: z.string() })),
  limits: z.array(z.string()),
  cautions: z.array(z.object({ title: z.string(), text: z.string(), source: z.string() })),
  ownership: z.array(z.string()),
  rules: z.object({
    sentences: z.array(z.string()),
    /** Grades the inspector set by hand, with what the rules gave. */
    own: z.array(z.string()),
    used: z.array(
      z.object({ numbers: z.string(), limit: z.string(), gives: z.string(), source: z.string(), why: z.string() }),
    ),
  }),
  glossary: z.array(z.object({ word: z.string(), meaning: z.string() })),
  signature: z.array(z.string()),
});

/** `findings.json`: every graded finding with its number in the report, for other programs. */
export const findingsFileSchema = z.object({
  schema: z.literal('lineword/findings@1'),
  isSigned: z.boolean(),
  address: z.string().nullable(),
  date: z.string().nullable(),
  recording: z.object({ file: z.string(), sha256: z.string() }),
  findings: z.array(findingSchema.extend({ number: z.number().int().positive().nullable() })),
});

export type Report = z.infer<typeof reportSchema>;
export type ReportFinding = z.infer<typeof reportFindingSchema>;
export type ReportStill = z.infer<typeof reportStillSchema>;
export type Drawing = z.infer<typeof drawingSchema>;
export type FindingsFile = z.infer<typeof findingsFileSchema>;
