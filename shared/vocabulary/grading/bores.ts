/**
 * True inside diameters by material and nominal size, in inches. An inch of water is a different share of a 4-inch
 * cast-iron pipe (3.94 in) than of a 4-inch plastic one (4.026 in), so a share is worked out from these and not from
 * the nominal size. Where no dimension was found the nominal size is used and the report says so.
 */
import type { MaterialName } from '../materials.ts';

export interface Bore {
  readonly material: MaterialName;
  readonly nominalIn: number;
  readonly insideIn: number;
  readonly source: string;
}

const castIron = "ASTM A74 service-weight barrel, as printed in a pipe maker's care guide (read second hand)";
const scheduleForty = 'ASTM D2665 Schedule 40, outside diameter less two walls (dimension sheet read second hand)';
const absScheduleForty = 'ASTM D2661 Schedule 40, taken as the bore of D2665 (from memory)';

export const bores: readonly Bore[] = [
  { material: 'cast-iron', nominalIn: 3, insideIn: 2.96, source: castIron },
  { material: 'cast-iron', nominalIn: 4, insideIn: 3.94, source: castIron },
  { material: 'cast-iron', nominalIn: 6, insideIn: 5.94, source: castIron },
  { material: 'pvc', nominalIn: 3, insideIn: 3.068, source: scheduleForty },
  { material: 'pvc', nominalIn: 4, insideIn: 4.026, source: scheduleForty },
  { material: 'pvc', nominalIn: 6, insideIn: 6.065, source: scheduleForty },
  { material: 'abs', nominalIn: 3, insideIn: 3.068, source: absScheduleForty },
  { material: 'abs', nominalIn: 4, insideIn: 4.026, source: absScheduleForty },
  { material: 'abs', nominalIn: 6, insideIn: 6.065, source: absScheduleForty },
];

/** Said beside a clay, concrete or fiber pipe, whose nominal size is by custom the inside diameter. */
export const nominalBoreSource = 'nominal size; no table of inside diameters was found for this pipe';
