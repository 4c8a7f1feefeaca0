/**
 * From the recogniser's own probabilities to ones that mean what they say, by a curve fitted on held-out narrations.
 * Platt scaling with the neighbourhood as second witness: where the words around are doubtful (noise, a strange voice), a
 * word that looks sure is right less often. Without it a curve fitted on hard sound errs on easy sound, and the reverse.
 */
import type { Word } from '../../shared/schemas/word.ts';
import { calibration } from './calibration.ts';

export interface CalibrationCurve {
  readonly offset: number;
  /** Stretches the logit of the word's own probability. */
  readonly own: number;
  /** Weighs the mean log-probability of the words around. */
  readonly around: number;
}

/** How many words on each side count as the neighbourhood. */
const REACH = 12;
/** What is taken for the neighbourhood of a word that stands alone. */
const TYPICAL_LOG_PROBABILITY = -0.2;

/** What the curve is made of, for each word: the logit of its own probability and the mean log-probability around it. */
export function witnesses(words: readonly Word[]): { own: number; around: number }[] {
  const logs = words.map((word) => Math.log(clamp(word.probability ?? 1)));
  return logs.map((log, index) => {
    const near = [...logs.slice(Math.max(0, index - REACH), index), ...logs.slice(index + 1, index + 1 + REACH)];
    const around =
      near.length > 0 ? near.reduce((sum, value) => sum + value, 0) / near.length : TYPICAL_LOG_PROBABILITY;
    return { own: log - Math.log(1 - Math.exp(log)), around };
  });
}

export const apply = ({ own, around }: { own: number; around: number }, curve: CalibrationCurve): number =>
  1 / (1 + Math.exp(-(curve.offset + curve.own * own + curve.around * around)));

/** The words of a whole recording, in order, with the recogniser's own probabilities replaced. */
export function calibrateWords(words: readonly Word[], curve: CalibrationCurve = calibration): Word[] {
  const seen = witnesses(words);
  return words.map((word, index) => ({ ...word, probability: Math.round(apply(seen[index]!, curve) * 1e4) / 1e4 }));
}

const clamp = (probability: number): number => Math.min(1 - 1e-6, Math.max(1e-6, probability));
