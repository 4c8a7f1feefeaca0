/** How far a pipe is out of round. */
import type { Computation, PipeHere } from '../../shared/schemas/grade.ts';
import type { Answer } from '../../shared/schemas/inspection.ts';
import { tidy } from './distances.ts';

/** Deflection in percent: 100 · (inside diameter − height) ÷ inside diameter. Source: Uni-Bell as restated by a trade page. */
export function deflectionPercent(insideDiameter: number, height: number): number {
  return (100 * (insideDiameter - height)) / insideDiameter;
}

/** Ovality of ASTM F1216 X1.1 (section from memory), in percent: the larger of the two forms that glossaries give. */
export function ovalityPercent(smallest: number, largest: number): number {
  const mean = (smallest + largest) / 2;
  return Math.max((100 * (mean - smallest)) / mean, (100 * (largest - mean)) / mean);
}

export interface Roundness {
  /** The larger of deflection and ovality, where they can be worked out. */
  readonly percent: number;
  readonly computation: Computation;
}

/** From what was measured across the pipe; `null` when too little was. */
export function measuredRoundness(answer: Answer | undefined, pipe: PipeHere): Roundness | null {
  if (answer?.heightIn === undefined) return null;
  const { heightIn, widthIn } = answer;
  const deflection = pipe.insideIn === null ? null : Math.abs(deflectionPercent(pipe.insideIn, heightIn));
  const ovality =
    widthIn === undefined ? null : ovalityPercent(Math.min(heightIn, widthIn), Math.max(heightIn, widthIn));
  if (deflection === null && ovality === null) return null;
  return {
    percent: Math.max(deflection ?? 0, ovality ?? 0),
    computation: {
      name: 'out of round',
      inputs: [
        { name: 'height', value: heightIn, unit: 'in', source: 'measured by the inspector' },
        ...(widthIn === undefined
          ? []
          : [{ name: 'width', value: widthIn, unit: 'in', source: 'measured by the inspector' }]),
        ...(pipe.insideIn === null
          ? []
          : [{ name: 'inside diameter', value: pipe.insideIn, unit: 'in', source: pipe.insideSource ?? '' }]),
      ],
      formula: 'deflection: (inside diameter − height) ÷ inside diameter; ovality: (mean − smallest) ÷ mean',
      results: [
        ...(deflection === null ? [] : [{ name: 'deflection', value: tidy(deflection), unit: '%' }]),
        ...(ovality === null ? [] : [{ name: 'ovality', value: tidy(ovality), unit: '%' }]),
      ],
    },
  };
}
