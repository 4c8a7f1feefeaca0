/** From the recogniser's own probability to one that means what it says, by a curve fitted on held-out narrations. */
import { calibration } from './calibration.ts';

export interface CalibrationCurve {
  readonly slope: number;
  readonly offset: number;
}

/**
 * Platt scaling: the logit of the probability is stretched and shifted.
 * @param logProb the lowest log-probability among the tokens of a word
 */
export function calibrate(logProb: number, { slope, offset }: CalibrationCurve = calibration): number {
  const probability = Math.min(1 - 1e-6, Math.max(1e-6, Math.exp(logProb)));
  const logit = Math.log(probability / (1 - probability));
  return 1 / (1 + Math.exp(-(slope * logit + offset)));
}
