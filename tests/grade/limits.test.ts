import { describe, expect, it } from 'vitest';
import type { Finding } from '../../shared/schemas/grade.ts';
import { gradeDraft, gradeOne } from './make-draft.ts';

const castIron4 = { material: 'cast-iron', diameterIn: 4 } as const;
const clay6 = { material: 'clay', diameterIn: 6 } as const;
const inNeed = (finding: Finding) => finding.grade!.needsCorrection.length > 0;

describe('sags', () => {
  // Seattle Public Utilities, side sewer defects: under 25 % minor, 25 to 50 % moderate, 50 % and more severe.
  it.each([
    [24.9, 'minor', 'none'],
    [25, 'moderate', 'watch'],
    [49.9, 'moderate', 'watch'],
    [50, 'severe', 'clean'],
    [100, 'severe', 'clean'],
  ])('at %f percent of the diameter are %s', (percent, severity, action) => {
    const { grade } = gradeOne({ kind: 'belly', percent });
    expect([grade!.severity, grade!.action]).toEqual([severity, action]);
    expect(grade!.again).toBe(severity === 'moderate' ? 'every two to five years' : null);
  });

  // InterNACHI sewer scope SOP 3.1.3: "over 1 inch of standing water".
  it.each([
    [1, false],
    [1.1, true],
  ])('of %f inch are in need of correction: %s', (inches, expected) => {
    expect(inNeed(gradeOne({ kind: 'belly', inches }, clay6))).toBe(expected);
  });

  // 1.00 in is 25.4 % of 3.94 in, 24.8 % of 4.026 in, 16.8 % of 5.94 in: the pipe decides the tier, not the inch.
  it.each([
    [castIron4, 'moderate', 25.4],
    [{ material: 'pvc', diameterIn: 4 } as const, 'minor', 24.8],
    [{ material: 'cast-iron', diameterIn: 6 } as const, 'minor', 16.8],
  ])('of one inch are graded by the true bore of %o', (pipe, severity, share) => {
    const finding = gradeOne({ kind: 'belly', inches: 1 }, pipe);
    expect(finding.grade!.severity).toBe(severity);
    const result = finding.computations[0]!.results.find((r) => r.name === 'share of the diameter')!;
    expect(result.value).toBeCloseTo(share, 1);
  });

  it('take the larger of a said share and a share worked out from inches, and say that they differ', () => {
    const finding = gradeOne({ kind: 'belly', inches: 1, percent: 60 }, clay6);
    expect(finding.grade!.severity).toBe('severe');
    expect(finding.computations[0]!.note).toContain('60 % was said');
  });

  it('without any depth are not graded, and say what is missing', () => {
    const { grade } = gradeOne({ kind: 'belly' });
    expect([grade!.severity, grade!.action]).toEqual([null, 'settle']);
    expect(grade!.next).toContain('depth of the water measured');
  });

  it('with inches in a pipe of unknown size are not given a share', () => {
    const finding = gradeOne({ kind: 'belly', inches: 2 }, { material: 'clay' });
    expect(finding.grade!.severity).toBeNull();
    expect(inNeed(finding)).toBe(true);
    expect(finding.computations).toEqual([]);
  });
});

describe('offset joints', () => {
  // InterNACHI sewer scope SOP 3.1.3: "any offset over ¼-inch".
  it.each([
    [0.25, false],
    [0.26, true],
  ])('of %f inch are in need of correction: %s', (inches, expected) => {
    expect(inNeed(gradeOne({ kind: 'offset-joint', inches }))).toBe(expected);
  });

  // Seattle Public Utilities and City of Tacoma: exposed soil makes it severe and to be repaired; debris without
  // exposed soil moderate, to be looked at in a few years; neither minor, no repair.
  it('are severe where soil shows, whatever their size', () => {
    const answer = { observation: 'o2', kind: 'offset-joint', run: 1, at: 10, soilExposed: true } as const;
    const { grade } = gradeOne({ kind: 'offset-joint', inches: 0.1 }, undefined, { answers: [answer] });
    expect([grade!.severity, grade!.action, grade!.rule]).toEqual(['severe', 'repair', 'offset-soil-exposed']);
  });

  it('are minor without soil and without debris', () => {
    const answer = { observation: 'o2', kind: 'offset-joint', run: 1, at: 10, soilExposed: false } as const;
    const { grade } = gradeOne({ kind: 'offset-joint', inches: 0.5 }, undefined, { answers: [answer] });
    expect([grade!.severity, grade!.action]).toEqual(['minor', 'none']);
    // The two published lists disagree here, and both are kept.
    expect(grade!.needsCorrection).toEqual(['offset-over-quarter-inch']);
  });

  it('are severe where a void was seen, without saying that soil shows', () => {
    const graded = gradeDraft({ observations: [{ kind: 'offset-joint' }, { kind: 'void', at: 10.5 }] });
    const { grade } = graded.findings.find((f) => f.kind === 'offset-joint')!;
    expect([grade!.severity, grade!.rule]).toEqual(['severe', 'offset-void']);
    expect(grade!.rulesHeld).not.toContain('offset-soil-exposed');
  });

  it('are not graded when neither size nor soil was said', () => {
    const { grade } = gradeOne({ kind: 'offset-joint' });
    expect([grade!.severity, grade!.action]).toEqual([null, 'settle']);
  });
});

describe('pipe out of round', () => {
  // 5 %: Ten States Standards (from memory). 7.5 %: Uni-Bell UNI-TR-1 as cited by a pipe maker. 30 %: reverse
  // curvature, restated from Uni-Bell.
  it.each([
    [5, 'minor', 'none'],
    [5.1, 'minor', 'watch'],
    [7.5, 'minor', 'watch'],
    [7.6, 'moderate', 'repair'],
    [29.9, 'moderate', 'repair'],
    [30, 'severe', 'repair'],
  ])('by %f percent is %s', (percent, severity, action) => {
    const { grade } = gradeOne({ kind: 'deformation', percent });
    expect([grade!.severity, grade!.action]).toEqual([severity, action]);
  });

  it('is graded by what was measured, shown with its inputs', () => {
    const meant = { observation: 'o2', kind: 'deformation', run: 1, at: 10 } as const;
    const measured = { ...meant, heightIn: 3.62, widthIn: 4.4 };
    const finding = gradeOne({ kind: 'deformation', percent: 5 }, undefined, { answers: [measured] });
    // (4.026 − 3.62) ÷ 4.026 = 10.08 %; mean 4.01, (4.01 − 3.62) ÷ 4.01 = 9.73 %.
    const results = finding.computations[0]!.results.map((r) => [r.name, Math.round(r.value * 100) / 100]);
    expect(results).toEqual([
      ['deflection', 10.08],
      ['ovality', 9.73],
    ]);
    expect(finding.grade!.rule).toBe('deformation-over-7-5');
  });
});

describe('open joints', () => {
  // Carmel Area Wastewater District lets 1/2 in pass on new 6 to 10 in lines; the steps above it are common practice.
  it.each([
    [0.5, 'minor'],
    [0.51, 'moderate'],
    [1, 'severe'],
  ])('of %f inch are %s and always on the list', (inches, severity) => {
    const finding = gradeOne({ kind: 'open-joint', inches });
    expect(finding.grade!.severity).toBe(severity);
    expect(inNeed(finding)).toBe(true);
  });
});

describe('the list of things in need of correction', () => {
  // InterNACHI sewer scope SOP 3.1.3.
  it.each(['crack', 'roots', 'blockage', 'collapse', 'break', 'open-joint', 'deformation', 'liner-defect'] as const)(
    'has %s whatever the size',
    (kind) => {
      expect(inNeed(gradeOne({ kind }))).toBe(true);
    },
  );

  it.each(['scale', 'grease'] as const)('has %s only when it is excessive', (kind) => {
    expect(inNeed(gradeOne({ kind, degree: 'heavy' }))).toBe(true);
    expect(inNeed(gradeOne({ kind, degree: 'light' }))).toBe(false);
  });
});

describe('what must be acted on at once', () => {
  // German federal guidelines for sewers (BFR Abwasser): function stopped, near-collapse, voids.
  it.each(['collapse', 'void', 'blockage'] as const)('includes %s', (kind) => {
    expect(gradeOne({ kind }).grade!.action).toBe('act-now');
  });
});

describe('infiltration', () => {
  // BFR Abwasser: soil washing in is acted on at once.
  it('is acted on at once where soil comes in, and not for water alone', () => {
    const answer = { observation: 'o2', kind: 'infiltration', run: 1, at: 10, soilExposed: true } as const;
    expect(gradeOne({ kind: 'infiltration' }).grade!.action).toBe('repair');
    expect(gradeOne({ kind: 'infiltration' }, undefined, { answers: [answer] }).grade!.action).toBe('act-now');
  });
});

describe('materials', () => {
  // InterNACHI sewer scope SOP 3.1.4 and 1.2: they inform, and neither they nor age raise a grade.
  it.each(['bituminous-fiber', 'asbestos-cement'] as const)('%s inform and take no severity', (material) => {
    const { grade } = gradeOne({ kind: 'pipe', at: 5, material });
    expect([grade!.severity, grade!.isInformation]).toEqual([null, true]);
  });

  it('other materials take no grade at all', () => {
    expect(gradeOne({ kind: 'pipe', at: 5, material: 'clay' }).grade).toBeNull();
  });
});
