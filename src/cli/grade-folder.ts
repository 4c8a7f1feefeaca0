/** Grading the folder of one inspection: reads what lies in it and gives the grade, without writing it. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Inspection } from '../../shared/schemas/inspection.ts';
import type { Reviewed } from '../../shared/schemas/reviewed.ts';
import { applyDecisions } from '../5-review/apply-decisions.ts';
import { decisionsFile, readDecisionLines } from '../5-review/decision-log.ts';
import { gradeObservations } from '../6-grade/grade-observations.ts';
import { ownRuleSet, readRuleSet } from '../6-grade/rule-set.ts';
import { CliError } from './cli-error.ts';
import { checkDraftFolder, fileNames, readDraft } from './inspection-folder.ts';

export const gradeFile = 'grade.json';
/** A local rule file kept with the inspection. */
export const rulesFile = 'rules.json';

export interface GradedFolder {
  readonly graded: Graded;
  readonly reviewed: Reviewed;
  /** Sentences for the person at the keyboard. */
  readonly remarks: readonly string[];
}

/** The reviewed state of a folder; a draft without decisions counts as reviewed with nothing decided. */
export async function readReviewed(folder: string): Promise<{ reviewed: Reviewed; remarks: string[] }> {
  await checkDraftFolder(folder);
  const draft = await readDraft(join(folder, fileNames.draft));
  const path = join(folder, decisionsFile);
  if (!existsSync(path)) return { reviewed: applyDecisions(draft, []), remarks: [] };
  const lines = readDecisionLines(await readFile(path));
  if (lines.fault !== null) {
    throw new CliError(
      `Line ${lines.fault.line} of ${path} is damaged (${lines.fault.why}): restore the file from a copy before grading.`,
    );
  }
  const remarks =
    lines.cutBytes.length === 0
      ? []
      : [
          `The last decision in ${decisionsFile} was cut short and is left out; the ${lines.sealed.length} before it count.`,
        ];
  return {
    reviewed: applyDecisions(
      draft,
      lines.sealed.map(({ decision }) => decision),
    ),
    remarks,
  };
}

/** @param rulesPath a local rule file; the folder's own is taken when none is given */
export async function gradeFolder(folder: string, inspection: Inspection, rulesPath?: string): Promise<GradedFolder> {
  const { reviewed, remarks } = await readReviewed(folder);
  const kept = join(folder, rulesFile);
  const path = rulesPath ?? (existsSync(kept) ? kept : undefined);
  const rules = path === undefined ? ownRuleSet() : await readRuleSet(path);
  const lost = reviewed.orphanedDecisions.length;
  return {
    graded: gradeObservations(reviewed, inspection, rules),
    reviewed,
    remarks:
      lost === 0
        ? remarks
        : [
            ...remarks,
            `${lost === 1 ? 'One decision fits' : `${lost} decisions fit`} nothing in this draft any more: see "lineword review".`,
          ],
  };
}

/** The form in which grades are written, and compared with what was signed. */
export function gradeText(graded: Graded): string {
  return `${JSON.stringify(graded, null, 1)}\n`;
}
