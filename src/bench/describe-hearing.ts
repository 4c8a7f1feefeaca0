/** Hearing scores summed over narrations, and said in one line. */
import type { HearingScore } from './score-hearing.ts';

/** Expected calibration error over ten equal bins. */
export function calibrationError(claims: readonly (readonly [number, boolean])[]): number {
  let error = 0;
  for (let bin = 0; bin < 10; bin++) {
    const inside = claims.filter(([p]) => Math.min(9, Math.floor(p * 10)) === bin);
    if (inside.length === 0) continue;
    const claimed = inside.reduce((sum, [p]) => sum + p, 0) / inside.length;
    const right = inside.filter(([, isRight]) => isRight).length / inside.length;
    error += (Math.abs(claimed - right) * inside.length) / claims.length;
  }
  return error;
}

export function sumScores(scores: readonly HearingScore[]): HearingScore {
  const sum = (
    field:
      | 'said'
      | 'substituted'
      | 'deleted'
      | 'inserted'
      | 'tradeSaid'
      | 'tradeHeard'
      | 'tradeInvented'
      | 'numbersSaid'
      | 'numbersHeard',
  ) => scores.reduce((total, score) => total + score[field], 0);
  return {
    said: sum('said'),
    substituted: sum('substituted'),
    deleted: sum('deleted'),
    inserted: sum('inserted'),
    tradeSaid: sum('tradeSaid'),
    tradeHeard: sum('tradeHeard'),
    tradeInvented: sum('tradeInvented'),
    numbersSaid: sum('numbersSaid'),
    numbersHeard: sum('numbersHeard'),
    startErrors: scores.flatMap((score) => score.startErrors),
    endErrors: scores.flatMap((score) => score.endErrors),
    claims: scores.flatMap((score) => score.claims),
    misses: scores.flatMap((score) => score.misses),
  };
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

/** One line for a table. */
export function describeScore(score: HearingScore): string {
  const percent = (part: number, whole: number) => `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;
  return [
    `WER ${percent(score.substituted + score.deleted + score.inserted, score.said)} (s${score.substituted} d${score.deleted} i${score.inserted})`,
    `trade ${percent(score.tradeHeard, score.tradeSaid)} of ${score.tradeSaid}, ${score.tradeInvented} invented`,
    `numbers ${percent(score.numbersHeard, score.numbersSaid)} of ${score.numbersSaid}`,
    `starts median ${quantile(score.startErrors, 0.5).toFixed(2)} p95 ${quantile(score.startErrors, 0.95).toFixed(2)}`,
    `ends median ${quantile(score.endErrors, 0.5).toFixed(2)} p95 ${quantile(score.endErrors, 0.95).toFixed(2)}`,
    `ECE ${calibrationError(score.claims).toFixed(3)}`,
  ].join(' | ');
}
