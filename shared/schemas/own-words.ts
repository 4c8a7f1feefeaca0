/**
 * The inspector's own vocabulary: `own-words.json` in the user's configuration folder. A plain file that a person
 * can read and edit; the next draft uses it.
 */
import { z } from 'zod';
import { kindNames } from '../vocabulary/kinds/index.ts';

export const ownWordSchema = z.object({
  /** What the recogniser prints or the inspector says, in lower case: "belly ache". */
  heard: z.string().min(1),
  /** What it stands for, as the vocabulary spells it: "belly". */
  said: z.string().min(1),
  /** The kind it names, when it names one. */
  kind: z.enum(kindNames).nullable(),
  added: z.string(),
});

export const ownWordsSchema = z.object({
  schema: z.literal('lineword/own-words@1'),
  words: z.array(ownWordSchema),
  /** Offers the inspector turned down; they are not made again. */
  declined: z.array(z.object({ heard: z.string(), said: z.string() })).default([]),
});

export type OwnWord = z.infer<typeof ownWordSchema>;
export type OwnWords = z.infer<typeof ownWordsSchema>;
