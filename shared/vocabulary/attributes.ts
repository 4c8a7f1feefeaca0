/** The closed lists of attribute values. Schema, reader, page and report take them from here. */

export const positions = ['top', 'bottom', 'left', 'right', 'side', 'all-around'] as const;
export const degrees = ['light', 'moderate', 'heavy'] as const;
export const directions = ['upstream', 'downstream'] as const;
export const statuses = ['present', 'suspected'] as const;
export const distanceBases = ['spoken', 'nearby', 'relative', 'track', 'counter'] as const;
export const endReasons = ['main', 'tank', 'manhole', 'end-of-line', 'stopped', 'vent', 'cleanout', 'other'] as const;

/** The fields an observation may carry beside run, kind, status and distance. */
export const attributeNames = [
  'to',
  'position',
  'clock',
  'degree',
  'percent',
  'inches',
  'material',
  'diameterIn',
  'fromMaterial',
  'toMaterial',
  'serves',
  'angleDeg',
] as const;

/** The hour of each side of the round that has one. */
export const hourOfPosition: Readonly<Partial<Record<string, number>>> = { top: 12, right: 3, bottom: 6, left: 9 };

/** Position and clock taken as one: where on the round. */
export const PLACE_ON_ROUND = 'place';
type RoundName = 'position' | 'clock';
const isNoRound = (
  name: (typeof attributeNames)[number],
): name is Exclude<(typeof attributeNames)[number], RoundName> => name !== 'position' && name !== 'clock';
/** Status and the fields, as two findings are compared by them. */
export const comparedFields = ['status', PLACE_ON_ROUND, ...attributeNames.filter(isNoRound)] as const;

export type Position = (typeof positions)[number];
export type Degree = (typeof degrees)[number];
export type Direction = (typeof directions)[number];
export type Status = (typeof statuses)[number];
export type DistanceBasis = (typeof distanceBases)[number];
export type EndReason = (typeof endReasons)[number];
export type AttributeName = (typeof attributeNames)[number];
export type ComparedField = (typeof comparedFields)[number];
