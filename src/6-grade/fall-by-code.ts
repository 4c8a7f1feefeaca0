/** The fall a drain of this size must have over a length. */
import type { Computation } from '../../shared/schemas/grade.ts';
import type { SlopeTable } from '../../shared/vocabulary/grading/slopes.ts';
import { tidy } from './distances.ts';

/** The least slope for a nominal size, in inches a foot. */
export function leastSlope(nominalIn: number, table: SlopeTable): number {
  const row = table.rows.find(({ upToIn }) => upToIn === null || nominalIn <= upToIn);
  return (row ?? table.rows.at(-1)!).inchesPerFoot;
}

export function fallByCode(nominalIn: number, lengthFeet: number, table: SlopeTable): Computation {
  const slope = leastSlope(nominalIn, table);
  return {
    name: 'least fall by code',
    inputs: [
      { name: 'nominal size', value: nominalIn, unit: 'in', source: 'the talk' },
      { name: 'length', value: tidy(lengthFeet), unit: 'ft', source: 'as inspected' },
      { name: 'least slope', value: tidy(slope), unit: 'in/ft', source: table.source },
    ],
    formula: 'slope × length',
    results: [
      { name: 'fall', value: tidy(slope * lengthFeet), unit: 'in' },
      { name: 'slope', value: tidy((slope / 12) * 100), unit: '%' },
    ],
    note: 'A camera does not measure slope. This is what the code asks for, not what was found.',
  };
}
