/**
 * Where the marks of one run go in a drawing to scale. In: a run and its observations (as reviewed). Out: numbers
 * only, along one axis, for the page to draw as elements and the report as a static picture.
 *
 * The axis runs from the access (0) to `length`; the caller decides whether that is down or across. A mark sits at
 * `along`; its label sits at `labelAlong`, moved just enough that labels `labelGap` apart do not overlap.
 * Observations without a distance are not drawn on the line: they come back in `withoutDistance`.
 * Rejected observations are left out. Shapes differ by group, so that the drawing reads without colour.
 */
import type { Observation, Run } from '../schemas/draft.ts';
import { kinds } from '../vocabulary/kinds/index.ts';
import { materials } from '../vocabulary/materials.ts';

export interface LineObservation extends Observation {
  readonly reviewState?: 'confirmed' | 'rejected' | 'open' | 'unflagged';
}

export interface LineOptions {
  /** The length of the axis, in the caller's units (pixels, points). */
  readonly length: number;
  /** The least distance between two labels, same units. */
  readonly labelGap: number;
  /** The least distance between two ticks of the scale, same units. */
  readonly tickGap: number;
}

/** `square`: fitting. `diamond`: defect. `bar`: limit of the inspection. */
export type MarkShape = 'square' | 'diamond' | 'bar';

export interface LineMark {
  readonly id: string;
  readonly group: 'fitting' | 'defect' | 'limit';
  readonly shape: MarkShape;
  readonly title: string;
  readonly along: number;
  /** Where a stretch ends; null for a point. */
  readonly alongTo: number | null;
  readonly labelAlong: number;
  readonly at: number;
  readonly to: number | null;
  readonly isSuspected: boolean;
  readonly isOpen: boolean;
  readonly isConfirmed: boolean;
  /** 0 for the first stretch; overlapping stretches take higher lanes, so that each is seen. */
  readonly lane: number;
}

export interface MaterialStretch {
  /** Null where the talk does not say. */
  readonly material: string | null;
  readonly title: string;
  readonly diameterIn: number | null;
  readonly from: number;
  readonly to: number;
  readonly along: number;
  readonly alongTo: number;
  /** 0 … 5: which hatching to use; neighbours differ. */
  readonly pattern: number;
}

export interface LineLayout {
  /** Distance at the end of the axis. */
  readonly reach: number;
  readonly endAlong: number | null;
  readonly ticks: readonly { readonly at: number; readonly along: number }[];
  readonly materials: readonly MaterialStretch[];
  readonly marks: readonly LineMark[];
  readonly withoutDistance: readonly {
    readonly id: string;
    readonly title: string;
    readonly isOpen: boolean;
    readonly isConfirmed: boolean;
  }[];
  /** The camera over time: seconds of the recording against place on the axis. */
  readonly track: readonly { readonly seconds: number; readonly along: number; readonly at: number }[];
}

const kindOf = new Map(kinds.map((kind) => [kind.name as string, kind]));
const materialTitles = new Map(materials.map((material) => [material.name as string, material.title]));
const shapes = { fitting: 'square', defect: 'diamond', limit: 'bar' } as const;
const tickSteps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000];

/** Lays one run out. `observations` may hold those of other runs; they are passed over. */
export function layoutLine(run: Run, observations: readonly LineObservation[], options: LineOptions): LineLayout {
  const own = observations.filter((o) => o.run === run.n && o.reviewState !== 'rejected');
  const track = cameraTrack(run, own);
  const reach = Math.max(
    1,
    run.end?.at ?? 0,
    ...own.flatMap((o) => [o.at ?? 0, o.to ?? 0]),
    ...track.map((point) => point.at),
  );
  const scale = options.length / reach;
  const place = (distance: number) => Math.min(Math.max(distance, 0), reach) * scale;

  const placed = own
    .filter((o) => o.at !== null)
    .sort((a, b) => a.at! - b.at! || (a.to ?? a.at!) - (b.to ?? b.at!) || a.heard.start - b.heard.start);
  const labels = spreadLabels(
    placed.map((o) => place(o.at!)),
    options,
  );
  const lanes = stretchLanes(placed);
  const marks = placed.map((o, index): LineMark => {
    const kind = kindOf.get(o.kind);
    const group = kind?.group ?? 'defect';
    return {
      id: o.id,
      group,
      shape: shapes[group],
      title: kind?.title ?? o.kind,
      along: place(o.at!),
      alongTo: o.to === null ? null : place(o.to),
      labelAlong: labels[index]!,
      at: o.at!,
      to: o.to,
      isSuspected: o.status === 'suspected',
      isOpen: o.reviewState === 'open',
      isConfirmed: o.reviewState === 'confirmed',
      lane: lanes[index]!,
    };
  });

  return {
    reach,
    endAlong: run.end?.at == null ? null : place(run.end.at),
    ticks: ticksOf(reach, scale, options.tickGap),
    materials: materialStretches(placed, run.end?.at ?? reach, place),
    marks,
    withoutDistance: own
      .filter((o) => o.at === null)
      .map((o) => ({
        id: o.id,
        title: kindOf.get(o.kind)?.title ?? o.kind,
        isOpen: o.reviewState === 'open',
        isConfirmed: o.reviewState === 'confirmed',
      })),
    track: track.map((point) => ({ ...point, along: place(point.at) })),
  };
}

/** The run's own track where the draft has one, else the observations in the order they were spoken of. */
function cameraTrack(run: Run, own: readonly LineObservation[]): { seconds: number; at: number }[] {
  const points = run.track?.length
    ? run.track.map((point) => ({ seconds: point.seconds, at: point.feet }))
    : own.filter((o) => o.at !== null).map((o) => ({ seconds: o.heard.start, at: o.at! }));
  return points.sort((a, b) => a.seconds - b.seconds);
}

function ticksOf(reach: number, scale: number, tickGap: number): { at: number; along: number }[] {
  const step = tickSteps.find((candidate) => candidate * scale >= tickGap) ?? tickSteps.at(-1)!;
  const ticks: { at: number; along: number }[] = [];
  for (let at = 0; at <= reach; at += step) ticks.push({ at, along: at * scale });
  return ticks;
}

/**
 * Moves labels apart. Labels that collide become a block centred on the middle of their wishes, blocks that collide
 * are joined, and every block is kept on the axis; when there are too many for the axis they share it evenly.
 */
function spreadLabels(wishes: readonly number[], { length, labelGap }: LineOptions): number[] {
  const gap = wishes.length > 1 ? Math.min(labelGap, length / (wishes.length - 1)) : labelGap;
  const blocks: { count: number; sum: number; start: number }[] = [];
  wishes.forEach((wish) => {
    let block = { count: 1, sum: wish, start: wish };
    for (let last = blocks.at(-1); last; last = blocks.at(-1)) {
      if (last.start + last.count * gap <= block.start) break;
      blocks.pop();
      // A block that starts at s puts label i at s + i * gap; the least-squares start is the mean of wish - i * gap.
      const count = last.count + block.count;
      const sum = last.sum + block.sum - block.count * last.count * gap;
      block = { count, sum, start: Math.min(Math.max(sum / count, 0), length - (count - 1) * gap) };
    }
    blocks.push(block);
  });
  return blocks.flatMap((block) => Array.from({ length: block.count }, (_, i) => block.start + i * gap));
}

function stretchLanes(placed: readonly LineObservation[]): number[] {
  const ends: number[] = [];
  return placed.map((o) => {
    if (o.to === null) return 0;
    const from = Math.min(o.at!, o.to);
    const free = ends.findIndex((end) => end <= from);
    const lane = free === -1 ? ends.length : free;
    ends[lane] = Math.max(o.at!, o.to);
    return lane;
  });
}

/** What the pipe is made of along the run, from the observations that name it. */
function materialStretches(
  placed: readonly LineObservation[],
  end: number,
  place: (distance: number) => number,
): MaterialStretch[] {
  const changes: { at: number; material: string | null; diameterIn: number | null }[] = [];
  for (const o of placed) {
    const last = changes.at(-1);
    if (o.kind === 'material-change') {
      if (o.fromMaterial && (!last || last.material === null)) {
        if (last) last.material = o.fromMaterial;
        else changes.push({ at: 0, material: o.fromMaterial, diameterIn: null });
      }
      changes.push({ at: o.at!, material: o.toMaterial, diameterIn: o.diameterIn });
    } else if (o.kind === 'liner-start') {
      changes.push({ at: o.at!, material: 'liner', diameterIn: last?.diameterIn ?? null });
    } else if (o.kind === 'liner-end' && last?.material === 'liner') {
      changes.push({ at: o.at!, material: null, diameterIn: last.diameterIn });
    } else if (o.kind === 'pipe' && (o.material || o.diameterIn !== null)) {
      changes.push({
        at: o.at!,
        material: o.material ?? last?.material ?? null,
        diameterIn: o.diameterIn ?? last?.diameterIn ?? null,
      });
    }
  }
  if (changes.length === 0 || changes[0]!.at > 0) changes.unshift({ at: 0, material: null, diameterIn: null });

  const stretches: MaterialStretch[] = [];
  changes.forEach((change, index) => {
    const to = changes[index + 1]?.at ?? Math.max(end, change.at);
    if (to <= change.at) return;
    const before = stretches.at(-1);
    if (before && before.material === change.material && before.diameterIn === change.diameterIn) {
      stretches[stretches.length - 1] = { ...before, to, alongTo: place(to) };
      return;
    }
    stretches.push({
      material: change.material,
      title: change.material ? (materialTitles.get(change.material) ?? change.material) : 'not said',
      diameterIn: change.diameterIn,
      from: change.at,
      to,
      along: place(change.at),
      alongTo: place(to),
      pattern: change.material ? materials.findIndex((m) => m.name === change.material) % 6 : 0,
    });
  });
  return stretches;
}
