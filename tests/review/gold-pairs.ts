/** Which observation means which entry of the gold, and what still differs. */
import type { ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import { attributeNames } from '../../shared/vocabulary/attributes.ts';
import type { Gold, GoldObservation } from '../../src/score/gold.ts';

export const fields = ['at', 'to', 'status', ...attributeNames.filter((name) => name !== 'to')] as const;
export type Field = (typeof fields)[number] | 'kind' | 'run';

/** What still differs from the gold, one line each. */
export function leftToCorrect(gold: Gold, observations: readonly ReviewedObservation[]): string[] {
  const pairs = pairUp(gold.observations, observations);
  const used = new Set(pairs.values());
  return [
    ...observations.flatMap((o) => {
      const target = pairs.get(o.id);
      if (!target) return [`${o.kind} at ${o.at} is too many`];
      return differences(target, o).map((field) => `${o.kind} at ${o.at}: ${field} is wrong`);
    }),
    ...gold.observations.filter((g) => !used.has(g)).map((g) => `${g.kind} at ${g.at} is missing`),
  ];
}

/** Gold by the id of the observation that means it: kind, run and place first, then the same words. */
export function pairUp(
  golds: readonly GoldObservation[],
  all: readonly ReviewedObservation[],
): Map<string, GoldObservation> {
  const candidates = golds.flatMap((g) =>
    all.flatMap((o) => {
      const isSaid = g.heard[0] < o.heard.end && o.heard.start < g.heard[1];
      const isSame = g.kind === o.kind && g.run === o.run && Math.abs((g.at ?? -99) - (o.at ?? -99)) <= 0.25;
      if (!isSaid && !isSame) return [];
      const fitting = fields.filter((field) => wanted(g, field) === (o[field] ?? null)).length;
      return [{ g, o, score: (isSame ? 100 : 0) + (g.kind === o.kind ? 40 : 0) + (isSaid ? 20 : 0) + fitting }];
    }),
  );
  candidates.sort((a, b) => b.score - a.score);
  const pairs = new Map<string, GoldObservation>();
  const used = new Set<GoldObservation>();
  for (const { g, o } of candidates) {
    if (pairs.has(o.id) || used.has(g)) continue;
    pairs.set(o.id, g);
    used.add(g);
  }
  return pairs;
}

export function wanted(g: GoldObservation, field: Field): string | number | null {
  if (field === 'status') return g.status ?? 'present';
  return g[field] ?? null;
}

/** The fields in which an observation is not what the gold says. */
export function differences(g: GoldObservation, o: ReviewedObservation): Field[] {
  const all: Field[] = ['kind', 'run', ...fields];
  return all.filter((field) => {
    const want = wanted(g, field);
    const got = o[field] ?? null;
    if (field === 'at' && g.kind === 'pipe' && want === 0 && got === null) return false;
    return typeof want === 'number' && typeof got === 'number' ? Math.abs(want - got) > 0.25 : want !== got;
  });
}
