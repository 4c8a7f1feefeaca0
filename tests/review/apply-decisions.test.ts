import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import { reviewedSchema, standingObservations } from '../../shared/schemas/reviewed.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { confirmation, found, stamped, subjectOf } from './make-decisions.ts';
import { makeDraft } from './make-inspection.ts';

const draft = makeDraft();

describe('a draft without decisions', () => {
  const reviewed = applyDecisions(draft, []);
  test('keeps every field and fits the schema', () => {
    expect(reviewedSchema.parse(reviewed)).toEqual(reviewed);
    for (const [index, o] of draft.observations.entries()) expect(reviewed.observations[index]).toMatchObject(o);
  });
  test('counts what is flagged, and talk that was not placed, as open', () => {
    expect(reviewed.openCount).toBe(4);
    expect(reviewed.observations.filter((o) => o.reviewState === 'open').map((o) => o.id)).toEqual(['o4', 'o5', 'o8']);
  });
  test('draws unflagged ones to listen to, and never a flagged one', () => {
    const drawn = reviewed.observations.filter((o) => o.isDrawn);
    expect(drawn).toHaveLength(3);
    expect(drawn.every((o) => o.review.length === 0)).toBe(true);
    expect([...reviewed.absent, ...reviewed.setAside].filter((one) => one.isDrawn)).toHaveLength(2);
  });
  test('is not changed itself', () => {
    const before = JSON.stringify(draft);
    applyDecisions(draft, stamped([confirmation(draft, 'o4', { at: { was: 41, now: 42 } })]));
    expect(JSON.stringify(draft)).toBe(before);
  });
});

describe('one decision', () => {
  test('confirm settles and says who', () => {
    const o = found(draft, 'o5', stamped([confirmation(draft, 'o5')]));
    expect(o).toMatchObject({ reviewState: 'confirmed', openFlags: [], decidedBy: { person: 'R. Inspector' } });
  });
  test('confirm with a change keeps what was there before', () => {
    const o = found(draft, 'o4', stamped([confirmation(draft, 'o4', { at: { was: 41, now: 42 } })]));
    expect(o).toMatchObject({ at: 42, atBasis: null, reviewState: 'confirmed', changed: { at: { was: 41 } } });
  });
  test('reject takes it out of what stands, and keeps it on record', () => {
    const reviewed = applyDecisions(draft, stamped([{ action: 'reject', subject: subjectOf(draft, 'o5') }]));
    expect(reviewed.observations).toHaveLength(9);
    expect(standingObservations(reviewed)).toHaveLength(8);
  });
  test('change answers one flag and leaves the others open', () => {
    const two = makeDraft({
      observations: draft.observations.map((o) =>
        o.id === 'o4' ? { ...o, review: [...o.review, { reason: 'hedged', about: 'status' }] } : o,
      ),
    });
    const answer: DecisionBody = {
      action: 'change',
      subject: subjectOf(two, 'o4'),
      changes: { at: { was: 41, now: 42 } },
    };
    expect(found(two, 'o4', stamped([answer]))).toMatchObject({
      at: 42,
      reviewState: 'open',
      openFlags: [{ reason: 'hedged' }],
    });
  });
  test('add from a stretch that was not placed settles the stretch', () => {
    const [stretch] = applyDecisions(draft, []).unplaced;
    const { observation } = addition(36, 'intrusion', 33);
    const reviewed = applyDecisions(draft, stamped([{ action: 'add', from: stretch!.subject, observation }]));
    expect(reviewed.unplaced[0]).toMatchObject({ reviewState: 'rejected', becameId: 'added-decision-1' });
    expect(reviewed.observations.find((o) => o.source === 'added')).toMatchObject({
      kind: 'intrusion',
      at: 33,
      reviewState: 'confirmed',
    });
    expect(reviewed.openCount).toBe(3);
  });
  test('an added one can be changed and rejected like any other', () => {
    const bodies: DecisionBody[] = [addition(36, 'intrusion', 33)];
    const added = applyDecisions(draft, stamped(bodies)).observations.find((o) => o.source === 'added')!;
    bodies.push({ action: 'change', subject: added.subject, changes: { at: { was: 33, now: 34 } } });
    expect(found(draft, added.id, stamped(bodies)).at).toBe(34);
    bodies.push({ action: 'reject', subject: added.subject });
    expect(found(draft, added.id, stamped(bodies)).reviewState).toBe('rejected');
  });
  test('merge keeps the talk of both and fills what only the other says', () => {
    const pair = makeDraft({
      observations: draft.observations.map((o) => (o.id === 'o3' ? { ...o, kind: 'roots', degree: 'heavy' } : o)),
    });
    const merged = applyDecisions(
      pair,
      stamped([{ action: 'merge', subject: subjectOf(pair, 'o2'), others: [subjectOf(pair, 'o3')] }]),
    );
    expect(merged.observations.find((o) => o.id === 'o3')).toBeUndefined();
    expect(merged.observations.find((o) => o.id === 'o2')).toMatchObject({
      degree: 'heavy',
      position: 'top',
      at: 23,
      again: [{ start: 16 }],
      reviewState: 'confirmed',
    });
  });
  test('split makes a second of its own', () => {
    const { observation } = addition(12, 'crack', 23);
    const reviewed = applyDecisions(
      draft,
      stamped([{ action: 'split', subject: subjectOf(draft, 'o2'), changes: {}, observation }]),
    );
    expect(reviewed.observations).toHaveLength(10);
    expect(reviewed.observations.find((o) => o.source === 'split')).toMatchObject({ kind: 'crack', at: 23 });
  });
  test('site and denial can be corrected', () => {
    const denial = applyDecisions(draft, []).absent[0]!;
    const reviewed = applyDecisions(
      draft,
      stamped([
        {
          action: 'confirm',
          subject: { what: 'site', name: 'address' },
          values: { value: '43 Alder Court' },
          changes: { value: { was: '41 Alder Court', now: '43 Alder Court' } },
        },
        { action: 'reject', subject: denial.subject },
      ]),
    );
    expect(reviewed.site.address).toMatchObject({
      value: '43 Alder Court',
      changed: { value: { was: '41 Alder Court' } },
    });
    expect(reviewed.absent[0]!.reviewState).toBe('rejected');
  });
});

describe('undo and redo', () => {
  const confirm = confirmation(draft, 'o5');
  test('go back one by one, without limit', () => {
    const bodies: DecisionBody[] = [confirm, { action: 'reject', subject: subjectOf(draft, 'o4') }];
    const undone: DecisionBody[] = [
      ...bodies,
      { action: 'undo', of: 'decision-2' },
      { action: 'undo', of: 'decision-1' },
    ];
    const after = applyDecisions(draft, stamped(undone));
    expect(after).toMatchObject({ openCount: 4, undoable: [], redoable: ['decision-2', 'decision-1'] });
    const redone = applyDecisions(draft, stamped([...undone, { action: 'redo', of: 'decision-1' }]));
    expect(redone.observations.find((o) => o.id === 'o5')!.reviewState).toBe('confirmed');
    expect(redone.redoable).toEqual(['decision-2']);
  });
  test('a new decision ends redoing', () => {
    const bodies: DecisionBody[] = [confirm, { action: 'undo', of: 'decision-1' }, confirm];
    expect(applyDecisions(draft, stamped(bodies)).redoable).toEqual([]);
  });
  test('undoing everything gives the draft again, whatever was decided', () => {
    const ids = draft.observations.map((o) => o.id);
    const body = fc.oneof(
      fc.constantFrom(...ids).map((id): DecisionBody => confirmation(draft, id)),
      fc.constantFrom(...ids).map((id): DecisionBody => ({ action: 'reject', subject: subjectOf(draft, id) })),
      fc
        .record({ id: fc.constantFrom(...ids), at: fc.integer({ min: 0, max: 90 }) })
        .map(({ id, at }): DecisionBody => {
          const was = draft.observations.find((o) => o.id === id)!.at;
          return { action: 'change', subject: subjectOf(draft, id), changes: { at: { was, now: at } } };
        }),
      fc.tuple(fc.constantFrom(...ids), fc.constantFrom(...ids)).map(
        ([a, b]): DecisionBody => ({
          action: 'merge',
          subject: subjectOf(draft, a),
          others: [subjectOf(draft, b)],
        }),
      ),
      fc
        .record({ run: fc.integer({ min: 1, max: 3 }), atSeconds: fc.integer({ min: 0, max: 90 }) })
        .map((where): DecisionBody => ({ action: 'start-run', lessFeet: 5, ...where })),
      fc.integer({ min: 0, max: 40 }).map((at) => addition(at, 'crack', at)),
    );
    const plain = applyDecisions(draft, []);
    fc.assert(
      fc.property(fc.array(body, { maxLength: 12 }), (bodies) => {
        const undone = bodies.map((_, i): DecisionBody => ({ action: 'undo', of: `decision-${bodies.length - i}` }));
        const reviewed = applyDecisions(draft, stamped([...bodies, ...undone]));
        expect({ ...reviewed, redoable: [] }).toEqual(plain);
        // And on the way there the result always fits the schema.
        reviewedSchema.parse(applyDecisions(draft, stamped(bodies)));
      }),
      { numRuns: 150 },
    );
  });
});

function addition(start: number, kind: 'intrusion' | 'crack', at: number) {
  const nothing = {
    to: null,
    position: null,
    clock: null,
    degree: null,
    percent: null,
    inches: null,
    material: null,
    diameterIn: null,
    fromMaterial: null,
    toMaterial: null,
    serves: null,
    angleDeg: null,
  };
  return {
    action: 'add' as const,
    from: null,
    observation: {
      run: 1,
      kind,
      status: 'present' as const,
      at,
      atBasis: null,
      ...nothing,
      heard: { start, end: start + 3, text: 'Something hanging down there.' },
    },
  };
}
