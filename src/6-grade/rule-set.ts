/** The rules in force: our table, with a local rule file laid over it. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import type { z } from 'zod';
import type { Graded } from '../../shared/schemas/grade.ts';
import { type GradeRule, localRulesSchema } from '../../shared/schemas/grade-rule.ts';
import { gradeRules, ruleTable } from '../../shared/vocabulary/grading/rules/index.ts';
import { type SlopeTable, slopeTable } from '../../shared/vocabulary/grading/slopes.ts';
import { GradeError } from './grade-error.ts';

export interface RuleSet {
  readonly table: string;
  readonly rules: readonly GradeRule[];
  readonly slope: SlopeTable;
  readonly local: Graded['rules']['local'];
}

export function ownRuleSet(): RuleSet {
  return {
    table: `${ruleTable.name}, version ${ruleTable.version}`,
    rules: gradeRules,
    slope: slopeTable,
    local: null,
  };
}

/** Lays a local rule file over our table. Throws GradeError when the file cannot be read or is not of the form. */
export async function readRuleSet(path: string): Promise<RuleSet> {
  const text = await readFile(path, 'utf8').catch(() => {
    throw new GradeError(`Cannot read the rule file ${path}: check its name.`);
  });
  return layLocalRules(text, path);
}

/** @param text the rule file as read; @param name how messages call it */
export function layLocalRules(text: string, name: string): RuleSet {
  const local = parseLocalRules(text, name);
  const own = ownRuleSet();
  const ownIds = new Set(own.rules.map((rule) => rule.id));
  const unknown = local.drop.filter((id) => !ownIds.has(id));
  if (unknown.length > 0)
    throw new GradeError(`The rule file ${name} drops "${unknown[0]}", which is no rule of ours: correct the name.`);
  const replacing = new Map(local.rules.map((rule) => [rule.id, rule]));
  if (replacing.size < local.rules.length)
    throw new GradeError(`The rule file ${name} gives one id to two rules: give each rule its own.`);
  const kept = own.rules.filter((rule) => !local.drop.includes(rule.id) && !replacing.has(rule.id));
  return {
    table: own.table,
    rules: [...local.rules, ...kept],
    slope: local.slope ?? own.slope,
    local: {
      name: local.name,
      authority: local.authority,
      sha256: createHash('sha256').update(text).digest('hex'),
      replaced: local.rules.filter((rule) => ownIds.has(rule.id)).map((rule) => rule.id),
      added: local.rules.filter((rule) => !ownIds.has(rule.id)).map((rule) => rule.id),
      dropped: local.drop,
      hasSlope: local.slope !== undefined,
    },
  };
}

function parseLocalRules(text: string, name: string): z.infer<typeof localRulesSchema> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    throw new GradeError(`The rule file ${name} is not JSON: correct it or leave it out.`);
  }
  const parsed = localRulesSchema.safeParse(json);
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0]!;
  throw new GradeError(`The rule file ${name} is wrong at ${issue.path.join('.') || 'the top'}: ${issue.message}.`);
}
