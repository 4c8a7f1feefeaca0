/**
 * One sentence at a time: which things it names, which place and which attributes each of them takes.
 * Nothing is decided here about whether the thing is there; that is `assert-claim.ts`.
 */
import {
  type AttributeName,
  type ComparedField,
  comparedFields,
  PLACE_ON_ROUND,
} from '../../shared/vocabulary/attributes.ts';
import { type KindName, kinds } from '../../shared/vocabulary/kinds/index.ts';
import type { PhraseOf } from '../3-phrases/phrase.ts';
import type { FieldName, Fields } from './reading.ts';

export interface Claim {
  kind: KindName;
  source: 'word' | 'sign' | 'weak';
  rule: string;
  from: number;
  to: number;
  /** Every thing phrase that makes it up. */
  things: { from: number; to: number }[];
  respelled: { heard: string; taken: string }[];
  /** Named by nothing but a word that means something else about as often. */
  isDoubtful: boolean;
  place: PhraseOf<'distance'> | null;
  relative: PhraseOf<'relative'> | null;
  /** Whether the words of a relative place stand nearer than a plain one. */
  isRelativeNearer: boolean;
  fields: Partial<Fields>;
  /** How many of it are claimed in one word ("two forty fives"). */
  count: number;
  placeTokens: number | null;
  /** Set when the same sentence says that it is not one after all ("a bend, no bend at all, it is a coupling"). */
  isRejected: boolean;
}

/** The rule of a claim that stands across from the same thing, in the same place. */
export const ACROSS = 'the same across from it';

/** A claim of the words from one token to another, with nothing said of it yet. */
export const newClaim = (
  kind: KindName,
  rule: string,
  { from, to }: { readonly from: number; readonly to: number },
  placeTokens: number | null = null,
): Claim => ({
  kind,
  source: 'word',
  rule,
  from,
  to,
  things: [{ from, to }],
  respelled: [],
  isDoubtful: false,
  place: null,
  relative: null,
  isRelativeNearer: false,
  fields: {},
  count: 1,
  placeTokens,
  isRejected: false,
});

export const takes = new Map<string, ReadonlySet<AttributeName>>(
  kinds.map((kind) => [kind.name, new Set<AttributeName>(kind.takes)]),
);
/** The attribute a field is kept under; a place on the round is kept as a side. */
export const attributeOf = <Field extends string>(field: Field): Exclude<Field, typeof PLACE_ON_ROUND> | 'position' =>
  field === PLACE_ON_ROUND ? 'position' : (field as Exclude<Field, typeof PLACE_ON_ROUND>);

export const kindTakes = (kind: KindName, field: string): boolean =>
  takes.get(kind)?.has((field === 'clock' ? 'position' : attributeOf(field)) as AttributeName) ?? false;

/** The fields by which findings of a kind are compared. */
export const comparedFieldsOf = (kind: KindName): ComparedField[] =>
  comparedFields.filter((field) => field === 'status' || kindTakes(kind, field));

/** Whether an item has a value for a field; a side and an hour stand for one another. */
export function isGiven({ fields }: { readonly fields: Fields }, field: ComparedField | FieldName): boolean {
  if (field === 'status') return true;
  if (field === PLACE_ON_ROUND || field === 'position' || field === 'clock')
    return fields.position !== null || fields.clock !== null;
  return fields[field] !== null;
}
