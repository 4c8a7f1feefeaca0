/** Counter readings made into distances along the pipe, with how far they may be off. */
import type { Computation, Place } from '../../shared/schemas/grade.ts';
import type { DistanceBasis } from '../../shared/vocabulary/attributes.ts';

export const feetPerMeter = 1 / 0.3048;

const counterSource = 'Sunny Isles Beach 02762 3.2 (read)';

/** How far a camera's counter may be off: the larger of 0.5 % of the length and 1 ft. */
export function counterPlusMinusFeet(counterFeet: number): number {
  return Math.max(1, Math.abs(counterFeet) * 0.005);
}

/** How a run's counter relates to its pipe. Feet. */
export interface Counter {
  /** Added to the draft's distances to get back what the counter showed. */
  readonly startFeet: number;
  /** What the counter showed where the camera entered the pipe. */
  readonly entryFeet: number;
  readonly feetPerUnit: number;
}

/**
 * A place on the run. A distance that was worked out adds its own doubt to the counter's, the worst case.
 * @param at distance of the draft, in its unit
 * @param ownPlusMinus doubt of a worked-out distance, in feet
 */
export function placeOf(at: number, counter: Counter, basis: DistanceBasis | null, ownPlusMinus = 0): Place {
  const counterFeet = tidy(at * counter.feetPerUnit + counter.startFeet);
  const feet = counterFeet - counter.entryFeet;
  return {
    counterFeet,
    feet: feet < 0 ? null : tidy(feet),
    plusMinusFeet: tidy(counterPlusMinusFeet(counterFeet) + ownPlusMinus),
    basis,
  };
}

export const correctedDistanceName = 'distance from where the camera entered the pipe';

/** The sum behind a corrected distance, shown when the counter did not start at the pipe. */
export function correctedDistance(place: Place, entryFeet: number): Computation | null {
  if (entryFeet === 0 || place.feet === null) return null;
  return {
    name: correctedDistanceName,
    inputs: [
      { name: 'counter reading', value: place.counterFeet, unit: 'ft', source: 'the talk' },
      { name: 'counter at the entry', value: entryFeet, unit: 'ft', source: 'the inspector' },
    ],
    formula: 'counter reading − counter at the entry',
    results: [
      { name: 'distance', value: place.feet, unit: 'ft' },
      { name: 'plus or minus', value: place.plusMinusFeet, unit: 'ft' },
    ],
    note: `A counter may be off by the larger of 0.5 % and 1 ft: ${counterSource}.`,
  };
}

/** Rounds away the noise of binary fractions; counters show no more than two places. */
export function tidy(value: number): number {
  return Math.round(value * 1000) / 1000;
}
