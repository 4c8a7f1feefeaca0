/** A recording drafted again by a better model: decisions hold where they fit, and are shown where they do not. */
import { describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import type { Draft, Observation } from '../../shared/schemas/draft.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { confirmation, stamped, subjectOf } from './make-decisions.ts';
import { makeDraft } from './make-inspection.ts';

const draft = makeDraft();

/** The same draft with ids, order and times moved, as another model would give it, and one observation changed. */
function redrafted(id: string, change: (o: Observation) => Observation[]): Draft {
  const moved = draft.observations
    .flatMap((o) => (o.id === id ? change(o) : [o]))
    .map((o, index) => ({
      ...o,
      id: `new${index}`,
      heard: { ...o.heard, start: o.heard.start + 0.3, end: o.heard.end + 0.3 },
    }));
  return { ...draft, observations: moved };
}

const only = (next: Draft, bodies: DecisionBody[]) => applyDecisions(next, stamped(bodies));

describe('a decision on a new draft', () => {
  test('holds when only ids, order and times moved', () => {
    const reviewed = only(
      redrafted('', (o) => [o]),
      [confirmation(draft, 'o4', { at: { was: 41, now: 42 } })],
    );
    const wye = reviewed.observations.find((o) => o.kind === 'wye')!;
    expect(wye).toMatchObject({ at: 42, reviewState: 'confirmed' });
    expect(reviewed.orphanedDecisions).toEqual([]);
  });
  test('holds when the words came out a little better', () => {
    const next = redrafted('o4', (o) => [{ ...o, heard: { ...o.heard, text: 'There is a wye at 41.' } }]);
    const reviewed = only(next, [confirmation(draft, 'o4', { at: { was: 41, now: 42 } })]);
    expect(reviewed.observations.find((o) => o.kind === 'wye')).toMatchObject({ at: 42, reviewState: 'confirmed' });
  });
  test('holds when the new model reads by itself what was corrected', () => {
    const next = redrafted('o4', (o) => [{ ...o, at: 42, heard: { ...o.heard, text: 'There is a wye at 42.' } }]);
    const reviewed = only(next, [confirmation(draft, 'o4', { at: { was: 41, now: 42 } })]);
    expect(reviewed.observations.find((o) => o.kind === 'wye')).toMatchObject({ at: 42, reviewState: 'confirmed' });
    expect(reviewed.orphanedDecisions).toEqual([]);
  });
  test('opens the observation again when another field reads otherwise than was confirmed', () => {
    const next = redrafted('o2', (o) => [{ ...o, degree: 'heavy' }]);
    const reviewed = only(next, [confirmation(draft, 'o2')]);
    expect(reviewed.observations.find((o) => o.kind === 'roots')).toMatchObject({
      reviewState: 'open',
      reopened: [{ field: 'degree', confirmed: null, now: 'heavy' }],
    });
    expect(reviewed.openCount).toBe(5);
  });
  test('is shown when its observation is gone', () => {
    const reviewed = only(
      redrafted('o2', () => []),
      [confirmation(draft, 'o2')],
    );
    expect(reviewed.orphanedDecisions).toHaveLength(1);
    expect(reviewed.orphanedDecisions[0]!.why).toMatch(/not in this draft/);
  });
  test('is shown, not guessed, when two observations fit equally well', () => {
    const twins = redrafted('o2', (o) => [
      { ...o, heard: { ...o.heard, text: '23 feet, roots at a joint, from the top.' } },
      { ...o, heard: { ...o.heard, text: '23 feet, roots by the joint, from the top.' } },
    ]);
    const reviewed = only(twins, [{ action: 'reject', subject: subjectOf(draft, 'o2') }]);
    expect(reviewed.observations.filter((o) => o.reviewState === 'rejected')).toEqual([]);
    expect(reviewed.orphanedDecisions).toHaveLength(1);
  });
  test('does not carry a rejection over to other words', () => {
    const next = redrafted('o5', (o) => [{ ...o, heard: { ...o.heard, text: 'There is a crack at 45.' } }]);
    const reviewed = only(next, [{ action: 'reject', subject: subjectOf(draft, 'o5') }]);
    expect(reviewed.observations.find((o) => o.kind === 'crack')!.reviewState).toBe('open');
    expect(reviewed.orphanedDecisions).toHaveLength(1);
  });
  test('an added finding that the new draft has by itself is there once', () => {
    const missing = { ...draft, observations: draft.observations.filter((o) => o.id !== 'o3') };
    const o3 = draft.observations.find((o) => o.id === 'o3')!;
    const { id, confidence, review, again, ...observation } = o3;
    const add: DecisionBody = { action: 'add', from: null, observation: { ...observation, degree: 'heavy' } };
    expect(applyDecisions(missing, stamped([add])).observations).toHaveLength(9);
    const reviewed = applyDecisions(draft, stamped([add]));
    expect(reviewed.observations).toHaveLength(9);
    expect(reviewed.observations.find((o) => o.kind === 'offset-joint')).toMatchObject({
      degree: 'heavy',
      reviewState: 'confirmed',
    });
  });
  test('a confirmation never survives on another kind or another place', () => {
    for (const change of [{ kind: 'crack' }, { at: 24 }] as const) {
      const reviewed = only(
        redrafted('o2', (o) => [{ ...o, ...change }]),
        [confirmation(draft, 'o2')],
      );
      expect(reviewed.observations.some((o) => o.reviewState === 'confirmed')).toBe(false);
      expect(reviewed.orphanedDecisions).toHaveLength(1);
    }
  });
});
