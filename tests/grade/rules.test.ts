import { describe, expect, it } from 'vitest';
import { factNames } from '../../shared/schemas/grade-rule.ts';
import { roles } from '../../shared/vocabulary/grading/roles.ts';
import { gradeRules } from '../../shared/vocabulary/grading/rules/index.ts';
import { settlingSteps } from '../../shared/vocabulary/grading/settling.ts';
import { kindNames, kinds } from '../../shared/vocabulary/kinds/index.ts';
import { conditionHolds, decidingRule, rulesThatHold } from '../../src/6-grade/choose-grade.ts';
import type { Facts } from '../../src/6-grade/facts.ts';

const defects = kinds.filter((kind) => kind.group === 'defect').map((kind) => kind.name);

/** Every mixture of facts that can be said of a defect, with values on both sides of every limit. */
function* allFacts(): Generator<Facts> {
  const shares = [undefined, 0, 5, 7.5, 10, 24.9, 25, 49, 50, 100];
  const degrees = [undefined, 'light', 'moderate', 'heavy'];
  const sizes = [undefined, 0.25, 0.5, 0.8, 1, 3];
  const known = [undefined, true, false];
  for (const percent of shares)
    for (const degree of degrees)
      for (const inches of sizes)
        for (const soilExposed of known)
          for (const near of [undefined, true, false]) {
            const facts: Facts = {};
            if (percent !== undefined) Object.assign(facts, { percent, waterShare: percent });
            if (degree !== undefined) facts.degree = degree;
            if (inches !== undefined) Object.assign(facts, { inches, boreShare: inches * 25 });
            if (soilExposed !== undefined) facts.soilExposed = soilExposed;
            if (near !== undefined)
              Object.assign(facts, { solidsNear: near, rootsNear: near, voidNear: near, stopsCamera: near });
            yield facts;
          }
}

describe('the rule table', () => {
  it('gives every rule an id of its own, a limit, a source and a reason', () => {
    expect(new Set(gradeRules.map((rule) => rule.id)).size).toBe(gradeRules.length);
    for (const rule of gradeRules) {
      expect(rule.source.length, rule.id).toBeGreaterThan(5);
      expect(rule.why, rule.id).toMatch(/^[A-Z].*\.$/);
      expect(rule.limit, rule.id).not.toMatch(/\.$/);
    }
  });

  it('asks about no fact of age', () => {
    // InterNACHI sewer scope SOP 1.2: age alone is no defect. A rule can only ask for these facts.
    expect(factNames.filter((fact) => /age|year|old/.test(fact))).toEqual([]);
  });

  it('says of each rule without a published limit that it is common practice', () => {
    const published = /Seattle|Tacoma|InterNACHI|BFR|Carmel|Ten States|Uni-Bell/;
    for (const rule of gradeRules) {
      const isMarked = rule.source.includes('common practice');
      expect(isMarked || published.test(rule.source), rule.id).toBe(true);
    }
  });

  it.each(defects)('always says something of %s, whatever is known of it', (kind) => {
    for (const facts of allFacts()) {
      const rule = decidingRule(rulesThatHold(kind, facts, gradeRules));
      const isAnswer = rule !== null && (rule.severity !== null || rule.action === 'settle');
      expect(isAnswer, JSON.stringify(facts)).toBe(true);
    }
  });

  it.each(defects)('never makes %s milder when more of it is seen', (kind) => {
    const severityAt = (percent: number) => {
      const rule = decidingRule(rulesThatHold(kind, { percent, waterShare: percent }, gradeRules));
      return ['minor', 'moderate', 'severe'].indexOf(rule?.severity ?? '');
    };
    for (let percent = 1; percent <= 100; percent += 1)
      expect(severityAt(percent)).toBeGreaterThanOrEqual(severityAt(percent - 1));
  });

  it('names the trade that its step names', () => {
    for (const rule of gradeRules) {
      const report = kinds.find((kind) => kind.name === rule.kinds[0])!.report;
      const step = rule.next ?? report.next;
      if (rule.severity === null || !/^Have a licensed/.test(step)) continue;
      const isByPlumber = rule.trade === 'plumber' || rule.action === 'repair' || rule.action === 'act-now';
      expect(isByPlumber, rule.id).toBe(true);
    }
    for (const step of Object.values(settlingSteps))
      expect(step.trade === 'plumber').toBe(/licensed|gas utility/.test(step.step));
  });

  it('uses only kinds that there are', () => {
    const names = new Set<string>(kindNames);
    for (const role of Object.values(roles)) for (const kind of role) expect(names.has(kind)).toBe(true);
  });
});

describe('a condition', () => {
  it('keeps to its limit when a share carries the noise of binary fractions', () => {
    // 1.0065 / 4.026 is 0.25 but for noise.
    const share = ((0.1 + 0.2) / 1.2) * 100;
    expect(share).not.toBe(25);
    expect(conditionHolds({ fact: 'waterShare', under: 25 }, { waterShare: share })).toBe(false);
    expect(conditionHolds({ fact: 'waterShare', atLeast: 25 }, { waterShare: share })).toBe(true);
    expect(conditionHolds({ fact: 'inches', over: 0.25 }, { inches: 0.25 })).toBe(false);
  });

  it('does not hold for a fact nobody knows, unless it asks for that', () => {
    expect(conditionHolds({ fact: 'inches', under: 5 }, {})).toBe(false);
    expect(conditionHolds({ fact: 'soilExposed', is: [false] }, {})).toBe(false);
    expect(conditionHolds({ fact: 'soilExposed', known: false }, {})).toBe(true);
  });
});
