/**
 * Sides, sizes and amounts that were said beside a thing and that nothing took: what was read of the thing may lack them, and the
 * inspector should look.
 */
import { shortValue } from '../../shared/wording/short.ts';
import { type Phrase, phrasesOf } from '../3-phrases/phrase.ts';
import { setField } from './assign-attributes.ts';
import { isGiven, kindTakes } from './claim.ts';
import { addSoftFlag } from './flags.ts';
import { speaksOfThing } from './follow-subject.ts';
import { fieldOf } from './phrase-value.ts';
import { emptyFields, type FieldName, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How many sentences after a thing, and before it, a value may stand that could be its own. */
const AFTER = 2;
const BEFORE = 1;

/** Flags the things beside which a value was said that went to nothing. */
export function flagUnclaimed(reading: Reading): void {
  const items = new Map<number, Item[]>();
  for (const item of reading.items)
    if (!item.isWithdrawn) items.set(item.sentence, [...(items.get(item.sentence) ?? []), item]);
  for (const [phrase, sentence] of reading.unclaimed) {
    if (tellsOfElse(sentence) || !speaksOfThing(phrase, sentence, reading.phrases.tokens)) continue;
    const item = itemBeside(items, phrase, sentence);
    const field = fieldOf(phrase);
    if (!item || !field || item.flags.length > 0) continue;
    const trial = emptyFields();
    if (!setField(trial, phrase, item.kind)) continue;
    const value = trial[field];
    addSoftFlag(item, {
      reason: 'value-odd',
      about: field,
      detail: 'a value said near it was not taken for its own',
      ...(value === null ? {} : { offers: [{ value, label: shortValue(field, value) }] }),
    });
  }
}

const tellsOfElse = (sentence: Sentence): boolean =>
  sentence.isQuestion ||
  phrasesOf(sentence.phrases, 'assertion').some(({ cue }) =>
    /^(past|general|elsewhere|planned|denied)$/.test(cue.axis),
  );

/** Whether a thing may have such a value and has none. */
const isOpen = (item: Item, field: FieldName): boolean => kindTakes(item.kind, field) && !isGiven(item, field);

/** The thing a value may be of: one of its own sentence, the last one before it, or the first one after. */
function itemBeside(items: ReadonlyMap<number, Item[]>, phrase: Phrase, { index }: Sentence): Item | undefined {
  const field = fieldOf(phrase);
  if (field === null) return undefined;
  const lacks = (item: Item): boolean => isOpen(item, field);
  const own = items.get(index);
  if (own) return own.findLast(lacks);
  for (let back = 1; back <= AFTER; back += 1) {
    const last = items.get(index - back)?.at(-1);
    if (last && lacks(last)) return last;
    if (last) break;
  }
  return items.get(index + BEFORE)?.find(lacks);
}
