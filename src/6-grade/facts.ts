/** The facts a rule may ask about, for one observation among its neighbours. A fact nobody knows is absent. */
import type { PipeHere } from '../../shared/schemas/grade.ts';
import type { FactName } from '../../shared/schemas/grade-rule.ts';
import type { Answer } from '../../shared/schemas/inspection.ts';
import { plays, type Role } from '../../shared/vocabulary/grading/roles.ts';
import type { GradableObservation } from './grade-input.ts';
import type { Roundness } from './roundness.ts';
import type { WaterDepth } from './water.ts';

export type Facts = Partial<Record<FactName, string | number | boolean>>;

/** Things this close together on the counter count as at one place: the least doubt of a counter. */
const nearFeet = 1;

/**
 * @param neighbors the standing, present observations of the same run, in feet on the counter
 */
export function factsOf(
  observation: GradableObservation,
  neighbors: readonly GradableObservation[],
  feetPerUnit: number,
  pipe: PipeHere,
  water: WaterDepth | null,
  roundness: Roundness | null,
  answer: Answer | undefined,
): Facts {
  const facts: Facts = {};
  // What was measured and what was said may differ; the larger one is used, so that doubt never makes a grade milder.
  const percents = [observation.percent, roundness?.percent ?? null].filter((value) => value !== null);
  if (percents.length > 0) facts.percent = Math.max(...percents);
  if (observation.inches !== null) {
    facts.inches = observation.inches;
    if (pipe.insideIn !== null) facts.boreShare = (observation.inches / pipe.insideIn) * 100;
  }
  if (water !== null) facts.waterShare = water.sharePercent;
  if (observation.degree !== null) facts.degree = observation.degree;
  const material = observation.toMaterial ?? observation.material;
  if (material !== null) facts.material = material;

  const near = neighbors.filter((other) => other.id !== observation.id && isNear(observation, other, feetPerUnit));
  const has = (role: Role) => near.some((other) => plays(role, other.kind));
  if (observation.at !== null) {
    facts.solidsNear = has('solids');
    facts.rootsNear = has('roots');
    facts.voidNear = has('emptySoil');
    facts.stopsCamera = has('stops');
  }
  // Only the inspector can say; nothing else that was seen stands for it.
  if (answer?.soilExposed !== undefined) facts.soilExposed = answer.soilExposed;
  return facts;
}

function isNear(one: GradableObservation, other: GradableObservation, feetPerUnit: number): boolean {
  if (one.at === null || other.at === null) return false;
  const [oneFrom, oneTo] = [one.at, one.to ?? one.at].sort((a, b) => a - b) as [number, number];
  const [otherFrom, otherTo] = [other.at, other.to ?? other.at].sort((a, b) => a - b) as [number, number];
  const gap = Math.max(oneFrom - otherTo, otherFrom - oneTo, 0);
  return gap * feetPerUnit <= nearFeet;
}
