/**
 * What a reader taught from mistakes sees of an item: its kind, which fields it was given, and its sentence, in which every
 * phrase that was understood is one sign, so that what was not understood stands out.
 */
import { comparedFields } from '../../../shared/vocabulary/attributes.ts';
import type { Phrase } from '../../3-phrases/phrase.ts';
import { comparedFieldsOf, isGiven } from '../claim.ts';
import type { Item, Reading } from '../reading.ts';
import type { Sentence } from '../sentence.ts';
import { plainWords } from './features.ts';

/** A field as it stands in an item, and what may be wrong with it: that it lacks, or that it has another value. */
export type FieldCase = `${string} ${'missing' | 'given'}`;

/** For each field that the item's kind takes, how it stands. */
export function fieldCases(item: Item): FieldCase[] {
  return comparedFieldsOf(item.kind).map(
    (field): FieldCase => `${field} ${isGiven(item, field) ? 'given' : 'missing'}`,
  );
}

/** Of things named together more are not told apart. */
const MOST_TOGETHER = 3;

export function itemWords(reading: Reading, item: Item): string[] {
  const sentence = reading.sentences[item.sentence];
  const together = reading.items.filter((other) => !other.isWithdrawn && other.sentence === item.sentence).length;
  return [
    `=${item.kind}`,
    ...comparedFields.filter((field) => field !== 'status' && isGiven(item, field)).map((field) => `+${field}`),
    `+${item.status}`,
    `=${Math.min(MOST_TOGETHER, together)}`,
    ...(sentence ? sentenceWords(reading, sentence) : []),
  ];
}

function sentenceWords({ phrases }: Reading, sentence: Sentence): string[] {
  const { tokens, numbers } = phrases;
  const words = plainWords({
    tokens: tokens.slice(sentence.from, sentence.to),
    numbers: numbers
      .filter(({ from, to }) => from >= sentence.from && to <= sentence.to)
      .map((number) => ({ ...number, from: number.from - sentence.from, to: number.to - sentence.from })),
  });
  const found: string[] = [];
  for (const [index, word] of words.entries()) {
    const at = sentence.from + index;
    const phrase = sentence.phrases.find(({ from, to }) => from <= at && at < to);
    if (phrase?.from === at || (phrase && index === 0)) found.push(signOf(phrase));
    else if (!phrase && word !== null) found.push(word);
  }
  return found;
}

function signOf(phrase: Phrase): string {
  if (phrase.family === 'assertion') return `<${phrase.family} ${phrase.cue.axis}>`;
  if (phrase.family === 'correction') return `<${phrase.family} ${phrase.cue.act}>`;
  return `<${phrase.family}>`;
}
