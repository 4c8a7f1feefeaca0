/**
 * Words: what the recogniser heard, with times. Written to `words.json` by stage 2, read by stage 3.
 * Times are seconds from the start of the inspection (several files count as one recording).
 * Probabilities run from 0 to 1; `null` means that nothing is known (a typed transcript).
 */
import { z } from 'zod';

export const wordSchema = z.object({
  /** As printed, with its punctuation: "feet,". */
  text: z.string().min(1),
  startSeconds: z.number().nonnegative(),
  endSeconds: z.number().nonnegative(),
  probability: z.number().min(0).max(1).nullable(),
  /** What was printed before numbers were put in one form ("50 to" for "52"). */
  printed: z.string().optional(),
  /** Other hearings that score nearly as well; `behindNats` is how far they fall behind. */
  alternatives: z.array(z.object({ text: z.string(), behindNats: z.number() })).optional(),
  /** Set when the word stands beside a cut between two windows, where hearing is weaker. */
  besideCut: z.boolean().optional(),
});

/** A stretch that holds speech which could not be turned into words. */
export const lostSpeechSchema = z.object({
  startSeconds: z.number().nonnegative(),
  endSeconds: z.number().nonnegative(),
  why: z.string(),
});

export const recordingSourceSchema = z.object({
  file: z.string(),
  sha256: z.string(),
  seconds: z.number().nonnegative(),
});

export const wordsSchema = z.object({
  schema: z.literal('lineword/words@1'),
  recording: recordingSourceSchema.extend({
    /** The files in order, when there was more than one. */
    parts: z.array(recordingSourceSchema).optional(),
  }),
  /** Which recogniser made the words: model name and hash, or "transcript" for a .vtt or .srt. */
  hearing: z.object({ model: z.string(), sha256: z.string().nullable() }),
  words: z.array(wordSchema),
  lost: z.array(lostSpeechSchema).default([]),
});

export type Word = z.infer<typeof wordSchema>;
export type LostSpeech = z.infer<typeof lostSpeechSchema>;
export type Words = z.infer<typeof wordsSchema>;
