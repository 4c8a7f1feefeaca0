/** What the close reader holds of an item: how likely its kind is where it is spoken of, what else is, and each of its fields. */
import { type ComparedField, hourOfPosition, PLACE_ON_ROUND } from '../../../shared/vocabulary/attributes.ts';
import type { Item, Reading } from '../reading.ts';
import { COUNTED, ELSEWHERE, type FieldChances, type Likely } from './heads.ts';
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

export interface LikelyPlace {
  readonly feet: number;
  readonly chance: number;
  /** How much of the chance rests on counting from other numbers. */
  readonly countedChance: number;
}

/** Where a thing with these fields may be, the likeliest first: the numbers said for it, and what can be counted from two of them. */
export function likelyPlaces(fields: FieldChances): LikelyPlace[] {
  const said = fields.get('at') ?? [];
  const elsewhere = said.find(({ value }) => value === ELSEWHERE)?.chance ?? 0;
  const counted = (fields.get(COUNTED) ?? []).map(({ value, chance }) => ({ value, chance: chance * elsewhere }));
  const feet = [...said, ...counted].map(({ value }) => value).filter((value) => typeof value === 'number');
  const apart = feet.filter((each, at) => each >= 0 && !feet.slice(0, at).some((before) => isSame(before, each)));
  const chanceOf = (likely: readonly Likely[], place: number): number =>
    likely.filter(({ value }) => isSame(value, place)).reduce((sum, { chance }) => sum + chance, 0);
  return apart
    .map((place) => ({
      feet: place,
      chance: chanceOf(said, place) + chanceOf(counted, place),
      countedChance: chanceOf(counted, place),
    }))
    .sort((a, b) => b.chance - a.chance);
}

/** The chances that the item lies where the rules have it, and at the likeliest other place, counted from numbers or said. */
export function chancesOfPlace({ fields }: CloseOpinion, { at }: Item): { here: number; other: number } {
  const places = likelyPlaces(fields);
  const isHere = ({ feet }: LikelyPlace): boolean => at !== null && isSame(feet, at);
  return {
    here: places.find(isHere)?.chance ?? 0,
    other: places.find((place) => !isHere(place))?.chance ?? 0,
  };
}
