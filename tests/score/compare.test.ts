/** The scorer's judgements, one at a time, and the figures that follow from them. */
import { describe, expect, it } from 'vitest';
import { type Draft, draftSchema } from '../../shared/schemas/draft.ts';
import { compareWithGold } from '../../src/score/compare.ts';
import { goldSchema } from '../../src/score/gold.ts';
import { summarize } from '../../src/score/summary.ts';

const gold = goldSchema.parse({
  runs: [
    { direction: 'downstream', end: { at: 56 } },
    { direction: 'upstream', end: null },
  ],
  observations: [
    { run: 1, kind: 'roots', at: 22, position: 'top', percent: 25, heard: [10, 14] },
    { run: 1, kind: 'belly', at: 38, to: 44, heard: [20, 25] },
    { run: 1, kind: 'crack', status: 'suspected', at: 49, clock: 3, heard: [30, 33] },
    { run: 2, kind: 'debris', at: null, heard: [50, 52] },
  ],
  absent: [{ run: 1, kind: 'break' }],
});

const heard = (start: number, end: number) => ({ start, end, text: 'said' });
const right = [
  { run: 1, kind: 'roots', at: 22.25, clock: 12, percent: 30, heard: heard(10, 14) },
  { run: 1, kind: 'belly', at: 38, to: 44.2, heard: heard(20, 25) },
  { run: 1, kind: 'crack', status: 'suspected', at: 49, position: 'side', heard: heard(30, 33) },
  { run: 2, kind: 'debris', heard: heard(50, 52) },
];

function draftOf(observations: object[], more: object = {}): Draft {
  return draftSchema.parse({
    schema: 'lineword/draft@1',
    recording: { file: 'x', sha256: '0', seconds: 60 },
    runs: [
      { n: 1, access: null, direction: 'downstream', heard: null, end: { at: 56.1, reason: 'main' } },
      { n: 2, access: null, direction: 'upstream', heard: null, end: null },
    ],
    observations: observations.map((o, i) => ({ id: `o${i}`, status: 'present', confidence: 0.9, review: [], ...o })),
    absent: [{ run: 1, kind: 'break', heard: heard(1, 2) }],
    unplaced: [],
    setAside: [],
    ...more,
  });
}

const countsOf = (observations: object[], more?: object) => compareWithGold(gold, draftOf(observations, more)).counts;
const flag = { review: [{ reason: 'hedged' }] };

describe('compareWithGold', () => {
  it('takes what is near enough: a quarter foot, five percent, an hour for a side', () => {
    const compared = compareWithGold(gold, draftOf(right));
    expect(compared.notes).toEqual([]);
    expect(summarize(compared.counts)).toEqual({
      f1: 1,
      precision: 1,
      recall: 1,
      kindF1: 1,
      attributes: 1,
      silentWrong: 0,
      silentMiss: 0,
      review: 0,
      absentF1: 1,
      runs: 1,
      ends: 1,
    });
  });

  it('counts a wrong distance as a miss and an extra, and as silent only without a flag', () => {
    const [roots, ...others] = right;
    expect(countsOf([{ ...roots, at: 22.3 }, ...others])).toMatchObject({
      hit: 3,
      kindHit: 4,
      silentWrong: 1,
      silentMiss: 1,
    });
    expect(countsOf([{ ...roots, at: 22.3, ...flag }, ...others])).toMatchObject({
      hit: 3,
      silentWrong: 0,
      silentMiss: 0,
    });
  });

  it('holds a wrong attribute against the item that carries it', () => {
    const [roots, ...others] = right;
    const { counts, notes } = compareWithGold(gold, draftOf([{ ...roots, percent: 50 }, ...others]));
    expect(counts).toMatchObject({ hit: 4, silentWrong: 1, attr: counts.attrOk + 1 });
    expect(notes).toEqual(['attribute percent: 50 for 25 (roots at 22)']);
  });

  it('forgives a miss that was laid before the inspector', () => {
    const unplaced = [{ heard: heard(9.5, 11), why: 'no distance' }];
    expect(countsOf(right.slice(1))).toMatchObject({ silentMiss: 1 });
    expect(countsOf(right.slice(1), { unplaced })).toMatchObject({ silentMiss: 0, unplaced: 1 });
  });

  it('accepts no distance where none was said, and one only under review', () => {
    const debris = right[3]!;
    expect(countsOf([...right.slice(0, 3), { ...debris, at: 8 }]).hit).toBe(3);
    expect(countsOf([...right.slice(0, 3), { ...debris, at: 8, ...flag }]).hit).toBe(4);
  });

  it('does not count a pipe that only repeats a change of material', () => {
    const change = { run: 1, kind: 'material-change', at: 17, toMaterial: 'clay', heard: heard(5, 6) };
    const pipe = { run: 1, kind: 'pipe', at: 17, material: 'clay', heard: heard(5, 6) };
    expect(countsOf([...right, change, pipe]).pred).toBe(5);
    expect(countsOf([...right, change, { ...pipe, at: 18 }]).pred).toBe(6);
  });

  it('counts everything as missed, silently, when there is no draft', () => {
    expect(compareWithGold(gold, null).counts).toMatchObject({ gold: 4, pred: 0, hit: 0, silentMiss: 4, runsOk: 0 });
  });

  it('gives no run as right when their number is wrong', () => {
    expect(countsOf(right, { runs: [] })).toMatchObject({ runs: 2, runsOk: 0, ends: 1, endsOk: 0 });
  });
});
