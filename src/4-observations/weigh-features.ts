/** A logistic model: named features, what each of them weighs, and the chance that comes of it, from 0 to 1. */
export function weighFeatures(
  features: Readonly<Record<string, number>>,
  weights: Readonly<Record<string, number>>,
  bias: number,
): number {
  let sum = bias;
  for (const [name, value] of Object.entries(features)) sum += (weights[name] ?? 0) * value;
  return 1 / (1 + Math.exp(-sum));
}
