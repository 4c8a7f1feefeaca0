import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { layLocalRules } from '../../src/6-grade/rule-set.ts';
import { gradeDraft } from './make-draft.ts';

const rule = {
  id: 'sag-under-25',
  kinds: ['belly'],
  when: [{ fact: 'waterShare', under: 25 }],
  severity: 'moderate',
  action: 'repair',
  limit: 'any standing water',
  source: 'Invented Sewer District, standard 4.2',
  why: 'New work must drain dry.',
};

const fileOf = (changes: object) =>
  JSON.stringify({ schema: 'lineword/rules@1', name: 'Standard 4', authority: 'Invented Sewer District', ...changes });

const belly = { observations: [{ kind: 'belly', percent: 10 }] } as const;

describe('a local rule file', () => {
  it('has an example that works', () => {
    const path = new URL('../../fixtures/local-rules/invented-district.json', import.meta.url);
    const rules = layLocalRules(readFileSync(path, 'utf8'), 'invented-district.json');
    const graded = gradeDraft(
      {
        observations: [
          { kind: 'belly', percent: 10 },
          { kind: 'wye', at: 20 },
        ],
      },
      {},
      rules,
    );
    expect(graded.rules.local).toMatchObject({
      replaced: ['sag-under-25'],
      added: ['district-downspout'],
      dropped: ['scale-excessive'],
      hasSlope: true,
    });
    expect(graded.findings.map((f) => f.grade!.again ?? f.grade!.next)).toEqual([
      'at the next sale',
      'Ask the district whether this drain may stay connected.',
    ]);
  });

  it('takes the place of a rule of the same id, and the grade says so', () => {
    const rules = layLocalRules(fileOf({ rules: [rule] }), 'rules.json');
    const graded = gradeDraft(belly, {}, rules);
    expect(graded.findings[0]!.grade).toMatchObject({ severity: 'moderate', action: 'repair', rule: 'sag-under-25' });
    expect(graded.rules.local).toMatchObject({
      authority: 'Invented Sewer District',
      replaced: ['sag-under-25'],
      added: [],
      dropped: [],
    });
    expect(graded.rules.used.find((r) => r.id === 'sag-under-25')!.source).toContain('Invented Sewer District');
  });

  it('can drop a rule and bring a slope table', () => {
    const slope = { rows: [{ upToIn: null, inchesPerFoot: 0.25 }], source: 'Invented Sewer District, 4.3' };
    const rules = layLocalRules(fileOf({ drop: ['roots-listed'], slope }), 'rules.json');
    const graded = gradeDraft(
      { observations: [{ kind: 'pipe', at: 0, material: 'pvc', diameterIn: 4 }, { kind: 'roots' }] },
      {},
      rules,
    );
    expect(graded.findings.find((f) => f.kind === 'roots')!.grade!.needsCorrection).toEqual([]);
    const fall = graded.runs[0]!.computations.find((c) => c.name === 'least fall by code')!;
    expect(fall.results[0]!.value).toBe(15);
    expect(fall.inputs[2]!.source).toBe('Invented Sewer District, 4.3');
  });

  it.each([
    ['not JSON', '{', /is not JSON/],
    ['a rule without a source', fileOf({ rules: [{ ...rule, source: '' }] }), /rules\.0\.source/],
    ['an unknown fact', fileOf({ rules: [{ ...rule, when: [{ fact: 'age', over: 40 }] }] }), /rules\.0\.when\.0\.fact/],
    ['a condition that compares nothing', fileOf({ rules: [{ ...rule, when: [{ fact: 'percent' }] }] }), /when\.0/],
    ['a misspelled field', fileOf({ rulez: [] }), /rulez/],
    ['one id twice', fileOf({ rules: [rule, rule] }), /one id to two rules/],
    ['dropping what is not there', fileOf({ drop: ['no-such-rule'] }), /no-such-rule/],
  ])('is refused with %s', (_name, text, message) => {
    expect(() => layLocalRules(text, 'rules.json')).toThrow(message);
  });
});
