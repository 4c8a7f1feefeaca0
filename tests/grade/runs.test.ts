import { describe, expect, it } from 'vitest';
import { gradeDraft } from './make-draft.ts';

const pipes = [
  { kind: 'pipe', at: 0, material: 'cast-iron', diameterIn: 4 },
  { kind: 'material-change', at: 19.5, fromMaterial: 'cast-iron', toMaterial: 'clay' },
  { kind: 'pipe', at: 19.5, material: 'clay', diameterIn: 6 },
] as const;

describe('a run', () => {
  it('knows what the pipe is made of along it, and the share of each material', () => {
    const [run] = gradeDraft({ observations: pipes, runs: [{ end: { at: 39, reason: 'main' } }] }).runs;
    expect(run!.stretches).toEqual([
      { fromFeet: 0, toFeet: 19.5, material: 'cast-iron', nominalIn: 4 },
      { fromFeet: 19.5, toFeet: 39, material: 'clay', nominalIn: 6 },
    ]);
    const shares = run!.computations.find((c) => c.name === 'share of the line in each material')!;
    expect(shares.results.map((r) => [r.name, r.value])).toEqual([
      ['cast iron', 50],
      ['clay', 50],
    ]);
  });

  it('says how far the camera came, what it did not see, and what lies beyond', () => {
    const [run] = gradeDraft({
      runs: [{ end: { at: 48, reason: 'stopped' } }],
      observations: [
        { kind: 'view-lost', at: 10, to: 14 },
        { kind: 'view-lost', at: 12, to: 15 },
        { kind: 'stopped', at: 48 },
      ],
    }).runs;
    expect([run!.reachedFeet, run!.seenFeet]).toEqual([48, 43]);
    expect(run!.notSeen.map((s) => [s.fromFeet, s.toFeet])).toEqual([
      [10, 14],
      [12, 15],
      [48, null],
    ]);
  });

  it('gives no length seen when it was not said where the view came back', () => {
    const [run] = gradeDraft({ observations: [{ kind: 'view-lost', at: 10 }] }).runs;
    expect(run!.seenFeet).toBeNull();
  });

  it('counts from the entry when the counter did not start there', () => {
    const graded = gradeDraft(
      { observations: [...pipes, { kind: 'roots', at: 41.2 }], runs: [{ end: { at: 60, reason: 'main' } }] },
      { runs: [{ n: 1, entryOffset: 3.5 }] },
    );
    expect(graded.runs[0]!.reachedFeet).toBe(56.5);
    expect(graded.runs[0]!.stretches[0]).toEqual({ fromFeet: 0, toFeet: 16, material: 'cast-iron', nominalIn: 4 });
    expect(graded.findings.find((f) => f.kind === 'roots')!.at).toMatchObject({ feet: 37.7, counterFeet: 41.2 });
  });

  it('without any distance is graded all the same', () => {
    const graded = gradeDraft({
      runs: [{ end: null }],
      observations: [{ kind: 'hole', at: null, atBasis: null }],
    });
    expect(graded.runs[0]).toMatchObject({ reachedFeet: null, seenFeet: null, stretches: [] });
    expect(graded.findings[0]!.grade!.severity).toBe('severe');
  });

  it('does not carry a size over to another material', () => {
    const [run] = gradeDraft({
      observations: [
        { kind: 'pipe', at: 0, material: 'cast-iron', diameterIn: 4 },
        { kind: 'pipe', at: 20, material: 'clay' },
      ],
    }).runs;
    expect(run!.stretches[1]).toMatchObject({ material: 'clay', nominalIn: null });
  });
});

describe('whose part it is', () => {
  const observations = [
    { kind: 'crack', at: 20 },
    { kind: 'crack', at: 40.5 },
    { kind: 'crack', at: 50 },
    { kind: 'main-connection', at: 60 },
  ] as const;
  const partsWith = (facts: Parameters<typeof gradeDraft>[1]) =>
    gradeDraft({ observations }, facts).findings.map((f) => f.part);

  it('is not assumed', () => {
    expect(new Set(partsWith({}))).toEqual(new Set(['not-stated']));
    expect(new Set(partsWith({ ownerPart: { endsAt: 'property-line' } }))).toEqual(new Set(['not-stated']));
  });

  it('goes by the stated distance, and admits what the counter cannot tell', () => {
    expect(partsWith({ ownerPart: { endsAt: 'property-line' }, runs: [{ n: 1, ownerEndsAt: 40 }] })).toEqual([
      'owner',
      'near-boundary',
      'beyond-owner',
      'beyond-owner',
    ]);
  });

  it('reaches to the main, the tap only when that was stated', () => {
    // Santa Barbara: owner up to and including the tap. Tacoma: the city keeps tees, wyes and risers at the main.
    expect(partsWith({ ownerPart: { endsAt: 'main' } })).toEqual(['owner', 'owner', 'owner', 'near-boundary']);
    expect(partsWith({ ownerPart: { endsAt: 'main-with-tap' } })).toEqual(['owner', 'owner', 'owner', 'owner']);
  });

  it('is counted the other way round on a run toward the house', () => {
    const graded = gradeDraft(
      {
        observations: [
          { kind: 'crack', at: 10 },
          { kind: 'crack', at: 30 },
        ],
        runs: [{ direction: 'upstream' }],
      },
      { runs: [{ n: 1, ownerEndsAt: 20 }] },
    );
    expect(graded.findings.map((f) => f.part)).toEqual(['beyond-owner', 'owner']);
  });
});
