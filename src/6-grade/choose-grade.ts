/** Which rules hold for a set of facts, and which of them gives the grade. */
import type { Condition, GradeRule } from '../../shared/schemas/grade-rule.ts';
import { actions, severityNames } from '../../shared/vocabulary/grading/levels.ts';
import type { Facts } from './facts.ts';

/** Binary fractions must not push a share over or under a published limit. */
const noise = 1e-9;

export function conditionHolds(condition: Condition, facts: Facts): boolean {
  const fact = facts[condition.fact];
  if (condition.known !== undefined && condition.known !== (fact !== undefined)) return false;
  if (condition.known === false) return true;
  if (fact === undefined) return false;
  if (condition.is !== undefined && !condition.is.includes(fact)) return false;
  const isCompared = [condition.over, condition.atLeast, condition.under, condition.atMost].some(
    (v) => v !== undefined,
  );
  if (!isCompared) return true;
  if (typeof fact !== 'number') return false;
  return (
    (condition.over === undefined || fact > condition.over + noise) &&
    (condition.atLeast === undefined || fact >= condition.atLeast - noise) &&
    (condition.under === undefined || fact < condition.under - noise) &&
    (condition.atMost === undefined || fact <= condition.atMost + noise)
  );
}

export function rulesThatHold(kind: string, facts: Facts, rules: readonly GradeRule[]): GradeRule[] {
  return rules.filter(
    (rule) =>
      rule.kinds.some((name) => name === kind) && rule.when.every((condition) => conditionHolds(condition, facts)),
  );
}

/**
 * The rule that gives the grade: the most severe, then the most urgent, then the first in the table. A rule that only
 * puts a finding on a published list gives a grade only when no other holds.
 */
export function decidingRule(held: readonly GradeRule[]): GradeRule | null {
  const weight = (rule: GradeRule) => {
    const severity = rule.severity === null ? -1 : severityNames.indexOf(rule.severity);
    const action = actions.findIndex((a) => a.name === rule.action);
    return severity * 10 + action;
  };
  return held.reduce<GradeRule | null>((best, rule) => (best && weight(best) >= weight(rule) ? best : rule), null);
}
