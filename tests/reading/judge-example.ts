/** Holds a draft against what an example sentence must give, strictly: nothing more, nothing less. */
import type { Draft, Observation } from '../../shared/schemas/draft.ts';
import { attributeNames } from '../../shared/vocabulary/attributes.ts';
import type { ExampleReading } from '../../shared/vocabulary/kind.ts';

const compared = ['kind', 'status', 'at', ...attributeNames] as const;

/** The observation in few words: what an attribute does not say is left out. */
export function sketch(observation: Observation): Record<string, unknown> {
  return Object.fromEntries(
    compared
      .map((name) => [name, observation[name]] as const)
      .filter(([name, value]) => name === 'kind' || name === 'at' || (value !== null && value !== 'present')),
  );
}

const wanted = (kind: string, reading: ExampleReading): Record<string, unknown> => ({ kind, at: null, ...reading });

/** The observations of a draft that the fixed opening did not give. */
export function spokenObservations(draft: Draft): Observation[] {
  const opening = draft.observations.findIndex((item) => item.kind === 'pipe' && item.at === 0);
  return draft.observations.filter((_, index) => index !== opening);
}

/** What the draft gives and what the example wants, each as a sorted list; equal when the example holds. */
export function compareReadings(
  draft: Draft,
  kind: string,
  gives: ExampleReading | readonly ExampleReading[],
): { given: Record<string, unknown>[]; wanted: Record<string, unknown>[] } {
  const list: readonly ExampleReading[] = Array.isArray(gives) ? gives : [gives as ExampleReading];
  const all = spokenObservations(draft);
  // An empty list asks only that nothing of this kind is given.
  const given = list.length === 0 ? all.filter((item) => item.kind === kind) : all;
  const byKey = (a: object, b: object): number =>
    JSON.stringify(sortKeys(a)).localeCompare(JSON.stringify(sortKeys(b)));
  return {
    given: given.map(sketch).sort(byKey),
    wanted: list.map((reading) => wanted(kind, reading)).sort(byKey),
  };
}

const sortKeys = (record: object): object =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => a.localeCompare(b)));

/** Whether an observation of a kind the example names carries the flag; "suspected" asks for the status. */
export function isFlagged(
  draft: Draft,
  kind: string,
  gives: ExampleReading | readonly ExampleReading[],
  flag: string,
): boolean {
  const list: readonly ExampleReading[] = Array.isArray(gives) ? gives : [gives as ExampleReading];
  if (flag === 'suspected') return spokenObservations(draft).some((item) => item.status === 'suspected');
  const kinds = new Set(list.map((reading) => reading.kind ?? kind));
  return spokenObservations(draft).some(
    (item) => kinds.has(item.kind) && item.review.some((entry) => entry.reason === flag),
  );
}
