/** Fields the rules left empty, where the close reader is all but sure what was said. What is filled in is always flagged. */
import { attributeTitles } from '../../../shared/vocabulary/attribute-titles.ts';
import { hourOfPosition, PLACE_ON_ROUND, type Position } from '../../../shared/vocabulary/attributes.ts';
import { kindTakes } from '../claim.ts';
import type { Item, Reading } from '../reading.ts';
import { closeOpinionOf, type JudgedField, valueIn } from './close-opinion.ts';
import { ELSEWHERE, type Likely } from './heads.ts';

/** From this chance on eight of ten and more were right, on talk neither had seen; amounts and hedges are left to the rules. */
const SURE: Readonly<Partial<Record<string, number>>> = {
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
export function fillFields(reading: Reading, item: Item): string[] {
  const opinion = closeOpinionOf(reading, item);
  if (!opinion) return [];
  const filled: string[] = [];
  for (const [field, least] of Object.entries(SURE)) {
    const about = field === PLACE_ON_ROUND ? 'position' : field;
    const [best] = opinion.fields.get(field) ?? [];
    if (!best || best.chance < least! || best.value === null || best.value === ELSEWHERE) continue;
    if (!kindTakes(item.kind, about) || valueIn(item, field as JudgedField) !== null) continue;
    if (field === 'to' && (item.at === null || Number(best.value) <= item.at)) continue;
    setField(item, field, best);
    filled.push(about);
  }
  return filled;
}

export function fillMissingFields(reading: Reading): void {
  if (reading.close === null) return;
  for (const item of reading.items) {
    if (item.isWithdrawn) continue;
    for (const about of fillFields(reading, item))
      if (!item.flags.some(({ reason }) => reason === 'value-odd'))
        item.flags.push({
          reason: 'value-odd',
          about,
          detail: `check ${attributeTitles[about as keyof typeof attributeTitles].asked}, which only a second reading finds here`,
        });
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
