import { describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { confirmation, stamped } from './make-decisions.ts';
import { makeDraft } from './make-inspection.ts';

const draft = makeDraft();
const subjects = applyDecisions(draft, []).runs.map((run) => run.subject);
const placesOf = (bodies: DecisionBody[], run: number) =>
  applyDecisions(draft, stamped(bodies))
    .observations.filter((o) => o.run === run)
    .map((o) => o.at);

describe('correcting runs', () => {
  test('the counter at the access is taken off every distance of that run, and of no other', () => {
    const bodies: DecisionBody[] = [
      {
        action: 'change',
        subject: subjects[0]!,
        changes: { counterStart: { was: 0, now: 2.5 } },
      },
    ];
    expect(placesOf(bodies, 1)).toEqual([0, 20.5, 27.5, 38.5, 42.5, 49.5]);
    expect(placesOf(bodies, 2)).toEqual([0, null, 18]);
    expect(applyDecisions(draft, stamped(bodies)).runs[0]!.end).toEqual({ at: 49.5, reason: 'main' });
  });
  test('a counter that starts anew makes a run of what was heard later, and later runs move up', () => {
    const bodies: DecisionBody[] = [{ action: 'start-run', run: 1, atSeconds: 19, lessFeet: 30 }];
    const reviewed = applyDecisions(draft, stamped(bodies));
    expect(reviewed.runs.map((run) => [run.n, run.source, run.end?.at ?? null])).toEqual([
      [1, 'draft', null],
      [2, 'added', 22],
      [3, 'draft', null],
    ]);
    expect(placesOf(bodies, 1)).toEqual([0, 23, 30]);
    expect(placesOf(bodies, 2)).toEqual([11, 15, 22]);
    expect(placesOf(bodies, 3)).toEqual([0, null, 18]);
    expect(reviewed.absent[0]!.run).toBe(2);
  });
  test('joining is the way back', () => {
    const started: DecisionBody = { action: 'start-run', run: 1, atSeconds: 19, lessFeet: 30 };
    const added = applyDecisions(draft, stamped([started])).runs[1]!.subject;
    const joined = applyDecisions(draft, stamped([started, { action: 'join-run', subject: added, addFeet: 30 }]));
    expect(joined.observations.map((o) => [o.run, o.at])).toEqual(draft.observations.map((o) => [o.run, o.at]));
    expect(joined.runs.map((run) => run.end?.at ?? null)).toEqual([52, null]);
  });
  test('direction, access and end are set and kept on record', () => {
    const changes = {
      direction: { was: 'downstream', now: 'upstream' },
      endReason: { was: null, now: 'tank' },
      endAt: { was: null, now: 40 },
    };
    const run = applyDecisions(draft, stamped([{ action: 'confirm', subject: subjects[1]!, values: {}, changes }]))
      .runs[1]!;
    expect(run).toMatchObject({ direction: 'upstream', end: { at: 40, reason: 'tank' }, reviewState: 'confirmed' });
    expect(run.changed.direction!.was).toBe('downstream');
  });
  test('a distance set after the counter was corrected stays as it was set', () => {
    const bodies: DecisionBody[] = [
      { action: 'change', subject: subjects[0]!, changes: { counterStart: { was: 0, now: 3 } } },
      { ...confirmation(draft, 'o2'), changes: { at: { was: 20, now: 21 } }, values: {} } as DecisionBody,
    ];
    expect(applyDecisions(draft, stamped(bodies)).observations.find((o) => o.id === 'o2')!.at).toBe(21);
  });
});
