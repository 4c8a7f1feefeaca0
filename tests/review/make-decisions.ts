/** Decisions for the tests, stamped one after the other. */
import type { Changes, Decision, DecisionBody, Subject } from '../../shared/schemas/decision.ts';
import type { Draft } from '../../shared/schemas/draft.ts';
import type { ReviewedObservation } from '../../shared/schemas/reviewed.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { valuesOf } from '../../src/5-review/set-fields.ts';

export function stamped(bodies: readonly DecisionBody[]): Decision[] {
  return bodies.map((body, index) => ({
    ...body,
    n: index + 1,
    id: `decision-${index + 1}`,
    time: `2026-03-01T10:00:${String(index % 60).padStart(2, '0')}.000Z`,
    person: 'R. Inspector',
    previous: null,
  }));
}

export function subjectOf(draft: Draft, id: string): Subject {
  return found(draft, id).subject;
}

/** A confirmation of what the draft itself says, with changes on top. */
export function confirmation(draft: Draft, id: string, changes?: Changes): DecisionBody {
  const item = found(draft, id);
  const values = {
    ...valuesOf(item),
    ...Object.fromEntries(Object.entries(changes ?? {}).map(([f, c]) => [f, c.now])),
  };
  return { action: 'confirm', subject: item.subject, values, ...(changes ? { changes } : {}) };
}

export function found(draft: Draft, id: string, decisions: readonly Decision[] = []): ReviewedObservation {
  const item = applyDecisions(draft, decisions).observations.find((one) => one.id === id);
  if (!item) throw new Error(`no observation ${id}`);
  return item;
}
