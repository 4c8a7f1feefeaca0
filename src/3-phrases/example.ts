/** What an `examples.ts` beside a family of phrases holds: values with ways to say them, and what must not be taken for one. */
import type { Example, FlaggedExample } from '../../shared/vocabulary/kind.ts';

export interface Ways<Value> {
  readonly value: Value;
  readonly ways: readonly string[];
}

export interface FamilyExamples<Value> {
  /** Each way must give this value and no other of the family. */
  readonly says: readonly Ways<Value>[];
  /** Must give no phrase of the family. */
  readonly never: readonly string[];
  /** Read wrongly as yet; `null` stands for a sentence that belongs to `never`. */
  readonly notYet?: readonly Ways<Value | null>[];
}

/** Families that change what a whole sentence claims are shown by what comes of whole sentences. */
export interface SentenceExamples {
  readonly given: readonly Example[];
  readonly flagged: readonly FlaggedExample[];
  /** Must give no observation at all. */
  readonly notGiven: readonly string[];
  /** Read wrongly as yet. An empty `gives` stands for a sentence that belongs to `notGiven`. */
  readonly notYet?: readonly (Example | FlaggedExample)[];
}
