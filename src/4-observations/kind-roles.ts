/** What some kinds mean for the run as a whole; each kind says so in its own file, here they are only gathered. */
import type { EndReason } from '../../shared/vocabulary/attributes.ts';
import type { Kind } from '../../shared/vocabulary/kind.ts';
import { type KindName, kinds } from '../../shared/vocabulary/kinds/index.ts';

const all: readonly Kind[] = kinds;

/** Kinds that also name the opening a camera goes in by, or what it heads for. */
export const openingKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.role === 'opening').map((kind) => kind.name),
);

/** Kinds that need no place. */
export const placelessKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.isPlaceless).map((kind) => kind.name),
);

/** Kinds that lie where their run ends. */
export const lastPlaceKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.liesAtEnd).map((kind) => kind.name),
);

/** What is found with some kinds wherever a run ends with them. */
export const impliedKinds: ReadonlyMap<string, KindName> = new Map(
  all.flatMap((kind) => (kind.implies ? [[kind.name, kind.implies as KindName] as const] : [])),
);

/** Kinds a run ends with, and the reason they give. */
export const endKinds: Readonly<Partial<Record<string, EndReason>>> = Object.fromEntries(
  all.flatMap((kind) => (kind.ends ? [[kind.name, kind.ends]] : [])),
);

/** Kinds a run may end at, where the talk says so. */
export const mayEndKinds: Readonly<Partial<Record<string, EndReason>>> = Object.fromEntries(
  all.flatMap((kind) => (kind.mayEnd ? [[kind.name, kind.mayEnd]] : [])),
);

/** Kinds a run ends at where nothing is seen past them. */
export const lastKinds: Readonly<Partial<Record<string, EndReason>>> = Object.fromEntries(
  all.flatMap((kind) => (kind.endsWhenLast ? [[kind.name, kind.endsWhenLast] as const] : [])),
);

/** Kinds whose descriptions give way to another thing named beside them. */
export const yieldingKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.signsYield).map((kind) => kind.name),
);

/** Kinds that only say how full another thing leaves the pipe, where a share stands with them. */
export const shareKinds: ReadonlySet<string> = new Set(all.filter((kind) => kind.tellsShare).map((kind) => kind.name));

/** The milder kinds each kind begins as. */
export const milderKinds: ReadonlyMap<string, readonly string[]> = new Map(
  all.flatMap((kind) => (kind.outgrows ? [[kind.name, kind.outgrows] as const] : [])),
);

/** Kinds of which only left and right are said. */
export const sidewaysKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.isSideways).map((kind) => kind.name),
);

/** What everyday words of a kind need to be believed. */
export const weakNeeds: ReadonlyMap<string, NonNullable<Kind['weakNeeds']>> = new Map(
  all.flatMap((kind) => (kind.weakNeeds ? [[kind.name, kind.weakNeeds] as const] : [])),
);

/** Kinds that are called something else where the camera goes with the flow. */
export const downstreamNames: ReadonlyMap<string, KindName> = new Map(
  all.flatMap((kind) => (kind.whenDownstream ? [[kind.name, kind.whenDownstream as KindName] as const] : [])),
);

/** Kinds whose descriptions are another kind's when that one is named with them ("can't push further, end of the line"). */
export const yieldsTo: ReadonlyMap<string, KindName> = new Map(
  all.flatMap((kind) => (kind.yieldsTo ? [[kind.name, kind.yieldsTo as KindName] as const] : [])),
);

/** Pipe and fittings, which are seldom said not to be there: "it's no repair" is about the thing at hand. */
export const fittingKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.group === 'fitting').map((kind) => kind.name),
);

/** Kinds that tell of the inspection and not of the pipe. */
export const limitKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.group === 'limit').map((kind) => kind.name),
);

/** Kinds that are also what is done about a pipe. */
export const remedyKinds: ReadonlySet<string> = new Set(all.filter((kind) => kind.isRemedy).map((kind) => kind.name));

/** What lies somewhere on the way and not where the count begins. */
export const neverAtStart: ReadonlySet<string> = new Set(['material-change', ...limitKinds]);

/** What is found at the far end of a stretch of some kinds. */
export const farEnds: ReadonlyMap<string, KindName> = new Map(
  all.flatMap((kind) => (kind.endsAs ? [[kind.name, kind.endsAs as KindName] as const] : [])),
);

/** What is wrong with the pipe. */
export const defectKinds: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.group === 'defect').map((kind) => kind.name),
);

/** Kinds that are at one place, and seldom told the end of. */
export const spotKinds: ReadonlySet<string> = new Set(all.filter((kind) => kind.isSpot).map((kind) => kind.name));

/** Kinds that change the size of the pipe: sizes said with them say what they join. */
export const sizeKinds: ReadonlySet<string> = new Set(all.filter((kind) => kind.changesSize).map((kind) => kind.name));

/** Kinds whose descriptions need an opening named with them. */
export const needsOpening: ReadonlySet<string> = new Set(
  all.filter((kind) => kind.signsNeedOpening).map((kind) => kind.name),
);

/** Descriptions that mean their kind only where the camera goes up the line. */
export const upstreamSigns: ReadonlySet<string> = new Set(all.flatMap((kind) => kind.signsUpstream ?? []));
