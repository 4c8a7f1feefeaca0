/**
 * Whether the draft's confidence means what it says, over all observations of all narrations.
 * Reliability: of those given about 0.9, about nine in ten should be right. Risk against coverage: how many errors
 * remain when only the surest share is accepted; AUGRC is the area under errors-among-accepted over all, against
 * coverage (Traub et al., "Overcoming common flaws in the evaluation of selective classification systems", 2024).
 */
import type { Claim } from './compare.ts';

const binEdges = [0, 0.5, 0.7, 0.85, 0.95, 1.0000001];
const coverages = [0.5, 0.8, 0.9, 0.95, 1];

export interface Reliability {
  readonly bins: { from: number; to: number; n: number; meanConfidence: number; shareRight: number }[];
  readonly expectedCalibrationError: number;
  readonly risks: { coverage: number; risk: number }[];
  readonly areaUnderRisk: number;
  readonly silent: { errors: number; n: number; upper95: number };
}

export function reliabilityOf(claims: readonly Omit<Claim, 'id'>[]): Reliability {
  const bins = binEdges.slice(0, -1).map((from, i) => {
    const to = binEdges[i + 1]!;
    const inside = claims.filter((claim) => claim.confidence >= from && claim.confidence < to);
    return {
      from,
      to: Math.min(1, to),
      n: inside.length,
      meanConfidence: mean(inside.map((claim) => claim.confidence)),
      shareRight: mean(inside.map((claim) => Number(claim.isRight))),
    };
  });
  const surestFirst = [...claims].sort((a, b) => b.confidence - a.confidence);
  const errorsUpTo = [0];
  for (const claim of surestFirst) errorsUpTo.push(errorsUpTo.at(-1)! + Number(!claim.isRight));
  const silent = claims.filter((claim) => !claim.isFlagged);
  const silentErrors = silent.filter((claim) => !claim.isRight).length;
  return {
    bins,
    expectedCalibrationError:
      claims.length === 0
        ? 0
        : bins.reduce((sum, bin) => sum + bin.n * Math.abs(bin.meanConfidence - bin.shareRight), 0) / claims.length,
    risks: coverages.map((coverage) => {
      const accepted = Math.round(coverage * claims.length);
      return { coverage, risk: accepted === 0 ? 0 : errorsUpTo[accepted]! / accepted };
    }),
    areaUnderRisk: mean(errorsUpTo.slice(1).map((errors) => errors / claims.length)),
    silent: { errors: silentErrors, n: silent.length, upper95: upperBound95(silentErrors, silent.length) },
  };
}

/**
 * The share of errors that `errors` in `n` do not rule out: the exact one-sided 95 % upper bound of a binomial
 * share (Clopper and Pearson). Without any error it is close to 3 / n.
 */
export function upperBound95(errors: number, n: number): number {
  if (n === 0 || errors >= n) return 1;
  let low = errors / n;
  let high = 1;
  for (let step = 0; step < 60; step++) {
    const share = (low + high) / 2;
    if (chanceOfAtMost(errors, n, share) > 0.05) low = share;
    else high = share;
  }
  return high;
}

/** P(X <= k) of a binomial, summed in logarithms so that large n does not underflow. */
function chanceOfAtMost(k: number, n: number, share: number): number {
  let logTerm = n * Math.log1p(-share);
  let sum = Math.exp(logTerm);
  for (let i = 1; i <= k; i++) {
    logTerm += Math.log((n - i + 1) / i) + Math.log(share) - Math.log1p(-share);
    sum += Math.exp(logTerm);
  }
  return sum;
}

function mean(values: number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
