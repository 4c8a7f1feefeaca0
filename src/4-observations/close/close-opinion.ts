/** What the close reader holds of an item: how likely its kind is where it is spoken of, what else is, and each of its fields. */
import { type ComparedField, hourOfPosition, PLACE_ON_ROUND } from '../../../shared/vocabulary/attributes.ts';
import type { Item, Reading } from '../reading.ts';
import { ELSEWHERE, type FieldChances, type Likely } from './heads.ts';
import type { CloseReading } from './read-closely.ts';

export interface CloseOpinion {
  /** The chance of the item's own kind, the best of all its mentions. */
  readonly own: number;
  /** Of its other kinds the likeliest. */
  readonly other: number;
  readonly fields: FieldChances;
}

const known = new WeakMap<Item, CloseOpinion>();

/** Null when the talk was not read closely. Worked out once for each item. */
export function closeOpinionOf({ close, sentences }: Reading, item: Item): CloseOpinion | null {
  if (close === null) return null;
  const opinion = known.get(item) ?? weigh(close, sentences, item);
  known.set(item, opinion);
  return opinion;
}

function weigh(close: CloseReading, sentences: Reading['sentences'], item: Item): CloseOpinion {
  const sentence = sentences[item.sentence] ?? item;
  const told = [sentence, ...item.again];
  const chanceOf = (kind: string): number => Math.max(...told.map(({ from, to }) => close.chance(kind, from, to)));
  return {
    own: chanceOf(item.kind),
    other: Math.max(...close.kinds.filter((kind) => kind !== item.kind).map(chanceOf)),
    fields: close.fields(item.kind, sentence.from, sentence.to),
  };
}

export type JudgedField = ComparedField | 'at';

/** A field of an item in the close reader's terms: hours for sides, and no status for what is plainly there. */
export function valueIn(item: Item, field: JudgedField): string | number | null {
  const { position, clock } = item.fields;
  if (field === 'at') return item.at;
  if (field === 'status') return item.status === 'present' ? null : item.status;
  if (field !== PLACE_ON_ROUND) return item.fields[field];
  if (clock !== null) return String(clock % 12 || 12);
  return position === null ? null : String(hourOfPosition[position] ?? position);
}

const NEAR = 0.26;
const isSame = (a: Likely['value'], b: Likely['value']): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) < NEAR : a === b;

/** How likely the item's field is what the rules made of it; what no number names ("a quarter", "five feet on") it knows to be told elsewhere. */
export function chanceOfField(opinion: CloseOpinion, item: Item, field: JudgedField): number {
  const value = valueIn(item, field);
  const all = opinion.fields.get(field) ?? [];
  const isComputed =
    (field === 'at' && item.basis !== 'spoken') ||
    (typeof value === 'number' && !all.some((likely) => isSame(likely.value, value)));
  return all
    .filter((likely) => isSame(likely.value, value) || (isComputed && likely.value === ELSEWHERE))
    .reduce((sum, { chance }) => sum + chance, 0);
}
