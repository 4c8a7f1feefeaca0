/**
 * The rule table. Of the rules that hold for a finding the most severe one gives the grade; the others are kept beside
 * it. Published limits come first in each file; what has no published limit is marked "common practice, no source".
 */
import { type GradeRule, gradeRuleSchema } from '../../../schemas/grade-rule.ts';
import { flowRules } from './flow.ts';
import { jointRules } from './joints.ts';
import { materialRules } from './materials.ts';
import { sagRules } from './sags.ts';
import { structureRules } from './structure.ts';

export const ruleTable = { name: 'lineword rule table', version: '1' } as const;

export const gradeRules: readonly GradeRule[] = [
  ...sagRules,
  ...jointRules,
  ...structureRules,
  ...flowRules,
  ...materialRules,
].map((rule) => gradeRuleSchema.parse(rule));
