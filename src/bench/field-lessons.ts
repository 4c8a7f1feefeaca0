/** From a talk with its findings known: for each item at the right place, in which words which of its fields went wrong. */
import { comparedFields } from '../../shared/vocabulary/attributes.ts';
import { readWords, writeDraft } from '../4-observations/draft-words.ts';
import { type FieldCase, fieldCases, itemWords } from '../4-observations/taught/item-words.ts';
import { isFieldRight, pairRight } from '../score/compare.ts';
import { type LabelledTalk, readTalks } from './lessons.ts';

/** The talks FIELD_DOUBT was set by; the others are for the close reader. */
export const readFieldTalks = (): LabelledTalk[] => readTalks((name) => name === 'narrations.txt');

/** What is taught of one item, as `teach` wants it. */
export interface FieldLesson {
  readonly words: readonly string[];
  readonly about: readonly FieldCase[];
  readonly finds: readonly FieldCase[];
}

export function lessonsOf({ words, findings }: LabelledTalk): FieldLesson[] {
  const reading = readWords(words);
  const items = reading.items.filter((item) => !item.isWithdrawn);
  const { observations } = writeDraft(reading, words);
  return pairRight(findings, observations).pairs.map(([i, j]) => {
    const wrong = comparedFields.filter((field) => !isFieldRight(field, findings[i]!, observations[j]!));
    const about = fieldCases(items[j]!);
    return {
      words: itemWords(reading, items[j]!),
      about,
      finds: about.filter((field) => (wrong as string[]).includes(field.split(' ')[0]!)),
    };
  });
}
