import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { markTranscript } from '../../src/5-review/mark-transcript.ts';
import { stamped, subjectOf } from './make-decisions.ts';
import { makeDraft, wordsOf } from './make-inspection.ts';

const draft = makeDraft();
const reviewed = applyDecisions(draft, []);

describe('the marked talk', () => {
  test('has every word once and in order, whatever was cut out of the draft', () => {
    const words = wordsOf(draft);
    fc.assert(
      fc.property(fc.subarray(draft.observations), fc.subarray(draft.setAside), (observations, setAside) => {
        const some = applyDecisions({ ...draft, observations, setAside }, []);
        const text = markTranscript(words, some)
          .map((stretch) => stretch.text)
          .join(' ');
        expect(text).toBe(words.words.map((word) => word.text).join(' '));
      }),
      { numRuns: 60 },
    );
  });
  test('says of every stretch what it became', () => {
    const marks = markTranscript(wordsOf(draft), reviewed).map(({ marks: [mark] }) => `${mark!.what}: ${mark!.detail}`);
    expect(marks).toEqual([
      'site: address',
      'run: front cleanout',
      'observation: pipe',
      'observation: roots',
      'observation: offset-joint',
      'observation: wye',
      'observation: crack',
      'observation: main-connection',
      'absent: break',
      'unplaced: names no kind of thing',
      'set-aside: chat',
      'set-aside: teaching',
      'set-aside: plan',
      'run: roof vent',
      'observation: pipe',
      'observation: belly',
      'observation: bend',
    ]);
  });
  test('shows talk that the draft left out, and talk that was lost', () => {
    const words = { ...wordsOf(draft), lost: [{ startSeconds: 80, endSeconds: 84, why: 'too loud' }] };
    const without = applyDecisions({ ...draft, observations: draft.observations.filter((o) => o.id !== 'o3') }, []);
    const stretches = markTranscript(words, without);
    expect(stretches.find((one) => one.text.startsWith('Offset'))!.marks).toEqual([
      { what: 'nothing', key: null, detail: '' },
    ]);
    expect(stretches.at(-1)).toMatchObject({ text: '', marks: [{ what: 'lost', detail: 'too loud' }] });
  });
  test('follows decisions: rejected, dismissed, and one sentence that names two things', () => {
    const after = applyDecisions(
      draft,
      stamped([
        { action: 'reject', subject: subjectOf(draft, 'o2') },
        { action: 'confirm', subject: reviewed.unplaced[0]!.subject, values: {} },
      ]),
    );
    const marks = markTranscript(wordsOf(draft), after).flatMap((one) => one.marks.map((mark) => mark.what));
    expect(marks).toContain('rejected');
    expect(marks).toContain('dismissed');
    const two = [...draft.observations, { ...draft.observations[1]!, id: 'o10', kind: 'crack' as const }];
    const both = markTranscript(wordsOf(draft), applyDecisions({ ...draft, observations: two }, []));
    expect(both.find((one) => one.text.startsWith('23 feet'))!.marks.map((mark) => mark.detail)).toEqual([
      'roots',
      'crack',
    ]);
  });
  test('without words gives the stretches of the draft', () => {
    const stretches = markTranscript(null, reviewed);
    expect(stretches).toHaveLength(17);
    expect(stretches[0]).toMatchObject({ text: '41 Alder Court.', marks: [{ what: 'site' }] });
  });
});
