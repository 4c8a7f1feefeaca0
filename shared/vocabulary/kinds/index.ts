/** Every kind, in the order lists and menus show them. A test fails when a file of this folder is missing here. */
import { backPitch } from './back-pitch.ts';
import { backwaterValve } from './backwater-valve.ts';
import { belly } from './belly.ts';
import { bend } from './bend.ts';
import { blockage } from './blockage.ts';
import { branch } from './branch.ts';
import { breakKind } from './break.ts';
import { cleanout } from './cleanout.ts';
import { collapse } from './collapse.ts';
import { corrosion } from './corrosion.ts';
import { coupling } from './coupling.ts';
import { crack } from './crack.ts';
import { debris } from './debris.ts';
import { deformation } from './deformation.ts';
import { drop } from './drop.ts';
import { endOfLine } from './end-of-line.ts';
import { foreignObject } from './foreign-object.ts';
import { fracture } from './fracture.ts';
import { grease } from './grease.ts';
import { hole } from './hole.ts';
import { infiltration } from './infiltration.ts';
import { intrusion } from './intrusion.ts';
import { linerDefect } from './liner-defect.ts';
import { linerEnd } from './liner-end.ts';
import { linerStart } from './liner-start.ts';
import { mainConnection } from './main-connection.ts';
import { manhole } from './manhole.ts';
import { materialChange } from './material-change.ts';
import { noAccess } from './no-access.ts';
import { notReached } from './not-reached.ts';
import { offsetJoint } from './offset-joint.ts';
import { openJoint } from './open-joint.ts';
import { patch } from './patch.ts';
import { pipe } from './pipe.ts';
import { reducer } from './reducer.ts';
import { roots } from './roots.ts';
import { scale } from './scale.ts';
import { stopped } from './stopped.ts';
import { tank } from './tank.ts';
import { tee } from './tee.ts';
import { trap } from './trap.ts';
import { vent } from './vent.ts';
import { viewLost } from './view-lost.ts';
import { voidKind } from './void.ts';
import { wye } from './wye.ts';

export const kinds = [
  pipe,
  materialChange,
  cleanout,
  wye,
  tee,
  branch,
  bend,
  vent,
  drop,
  reducer,
  coupling,
  trap,
  backwaterValve,
  linerStart,
  linerEnd,
  patch,
  mainConnection,
  tank,
  manhole,
  endOfLine,
  roots,
  crack,
  fracture,
  breakKind,
  hole,
  collapse,
  deformation,
  offsetJoint,
  openJoint,
  belly,
  backPitch,
  scale,
  corrosion,
  grease,
  debris,
  blockage,
  infiltration,
  foreignObject,
  intrusion,
  voidKind,
  linerDefect,
  viewLost,
  stopped,
  noAccess,
  notReached,
] as const;

export type KindName = (typeof kinds)[number]['name'];
export const kindNames = kinds.map((kind) => kind.name) as [KindName, ...KindName[]];
