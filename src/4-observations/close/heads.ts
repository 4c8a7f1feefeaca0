/**
 * What is asked of the network's states once a finding is in question: which value each of its fields has. Small enough to be
 * worked out here: some 300,000 multiplications a finding.
 */
import { z } from 'zod';

const indexSchema = z.object({
  kinds: z.array(z.string()),
  choices: z.array(z.object({ field: z.string(), values: z.array(z.string()), offset: z.number() })),
  numbers: z.array(z.string()),
  parts: z.array(z.object({ name: z.string(), shape: z.array(z.number()), offset: z.number() })),
});

/** One value a field may have, null for none, and how likely it is. */
export interface Likely {
  readonly value: string | number | null;
  readonly chance: number;
}

/** For each field, by its name, the values it may have, the likeliest first. */
export type FieldChances = ReadonlyMap<string, readonly Likely[]>;

/** The value of a number that is told of but does not stand among the numbers ("five feet on"). */
export const ELSEWHERE = 'elsewhere';

/** The fields by which a place is counted from another number ("five feet past that"): which number, how far, and which way. */
export const COUNTED_FROM = 'from';
export const COUNTED_STEP = 'step';
export const COUNTED_WAY = 'way';
const ways = {
  on: (from: number, step: number) => from + step,
  back: (from: number, step: number) => from - step,
  between: (from: number, step: number) => (from + step) / 2,
} as const;
/** The ways a place may be counted, as the network is taught and asked. */
export const countedWays = Object.keys(ways) as (keyof typeof ways)[];

/** Less likely than this, a counted place is not told apart from the others. */
const LEAST_COUNTED = 0.01;

/** A number in the talk: its value, and the row of the keys it is found by. */
export interface NumberKey {
  readonly value: number;
  readonly row: number;
}

export interface Heads {
  readonly width: number;
  readonly kinds: readonly string[];
  /** The chances of every field of a finding of `kind` whose words have the state `anchor`. */
  fields(kind: string, anchor: Float32Array, keys: Float32Array, numbers: readonly NumberKey[]): FieldChances;
}

/** Under this name stand the places that can be counted from two numbers, as shares of the chance that the place is told elsewhere. */
export const COUNTED = 'counted';

/** @throws ZodError when the index is not one of a close reader. */
export function readHeads(index: unknown, weights: Buffer, width: number): Heads {
  const { kinds, choices, numbers: numberFields, parts } = indexSchema.parse(index);
  const floats = new Float32Array(weights.buffer.slice(weights.byteOffset, weights.byteOffset + weights.byteLength));
  const part = (name: string): Float32Array => {
    const { offset, shape } = parts.find((each) => each.name === name)!;
    return floats.subarray(offset, offset + shape.reduce((size, side) => size * side, 1));
  };
  const embedding = part('kindEmbedding');
  const [query, queryBias] = [part('query'), part('queryBias')];
  const [choice, choiceBias] = [part('choices'), part('choicesBias')];
  const [pointer, pointerBias] = [part('pointers'), part('pointersBias')];
  const [nothing, nothingBias] = [part('nothing'), part('nothingBias')];
  const span = pointerBias.length / numberFields.length;
  return {
    width,
    kinds,
    fields(kind, anchor, keys, numbers) {
      const row = kinds.indexOf(kind) * width;
      const asked = multiply(
        query,
        queryBias,
        anchor.map((value, at) => value + embedding[row + at]!),
      ).map(Math.tanh);
      const chosen = multiply(choice, choiceBias, asked);
      const pointing = multiply(pointer, pointerBias, asked);
      const none = multiply(nothing, nothingBias, asked);
      const found = new Map<string, Likely[]>();
      const counted = new Map<string, Float32Array>();
      for (const { field, values, offset } of choices) {
        const logits = chosen.subarray(offset, offset + values.length + 1);
        found.set(field, ranked([null, ...values], softmax(logits)));
      }
      for (const [at, field] of numberFields.entries()) {
        const pointed = numbers.map(
          ({ row: key }) =>
            dot(pointing, keys, at * span, key * pointerBias.length + at * span, span) / Math.sqrt(span),
        );
        if (field === COUNTED_FROM || field === COUNTED_STEP) counted.set(field, softmax(Float32Array.from(pointed)));
        else {
          const chances = softmax(Float32Array.from([none[2 * at]!, none[2 * at + 1]!, ...pointed]));
          found.set(field, ranked([null, ELSEWHERE, ...numbers.map(({ value }) => value)], chances));
        }
      }
      found.set(COUNTED, countPlaces(numbers, counted, found.get(COUNTED_WAY) ?? []));
      return found;
    },
  };
}

/** Each place that one number counted from another gives, the likeliest first. */
function countPlaces(
  numbers: readonly NumberKey[],
  pointed: ReadonlyMap<string, Float32Array>,
  likelyWays: readonly Likely[],
): Likely[] {
  const [from, step] = [pointed.get(COUNTED_FROM), pointed.get(COUNTED_STEP)];
  if (!from || !step) return [];
  const places: number[] = [];
  const chances: number[] = [];
  for (const { value: way, chance: ofWay } of likelyWays.filter(({ value }) => value !== null))
    for (const [a, start] of numbers.entries())
      for (const [b, distance] of numbers.entries()) {
        const chance = ofWay * from[a]! * step[b]!;
        if (a === b || chance < LEAST_COUNTED) continue;
        places.push(ways[way as keyof typeof ways](start.value, distance.value));
        chances.push(chance);
      }
  return ranked(places, Float32Array.from(chances));
}

function dot(a: Float32Array, b: Float32Array, fromA: number, fromB: number, length: number): number {
  let sum = 0;
  for (let at = 0; at < length; at += 1) sum += a[fromA + at]! * b[fromB + at]!;
  return sum;
}

/** A matrix of rows as long as `by`, times `by`, plus a bias for each row. */
const multiply = (matrix: Float32Array, bias: Float32Array, by: Float32Array): Float32Array =>
  bias.map((start, row) => start + dot(matrix, by, row * by.length, 0, by.length));

export function softmax(logits: Float32Array): Float32Array {
  const most = Math.max(...logits);
  const powers = logits.map((logit) => Math.exp(logit - most));
  const sum = powers.reduce((total, power) => total + power, 0);
  return powers.map((power) => power / sum);
}

/** The chances of equal values are one. */
function ranked(values: readonly (string | number | null)[], chances: Float32Array): Likely[] {
  const sums = new Map<string | number | null, number>();
  for (const [at, value] of values.entries()) sums.set(value, (sums.get(value) ?? 0) + chances[at]!);
  return [...sums].map(([value, chance]) => ({ value, chance })).sort((a, b) => b.chance - a.chance);
}
