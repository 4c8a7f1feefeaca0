/** Standing water: depth, share of the bore, share of the area, what a belly holds and how far water stands back. */
import type { Computation, PipeHere } from '../../shared/schemas/grade.ts';
import { areaShare } from './circular-segment.ts';
import { tidy } from './distances.ts';

const cubicInchesPerGallon = 231;
const litersPerGallon = 3.785411784;
/** Said and measured shares that differ by more than this are shown as disagreeing. */
const disagreementPoints = 10;

export interface WaterDepth {
  /** Percent of the true inside diameter. */
  readonly sharePercent: number;
  readonly inches: number | null;
  readonly computation: Computation | null;
}

/**
 * The depth of standing water as a share of the true inside diameter. A share that was said and one worked out from
 * inches may differ; the larger one is used, so that doubt never makes a grade milder.
 * @returns null when neither a share nor, with a known bore, inches were said
 */
export function waterDepth(inches: number | null, percent: number | null, pipe: PipeHere): WaterDepth | null {
  const fromInches = inches !== null && pipe.insideIn !== null ? Math.min(100, (inches / pipe.insideIn) * 100) : null;
  if (fromInches === null && percent === null) return null;
  const sharePercent = Math.max(fromInches ?? 0, percent ?? 0);
  const depthInches = inches ?? (pipe.insideIn === null ? null : (sharePercent / 100) * pipe.insideIn);
  const inputs: Computation['inputs'] = [];
  if (inches !== null) inputs.push({ name: 'depth of water', value: inches, unit: 'in', source: 'the talk' });
  if (percent !== null) inputs.push({ name: 'share of the diameter', value: percent, unit: '%', source: 'the talk' });
  if (pipe.insideIn !== null && pipe.insideSource !== null)
    inputs.push({ name: 'inside diameter', value: pipe.insideIn, unit: 'in', source: pipe.insideSource });
  const disagree =
    fromInches !== null && percent !== null && Math.abs(fromInches - percent) > disagreementPoints
      ? `The inches give ${tidy(Math.round(fromInches * 10) / 10)} %, ${percent} % was said; the larger is used.`
      : null;
  return {
    sharePercent,
    inches: depthInches,
    computation: {
      name: 'standing water',
      inputs,
      formula: 'depth ÷ inside diameter; area of the circular segment ÷ area of the circle',
      results: [
        ...(depthInches === null ? [] : [{ name: 'depth', value: tidy(depthInches), unit: 'in' }]),
        { name: 'share of the diameter', value: tidy(sharePercent), unit: '%' },
        { name: 'share of the area', value: tidy(areaShare(sharePercent / 100) * 100), unit: '%' },
      ],
      ...(disagree === null ? {} : { note: disagree }),
    },
  };
}

/**
 * Water held in a belly. The shape of the low place is not known: the low figure takes a depth that grows evenly to
 * the middle and falls off again, the high one the same depth from end to end.
 * @param lengthFeet length of the belly
 * @param depthInches deepest water
 */
export function heldWater(lengthFeet: number, depthInches: number, insideIn: number): Computation {
  const fullCubicInches = (Math.PI / 4) * insideIn ** 2 * lengthFeet * 12;
  const share = Math.min(1, depthInches / insideIn);
  const high = (areaShare(share) * fullCubicInches) / cubicInchesPerGallon;
  const low = (meanAreaShare(share) * fullCubicInches) / cubicInchesPerGallon;
  return {
    name: 'water held',
    inputs: [
      { name: 'length', value: tidy(lengthFeet), unit: 'ft', source: 'the two ends as said' },
      { name: 'deepest water', value: tidy(depthInches), unit: 'in', source: 'see standing water' },
      { name: 'inside diameter', value: insideIn, unit: 'in', source: 'see standing water' },
    ],
    formula:
      'area of the water × length, with the depth growing evenly to the middle (low) or the same throughout (high)',
    results: [
      { name: 'low', value: tidy(low), unit: 'gal' },
      { name: 'high', value: tidy(high), unit: 'gal' },
      { name: 'low', value: tidy(low * litersPerGallon), unit: 'L' },
      { name: 'high', value: tidy(high * litersPerGallon), unit: 'L' },
    ],
  };
}

/** Mean of the area share while the depth share runs evenly from 0 to `share` (Simpson's rule, 200 steps). */
function meanAreaShare(share: number): number {
  const steps = 200;
  let sum = 0;
  for (let step = 0; step <= steps; step += 1) {
    const weight = step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2;
    sum += weight * areaShare((share * step) / steps);
  }
  return sum / (3 * steps);
}

/** How far up the line water of this depth stands, on a pipe of even slope: depth ÷ slope. */
export function backwaterReach(depthInches: number, inchesPerFoot: number, slopeSource: string): Computation {
  return {
    name: 'how far the water stands back',
    inputs: [
      { name: 'depth of water', value: tidy(depthInches), unit: 'in', source: 'see standing water' },
      { name: 'slope', value: tidy(inchesPerFoot), unit: 'in/ft', source: slopeSource },
    ],
    formula: 'depth ÷ slope',
    results: [{ name: 'length', value: tidy(depthInches / inchesPerFoot), unit: 'ft' }],
    note: 'On a pipe that otherwise falls evenly at this slope; the slope was not measured unless the inspector gave it.',
  };
}
