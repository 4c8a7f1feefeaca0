/** Every decision makes all items anew; those that came out the same stay the same object, so that nothing is drawn twice. */
import type { Reviewed } from '../../../shared/schemas/reviewed.ts';

const texts = new WeakMap<object, string>();

function textOf(item: object): string {
  let text = texts.get(item);
  if (text === undefined) {
    text = JSON.stringify(item);
    texts.set(item, text);
  }
  return text;
}

/** The list, with the objects of `before` wherever they say the same. The list itself too, when all do. */
export function keepSame<T extends object>(before: readonly T[], after: readonly T[]): T[] {
  const known = new Map(before.map((item) => [textOf(item), item]));
  const kept = after.map((item) => known.get(textOf(item)) ?? item);
  const isSame = kept.length === before.length && kept.every((item, index) => item === before[index]);
  return isSame ? (before as T[]) : kept;
}

export function keepSameItems(before: Reviewed | null, after: Reviewed): Reviewed {
  if (!before) return after;
  return {
    ...after,
    runs: keepSame(before.runs, after.runs),
    observations: keepSame(before.observations, after.observations),
    absent: keepSame(before.absent, after.absent),
    unplaced: keepSame(before.unplaced, after.unplaced),
    setAside: keepSame(before.setAside, after.setAside),
  };
}
