/** Fields the rules left empty, where the close reader is all but sure what was said. What is filled in is always flagged. */
import {
  type ComparedField,
  hourOfPosition,
  PLACE_ON_ROUND,
  type Position,
} from '../../../shared/vocabulary/attributes.ts';
import { kindTakes } from '../claim.ts';
import { addFirmFlag, fieldFlag } from '../flags.ts';
import type { Item, Reading } from '../reading.ts';
import { closeOpinionOf, valueIn } from './close-opinion.ts';
import { ELSEWHERE, type Likely } from './heads.ts';

/** From this chance on eight of ten and more were right, on talk neither had seen; amounts and hedges are left to the rules. */
const SURE: Readonly<Partial<Record<ComparedField, number>>> = {
  place: 0.95,
  degree: 0.95,
  diameterIn: 0.9,
  angleDeg: 0.9,
  material: 0.95,
  serves: 0.95,
  toMaterial: 0.9,
  to: 0.95,
};

const sideOf = new Map(Object.entries(hourOfPosition).map(([side, hour]) => [String(hour), side as Position]));

/** Fills what it can; answers with the fields it filled. */
export function fillFields(reading: Reading, item: Item): ComparedField[] {
  const opinion = closeOpinionOf(reading, item);
  if (!opinion) return [];
  const filled: ComparedField[] = [];
  for (const [field, least] of Object.entries(SURE) as [ComparedField, number][]) {
    const [best] = opinion.fields.get(field) ?? [];
    if (!best || best.chance < least || best.value === null || best.value === ELSEWHERE) continue;
    if (!kindTakes(item.kind, field) || valueIn(item, field) !== null) continue;
    if (field === 'to' && (item.at === null || Number(best.value) <= item.at)) continue;
    setField(item, field, best);
    filled.push(field);
  }
  return filled;
}

export function fillMissingFields(reading: Reading): void {
  if (reading.close === null) return;
  for (const item of reading.items) {
    if (item.isWithdrawn) continue;
    for (const field of fillFields(reading, item))
      addFirmFlag(item, fieldFlag(field, 'which only a second reading finds here'));
  }
}

function setField({ fields }: Item, field: string, { value }: Likely): void {
  if (field === PLACE_ON_ROUND) {
    const side = sideOf.get(String(value)) ?? (Number.isNaN(Number(value)) ? (value as Position) : null);
    if (side) fields.position = side;
    else fields.clock = Number(value);
    return;
  }
  // The index of the heads was written from the same lists, so a value is one the field can have.
  Object.assign(fields, { [field]: value });
}
