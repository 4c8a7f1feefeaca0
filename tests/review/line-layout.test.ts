import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutLine } from '../../shared/drawing/line-layout.ts';
import { makeDraft, makeObservation } from './make-inspection.ts';

const draft = makeDraft();
const run = draft.runs[0]!;
const options = { length: 520, labelGap: 20, tickGap: 40 };
const layout = layoutLine(run, draft.observations, options);

describe('the line', () => {
  test('is to scale, with the run’s end where it was said', () => {
    expect(layout.reach).toBe(52);
    expect(layout.endAlong).toBe(520);
    expect(layout.marks.map((mark) => [mark.at, mark.along])).toEqual([
      [0, 0],
      [23, 230],
      [30, 300],
      [41, 410],
      [45, 450],
      [52, 520],
    ]);
    expect(layout.ticks.map((tick) => tick.at)).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50]);
  });
  test('tells groups apart by shape, and doubt by more than colour', () => {
    expect(new Set(layout.marks.map((mark) => `${mark.group} ${mark.shape}`))).toEqual(
      new Set(['fitting square', 'defect diamond']),
    );
    expect(layout.marks.filter((mark) => mark.isSuspected).map((mark) => mark.title)).toEqual(['Crack']);
  });
  test('gives materials as stretches', () => {
    const changes = [
      makeObservation({ kind: 'material-change', at: 14.5, fromMaterial: 'cast-iron', toMaterial: 'clay' }),
      makeObservation({ id: 'o2', kind: 'liner-start', at: 26 }),
      makeObservation({ id: 'o3', kind: 'liner-end', at: 33 }),
    ];
    expect(layoutLine(run, changes, options).materials.map((m) => [m.from, m.to, m.material])).toEqual([
      [0, 14.5, 'cast-iron'],
      [14.5, 26, 'clay'],
      [26, 33, 'liner'],
      [33, 52, null],
    ]);
  });
  test('leaves out the rejected and other runs, and lists what has no distance', () => {
    const some = draft.observations.map((o) => ({
      ...o,
      reviewState: o.id === 'o2' ? ('rejected' as const) : ('unflagged' as const),
    }));
    expect(layoutLine(run, some, options).marks.map((mark) => mark.id)).not.toContain('o2');
    const second = layoutLine(draft.runs[1]!, some, options);
    expect([second.marks.length, second.withoutDistance.map((one) => one.title)]).toEqual([2, ['Belly']]);
  });
  test('labels never overlap, keep their order and stay on the axis while there is room', () => {
    const observations = fc.array(
      fc.record({ at: fc.integer({ min: 0, max: 200 }), to: fc.option(fc.integer({ min: 0, max: 200 })) }),
      { minLength: 1, maxLength: 26 },
    );
    fc.assert(
      fc.property(observations, (places) => {
        const all = places.map(({ at, to }, index) => makeObservation({ id: `o${index}`, at, to }));
        const { marks } = layoutLine({ ...run, end: null }, all, options);
        const labels = marks.map((mark) => mark.labelAlong);
        for (let i = 1; i < labels.length; i++) {
          expect(labels[i]! - labels[i - 1]!).toBeGreaterThanOrEqual(options.labelGap - 1e-6);
          expect(marks[i]!.along).toBeGreaterThanOrEqual(marks[i - 1]!.along);
        }
        expect(labels[0]).toBeGreaterThanOrEqual(-1e-6);
        expect(labels.at(-1)).toBeLessThanOrEqual(options.length + 1e-6);
      }),
      { numRuns: 200 },
    );
  });
  test('stretches that overlap take lanes of their own', () => {
    const all = [
      makeObservation({ id: 'a', at: 5, to: 20 }),
      makeObservation({ id: 'b', at: 10, to: 15 }),
      makeObservation({ id: 'c', at: 16, to: 30 }),
    ];
    expect(layoutLine(run, all, options).marks.map((mark) => mark.lane)).toEqual([0, 1, 1]);
  });
});
