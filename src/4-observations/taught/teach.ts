/**
 * Teaches a reader from labelled sentences: for each kind a logistic model over the features of a sentence, whose counts are
 * divided by the root of how many there are, so that long sentences weigh like short ones. Fitted by the dual coordinate descent of Yu, Huang and Lin (Machine Learning 85, 2011, algorithm 5; the
 * way of the library LIBLINEAR). The same sentences give the same weights.
 */
import { featuresOfWord, pairsOf } from './features.ts';

export interface Lesson {
  readonly words: readonly string[];
  /** The kinds the sentence finds. */
  readonly finds: readonly string[];
  /** The kinds it says something about; null when it was labelled for all. */
  readonly about: readonly string[] | null;
}

export interface Taught {
  readonly kinds: readonly string[];
  readonly bias: readonly number[];
  /** For each feature, pairs of the kind's index and its weight. */
  readonly weights: Readonly<Record<string, readonly number[]>>;
}

/** How much an error costs beside the size of the weights. */
const COST = 60;
const PASSES = 40;
/** Weights smaller than this are left out: nothing is read better by them. */
const LEAST_WEIGHT = 0.3;

interface Row {
  readonly features: Int32Array;
  readonly values: Float64Array;
  /** Of the values and the bias, which is one more feature of value one. */
  readonly squaredLength: number;
}

export function teach(lessons: readonly Lesson[], kinds: readonly string[]): Taught {
  const { names, rows } = toRows(lessons);
  const weights: Record<string, number[]> = {};
  const bias = kinds.map((kind, index) => {
    const taking = lessons.flatMap(({ about }, at) => (about === null || about.includes(kind) ? [at] : []));
    const fitted = fitKind(
      taking.map((at) => rows[at]!),
      taking.map((at) => lessons[at]!.finds.includes(kind)),
      names.length,
    );
    names.forEach((name, feature) => {
      const weight = fitted[feature]!;
      if (Math.abs(weight) < LEAST_WEIGHT) return;
      weights[name] ??= [];
      weights[name].push(index, Math.round(weight * 10) / 10);
    });
    return Math.round(fitted[names.length]! * 100) / 100;
  });
  return { kinds, bias, weights };
}

function toRows(lessons: readonly Lesson[]): { names: string[]; rows: Row[] } {
  const places = new Map<string, number>();
  const rows = lessons.map(({ words }) => {
    const counts = new Map<number, number>();
    const seen = [...words.flatMap(featuresOfWord), ...pairsOf(words)];
    for (const feature of seen) {
      if (!places.has(feature)) places.set(feature, places.size);
      const place = places.get(feature)!;
      counts.set(place, (counts.get(place) ?? 0) + 1);
    }
    const values = Float64Array.from(counts.values(), (count) => count / Math.sqrt(seen.length));
    const squaredLength = values.reduce((sum, value) => sum + value * value, 1);
    return { features: Int32Array.from(counts.keys()), values, squaredLength };
  });
  return { names: [...places.keys()], rows };
}

/** The weights of one kind, the bias last. */
function fitKind(rows: readonly Row[], finds: readonly boolean[], width: number): Float64Array {
  const weights = new Float64Array(width + 1);
  const alphas = rows.map(() => Math.min(0.001 * COST, 1e-8));
  for (const [index, row] of rows.entries()) move(weights, row, (finds[index] ? 1 : -1) * alphas[index]!);
  const order = rows.map((_, index) => index);
  for (let pass = 0; pass < PASSES; pass += 1) {
    shuffle(order, pass + 1);
    for (const index of order) {
      const row = rows[index]!;
      const sign = finds[index] ? 1 : -1;
      const alpha = alphas[index]!;
      const next = bestAlpha(alpha, sign * dot(weights, row), row.squaredLength);
      alphas[index] = next;
      move(weights, row, sign * (next - alpha));
    }
  }
  return weights;
}

const CLOSE_ENOUGH = 1e-3;

/** The best dual variable of one sentence while the others stand, by Newton steps from the end that is nearer. */
function bestAlpha(alpha: number, margin: number, squaredLength: number): number {
  const isFlipped = 0.5 * squaredLength * (COST - 2 * alpha) + margin < 0;
  const start = isFlipped ? COST - alpha : alpha;
  const pull = isFlipped ? -margin : margin;
  let z = COST - start < 0.5 * COST ? 0.1 * start : start;
  for (let step = 0; step < 50; step += 1) {
    const slope = squaredLength * (z - start) + pull + Math.log(z / (COST - z));
    if (Math.abs(slope) < CLOSE_ENOUGH) break;
    const next = z - slope / (squaredLength + COST / (COST - z) / z);
    z = next <= 0 ? 0.1 * z : Math.min(next, COST * (1 - 1e-12));
  }
  return isFlipped ? COST - z : z;
}

function dot(weights: Float64Array, { features, values }: Row): number {
  let sum = weights[weights.length - 1]!;
  for (let at = 0; at < features.length; at += 1) sum += weights[features[at]!]! * values[at]!;
  return sum;
}

function move(weights: Float64Array, { features, values }: Row, by: number): void {
  if (by === 0) return;
  weights[weights.length - 1]! += by;
  for (let at = 0; at < features.length; at += 1) weights[features[at]!]! += by * values[at]!;
}

/** Mixes in place, the same way for the same seed (a linear congruential generator with Numerical Recipes' constants). */
function shuffle(order: number[], seed: number): void {
  let state = seed;
  for (let at = order.length - 1; at > 0; at -= 1) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const other = state % (at + 1);
    [order[at], order[other]] = [order[other]!, order[at]!];
  }
}
