/** How page and report print the fields of an observation: their names, units and closed lists of choices. */
import { type AttributeName, degrees, positions, statuses } from './attributes.ts';
import { materials } from './materials.ts';
import { services } from './services.ts';

export interface Choice {
  readonly value: string;
  readonly title: string;
}

export interface AttributeTitle {
  readonly title: string;
  /** What to check, in a sentence. */
  readonly asked: string;
  /** `distance` is the unit of the job (feet or metres). */
  readonly unit: 'distance' | 'in' | '%' | '°' | "o'clock" | null;
  /** The closed list, for fields that have one. */
  readonly choices: readonly Choice[] | null;
  readonly min?: number;
  readonly max?: number;
  /** The values it mostly has: offered where none was understood. */
  readonly usual?: readonly (string | number)[];
}

const named = (values: readonly string[]): Choice[] =>
  values.map((value) => ({ value, title: value.replaceAll('-', ' ') }));
const materialChoices: Choice[] = materials.map(({ name, title }) => ({ value: name, title }));

export const attributeTitles: Readonly<Record<AttributeName | 'at' | 'status', AttributeTitle>> = {
  at: { title: 'Distance', asked: 'where it is', unit: 'distance', choices: null, min: 0 },
  to: { title: 'To', asked: 'where it ends', unit: 'distance', choices: null, min: 0 },
  status: { title: 'Status', asked: 'how sure it is', unit: null, choices: named(statuses) },
  position: {
    title: 'Position',
    asked: 'which side it is on',
    unit: null,
    choices: named(positions),
    usual: ['left', 'right', 'top', 'bottom'],
  },
  clock: { title: 'Clock', asked: "its o'clock", unit: "o'clock", choices: null, min: 1, max: 12 },
  degree: { title: 'Degree', asked: 'how much there is of it', unit: null, choices: named(degrees), usual: degrees },
  percent: { title: 'Share of the bore', asked: 'its share of the bore', unit: '%', choices: null, min: 0, max: 100 },
  inches: { title: 'Size', asked: 'its size', unit: 'in', choices: null, min: 0 },
  material: { title: 'Material', asked: 'its material', unit: null, choices: materialChoices },
  diameterIn: { title: 'Diameter', asked: 'its diameter', unit: 'in', choices: null, min: 0, usual: [4, 6, 3] },
  fromMaterial: { title: 'From material', asked: 'the material before', unit: null, choices: materialChoices },
  toMaterial: { title: 'To material', asked: 'the material after', unit: null, choices: materialChoices },
  serves: {
    title: 'Serves',
    asked: 'what it serves',
    unit: null,
    choices: services.map(({ name, title }) => ({ value: name, title })),
  },
  angleDeg: { title: 'Angle', asked: 'its angle', unit: '°', choices: null, min: 0, max: 180, usual: [45, 90, 22.5] },
};
