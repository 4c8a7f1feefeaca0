/** Which kinds play which part in grading, so that the stages need not know the names. */
import type { KindName } from '../kinds/index.ts';

export const roles = {
  /** Their depth is water and their share is of the diameter. */
  holdsWater: ['belly'],
  /** What a joint can catch. */
  solids: ['debris', 'roots', 'grease', 'blockage', 'foreign-object'],
  roots: ['roots'],
  emptySoil: ['void'],
  /** The camera could not go on. */
  stops: ['stopped'],
  notReached: ['not-reached'],
  blind: ['view-lost'],
  /** Their share is of the diameter lost, and can be measured. */
  outOfRound: ['deformation'],
  namesPipe: ['pipe'],
  changesPipe: ['material-change'],
  changesSize: ['reducer'],
  startsLiner: ['liner-start'],
  endsLiner: ['liner-end'],
  /** Where the lateral meets the public main. */
  meetsMain: ['main-connection'],
} as const satisfies Record<string, readonly KindName[]>;

export type Role = keyof typeof roles;

export function plays(role: Role, kind: string): boolean {
  return (roles[role] as readonly string[]).includes(kind);
}
