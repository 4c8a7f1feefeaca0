/** A run as graded: how far the camera came, what it did not see, what the pipe is made of along the way. */
import type { GradedRun } from '../../shared/schemas/grade.ts';
import type { InspectionRun } from '../../shared/schemas/inspection.ts';
import { plays } from '../../shared/vocabulary/grading/roles.ts';
import type { SlopeTable } from '../../shared/vocabulary/grading/slopes.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { materials } from '../../shared/vocabulary/materials.ts';
import { type Counter, counterPlusMinusFeet, feetPerMeter, placeOf, tidy } from './distances.ts';
import { fallByCode } from './fall-by-code.ts';
import type { GradableObservation, GradeInput } from './grade-input.ts';
import { type PipeChange, pipeChanges, pipeStretches } from './pipe-here.ts';

export interface RunInHand {
  readonly graded: GradedRun;
  readonly counter: Counter;
  /** In feet on the counter as the draft counts it. */
  readonly changes: readonly PipeChange[];
  readonly standing: readonly GradableObservation[];
}

/**
 * @param observations those of this run that stand, open ones too
 */
export function gradeRun(
  run: GradeInput['runs'][number],
  asked: InspectionRun | undefined,
  observations: readonly GradableObservation[],
  unit: 'ft' | 'm',
  slope: SlopeTable,
): RunInHand {
  const feetPerUnit = unit === 'm' ? feetPerMeter : 1;
  const startFeet = (run.counterStart ?? 0) * feetPerUnit;
  const entryFeet = asked?.entryOffset === undefined ? startFeet : asked.entryOffset * feetPerUnit;
  const counter: Counter = { startFeet, entryFeet, feetPerUnit };
  const standing = observations.filter((o) => o.reviewState !== 'open' && o.status === 'present');
  const reached = reachOf(run, standing, counter);
  const changes = pipeChanges(standing).map((change) => ({
    ...change,
    counterFeet: tidy(change.counterFeet * feetPerUnit + startFeet),
  }));
  const stretches = reached === null ? [] : pipeStretches(changes, entryFeet, reached);
  const blind = blindStretches(standing, counter);
  const closed = blind.flatMap(({ fromFeet, toFeet }) => (toFeet === null ? [] : [{ fromFeet, toFeet }]));
  // Where the view came back was not always said; the length seen is then unknown.
  const isSeenKnown = closed.length === blind.length;
  const computations: GradedRun['computations'] = [];
  for (const stretch of stretches) {
    if (stretch.nominalIn === null) continue;
    computations.push(fallByCode(stretch.nominalIn, stretch.toFeet - stretch.fromFeet, slope));
  }
  if (reached !== null && stretches.length > 0) computations.push(materialShares(stretches, reached));
  return {
    counter,
    changes,
    standing,
    graded: {
      n: run.n,
      access: asked?.access ?? run.access,
      compass: asked?.compass ?? null,
      direction: run.direction,
      heard: run.heard,
      entryOffsetFeet: asked?.entryOffset === undefined ? null : tidy(entryFeet),
      end:
        run.end === null
          ? null
          : { at: run.end.at === null ? null : placeOf(run.end.at, counter, null), reason: run.end.reason },
      reachedFeet: reached,
      reachedPlusMinusFeet: reached === null ? null : tidy(counterPlusMinusFeet(reached + entryFeet)),
      notSeen: [...blind, ...beyondReach(standing, reached)],
      seenFeet: reached === null || !isSeenKnown ? null : tidy(reached - mergedLength(closed)),
      stretches,
      computations,
      ownerEndsFeet: asked?.ownerEndsAt === undefined ? null : tidy(asked.ownerEndsAt * feetPerUnit - entryFeet),
    },
  };
}

/** How far the camera came from the entry: the end of the run, or the farthest thing seen. */
function reachOf(run: GradeInput['runs'][number], standing: readonly GradableObservation[], counter: Counter) {
  const readings = standing.flatMap((o) => [o.at, o.to]).filter((at) => at !== null);
  if (run.end?.at !== null && run.end !== null) readings.push(run.end.at);
  for (const point of run.track ?? []) readings.push(point.feet);
  if (readings.length === 0) return null;
  return tidy(Math.max(0, Math.max(...readings) * counter.feetPerUnit + counter.startFeet - counter.entryFeet));
}

const titleOf = (name: string) => kinds.find((kind) => kind.name === name)!.title;

/** Stretches inside the run where the camera could not see. */
function blindStretches(standing: readonly GradableObservation[], counter: Counter): GradedRun['notSeen'] {
  const feet = (at: number) => tidy(Math.max(0, at * counter.feetPerUnit + counter.startFeet - counter.entryFeet));
  return standing
    .filter((o) => plays('blind', o.kind) && o.at !== null)
    .map((o) => ({
      fromFeet: feet(Math.min(o.at!, o.to ?? o.at!)),
      toFeet: o.to === null ? null : feet(Math.max(o.at!, o.to)),
      why: titleOf(o.kind),
    }))
    .sort((a, b) => a.fromFeet - b.fromFeet);
}

/** What lies past the end of the run: not inside what was inspected, so it takes nothing off the length. */
function beyondReach(standing: readonly GradableObservation[], reached: number | null): GradedRun['notSeen'] {
  const first = standing.find((o) => plays('stops', o.kind)) ?? standing.find((o) => plays('notReached', o.kind));
  return first && reached !== null ? [{ fromFeet: reached, toFeet: null, why: titleOf(first.kind) }] : [];
}

function mergedLength(stretches: readonly { fromFeet: number; toFeet: number }[]): number {
  let length = 0;
  let coveredTo = -Infinity;
  for (const { fromFeet, toFeet } of [...stretches].sort((a, b) => a.fromFeet - b.fromFeet)) {
    length += Math.max(0, toFeet - Math.max(fromFeet, coveredTo));
    coveredTo = Math.max(coveredTo, toFeet);
  }
  return length;
}

function materialShares(stretches: GradedRun['stretches'], reached: number): GradedRun['computations'][number] {
  const lengths = new Map<string, number>();
  for (const stretch of stretches) {
    const title = materials.find((m) => m.name === stretch.material)?.title ?? 'not said';
    lengths.set(title, (lengths.get(title) ?? 0) + stretch.toFeet - stretch.fromFeet);
  }
  return {
    name: 'share of the line in each material',
    inputs: [
      ...[...lengths].map(([name, value]) => ({ name, value: tidy(value), unit: 'ft', source: 'the changes as said' })),
      { name: 'length inspected', value: reached, unit: 'ft', source: 'the counter' },
    ],
    formula: 'length ÷ length inspected',
    results: [...lengths].map(([name, value]) => ({
      name,
      value: reached === 0 ? 0 : tidy((value / reached) * 100),
      unit: '%',
    })),
  };
}
