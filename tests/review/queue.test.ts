import { describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { itemsByKey, nextOpen, queueOf } from '../../src/5-review/queue.ts';
import { confirmation, stamped } from './make-decisions.ts';
import { flags, makeDraft } from './make-inspection.ts';

const draft = makeDraft();
const queueAfter = (bodies: DecisionBody[]) => queueOf(itemsByKey(applyDecisions(draft, stamped(bodies))));

describe('the queue', () => {
  const queue = queueAfter([]);
  test('has the flagged by run and distance, then talk not placed, then the drawn', () => {
    const flagged = queue.filter((item) => item.why === 'flagged');
    expect(queue.slice(0, flagged.length)).toEqual(flagged);
    expect(flagged.map((item) => (item.what === 'observation' ? item.item.id : item.what))).toEqual([
      'o4',
      'o5',
      'o8',
      'unplaced',
    ]);
    expect(queue.slice(flagged.length).map((item) => item.why)).toEqual(Array(5).fill('listen'));
  });
  test('puts what has no distance where it was said', () => {
    const observations = draft.observations.map((o) =>
      o.id === 'o3' ? { ...o, at: null, review: [flags.missing] } : o,
    );
    const ids = queueOf(itemsByKey(applyDecisions({ ...draft, observations }, []))).flatMap((item) =>
      item.what === 'observation' && item.why === 'flagged' ? [item.item.id] : [],
    );
    expect(ids).toEqual(['o3', 'o4', 'o5', 'o8']);
  });
  test('begins with flagged site fields and runs', () => {
    const flagged = makeDraft({
      site: { address: { ...draft.site.address!, review: [{ reason: 'word-unsure' }] } },
      runs: draft.runs.map((run) =>
        run.n === 1 ? { ...run, review: [{ reason: 'run-unsure', about: 'direction' }] } : run,
      ),
    });
    const first = queueOf(itemsByKey(applyDecisions(flagged, []))).slice(0, 3);
    expect(first.map((item) => item.what)).toEqual(['site', 'run', 'observation']);
  });
  test('keeps settled items in their place, and goes to the next that is open, round the end', () => {
    const after = queueAfter([confirmation(draft, 'o5')]);
    expect(after.map((item) => item.key)).toEqual(queue.map((item) => item.key));
    expect(nextOpen(after, after[0]!.key)!.key).toBe(after[2]!.key);
    expect(nextOpen(after, after.at(-1)!.key)!.key).toBe(after[0]!.key);
    expect(nextOpen(after, null)!.key).toBe(after[0]!.key);
  });
  test('ends when all is settled', () => {
    const all: DecisionBody[] = queue.map((item) => ({
      action: 'confirm',
      subject: item.item.subject,
      values: {},
    }));
    expect(nextOpen(queueAfter(all), null)).toBeNull();
  });
});
