import { describe, expect, it } from 'vitest';
import type { Decision } from '../../shared/schemas/decision.ts';
import { gradedSchema } from '../../shared/schemas/grade.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { gradeObservations } from '../../src/6-grade/grade-observations.ts';
import { ownRuleSet } from '../../src/6-grade/rule-set.ts';
import { gradeDraft, makeDraft, makeInspection } from './make-draft.ts';

const flag = { reason: 'distance-unsure', about: 'at', detail: 'heard "41", could be "42"' } as const;

describe('what is graded', () => {
  it('is what was confirmed or not flagged; open items are kept and not graded', () => {
    const graded = gradeDraft({ observations: [{ kind: 'hole' }, { kind: 'hole', at: 20, review: [flag] }] });
    expect(graded.findings.map((f) => [f.reviewState, f.grade?.severity ?? null])).toEqual([
      ['unflagged', 'severe'],
      ['open', null],
    ]);
    expect(graded.findings[1]!.review).toEqual([flag]);
  });

  it('is not what was rejected', () => {
    const draft = makeDraft({ observations: [{ kind: 'hole' }, { kind: 'roots', at: 20, review: [flag] }] });
    const roots = draft.observations[1]!;
    const reject = {
      action: 'reject',
      subject: { what: 'observation', kind: 'roots', at: 20, words: roots.heard.text, nth: 0 },
      n: 1,
      id: 'd1',
      time: '2026-03-04T10:00:00Z',
      person: 'R. Vance',
      previous: null,
    } satisfies Decision;
    const graded = gradeObservations(applyDecisions(draft, [reject]), makeInspection(), ownRuleSet());
    expect(graded.findings.map((f) => f.kind)).toEqual(['hole']);
  });

  it('a suspicion gets the step that would settle it, and no severity', () => {
    const graded = gradeDraft({ observations: [{ kind: 'void', status: 'suspected' }] });
    const { grade } = graded.findings[0]!;
    expect([grade!.severity, grade!.action, grade!.rule]).toEqual([null, 'settle', null]);
    expect(grade!.next).toContain('probe the ground');
  });

  it('an open or suspected neighbor raises no grade', () => {
    for (const doubt of [{ review: [flag] }, { status: 'suspected' as const }]) {
      const graded = gradeDraft({ observations: [{ kind: 'fracture' }, { kind: 'void', ...doubt }] });
      expect(graded.findings.find((f) => f.kind === 'fracture')!.grade!.severity).toBe('moderate');
    }
    const sure = gradeDraft({ observations: [{ kind: 'fracture' }, { kind: 'void' }] });
    expect(sure.findings.find((f) => f.kind === 'fracture')!.grade!.severity).toBe('severe');
  });

  it('an unconfirmed pipe size makes no share', () => {
    const graded = gradeDraft({
      observations: [
        { kind: 'pipe', at: 0, material: 'pvc', diameterIn: 4, review: [flag] },
        { kind: 'belly', inches: 2 },
      ],
    });
    expect(graded.findings.find((f) => f.kind === 'belly')!.grade!.severity).toBeNull();
  });

  it('a year built of 1890 changes nothing', () => {
    // InterNACHI sewer scope SOP 1.2.
    const observations = [{ kind: 'crack', degree: 'light' }] as const;
    const old = gradeDraft({ observations, site: { address: '7 Plover Lane', year_built: 1890 } });
    const plain = gradeDraft({ observations });
    expect(old.findings[0]!.grade).toEqual(plain.findings[0]!.grade);
  });

  it('fits the schema and reads back the same', () => {
    const graded = gradeDraft({
      observations: [
        { kind: 'belly', at: 20, to: 30, percent: 40 },
        { kind: 'wye', at: 5 },
      ],
    });
    expect(gradedSchema.parse(JSON.parse(JSON.stringify(graded)))).toEqual(graded);
  });
});

describe("the inspector's own grade", () => {
  const own = {
    observation: 'o1',
    kind: 'roots',
    run: 1,
    at: 10,
    severity: 'minor',
    action: 'watch',
    reason: 'A few hair roots.',
    by: 'R. Vance',
  } as const;

  it('stands above the rules, and what they gave is kept', () => {
    const graded = gradeDraft({ observations: [{ kind: 'roots', percent: 60 }] }, { ownGrades: [own] });
    const { grade } = graded.findings[0]!;
    expect([grade!.severity, grade!.action]).toEqual(['minor', 'watch']);
    expect(grade!.own).toEqual({
      reason: 'A few hair roots.',
      by: 'R. Vance',
      rulesGave: { severity: 'severe', action: 'clean' },
    });
    expect(grade!.needsCorrection).toEqual(['roots-listed']);
  });

  it('is refused when a new draft has given its id to something else', () => {
    expect(() => gradeDraft({ observations: [{ kind: 'hole' }] }, { ownGrades: [own] })).toThrow(/fits no observation/);
  });

  it('follows its finding when a new draft gives it another id', () => {
    const graded = gradeDraft({ observations: [{ kind: 'wye', at: 3 }, { kind: 'roots' }] }, { ownGrades: [own] });
    expect(graded.findings.find((f) => f.kind === 'roots')!.grade!.own!.reason).toBe('A few hair roots.');
  });
});

describe('questions', () => {
  it('ask about soil at an offset until it is answered', () => {
    const observations = [{ kind: 'offset-joint', inches: 0.5 }] as const;
    const soil = (graded: ReturnType<typeof gradeDraft>) => graded.questions.filter((q) => q.about === 'soil');
    expect(soil(gradeDraft({ observations })).map((q) => q.observation)).toEqual(['o1']);
    const answer = { observation: 'o1', kind: 'offset-joint', run: 1, at: 10, soilExposed: false } as const;
    expect(soil(gradeDraft({ observations }, { answers: [answer] }))).toEqual([]);
  });

  it('ask for what the report must state, until it is stated', () => {
    const observations = [{ kind: 'hole' }] as const;
    const about = (facts: Parameters<typeof gradeDraft>[1]) =>
      gradeDraft({ observations }, facts).questions.map((q) => q.about);
    expect(about({})).toEqual(['date', 'inspector', 'ownerPart', 'compass', 'entryOffset']);
    const all = {
      date: '2026-03-04',
      inspector: { name: 'R. Vance' },
      ownerPart: { endsAt: 'main' as const },
      runs: [{ n: 1, compass: 'north side', entryOffset: 0 }],
    };
    expect(about(all)).toEqual([]);
  });
});
