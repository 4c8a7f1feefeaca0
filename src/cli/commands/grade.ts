/** `lineword grade`: grades what was confirmed, keeps what the inspector was asked, and says what is still open. */
import type { Command } from 'commander';
import type { Graded } from '../../../shared/schemas/grade.ts';
import type { Answer, Inspection } from '../../../shared/schemas/inspection.ts';
import type { Reviewed } from '../../../shared/schemas/reviewed.ts';
import {
  type ActionName,
  actionNames,
  type SeverityName,
  severityNames,
} from '../../../shared/vocabulary/grading/levels.ts';
import { CliError } from '../cli-error.ts';
import { type Effects, realEffects } from '../effects.ts';
import { addInspectionOptions, type InspectionOptions, withOptions } from '../inspection-options.ts';

export interface GradeOptions extends InspectionOptions {
  rules?: string;
  soil?: string[];
  measured?: string[];
  own?: string[];
  reason?: string;
  by?: string;
  json?: true;
}

export function register(program: Command): void {
  const command = program
    .command('grade')
    .summary('grade what was confirmed')
    .description(
      'Grades the confirmed and unflagged observations of a folder by the rule table, each with its source, and writes grade.json.\n' +
        'What the options say is kept in inspection.json. What nobody said stays "not stated".',
    )
    .argument('<folder>', 'the folder that "lineword draft" wrote')
    .option('--rules <file>', 'a local rule file; it is kept in the folder as rules.json')
    .option('--soil <id=yes|no...>', 'whether soil shows around a joint')
    .option('--measured <id=height[xwidth]...>', 'inches measured inside a pipe out of round ("o5=3.7x4.2")')
    .option('--own <id=severity:action...>', 'a grade of your own ("o7=severe:repair"); needs --reason')
    .option('--reason <words>', 'why the grade is your own')
    .option('--by <name>', 'whose grade it is')
    .option('--json', 'print the grade as JSON');
  addInspectionOptions(command)
    .addHelpText(
      'after',
      `
Examples:
  lineword grade alder-court
  lineword grade alder-court --date 2026-03-04 --inspector "R. Vance" --entry-offset 3.5
  lineword grade alder-court --owner-ends property-line --owner-at 41 --owner-stated-by "city sewer office"
  lineword grade alder-court --soil o12=no
  lineword grade alder-court --own o7=severe:repair --reason "The joint moved when water was run."`,
    )
    .action((folder: string, options: GradeOptions) => runGrade(folder, options, realEffects));
}

export async function runGrade(folder: string, options: GradeOptions, effects: Effects): Promise<void> {
  const { readFile } = await import('node:fs/promises');
  const { join } = await import('node:path');
  const { writeWhole } = await import('../../disk/write-whole.ts');
  const { readInspectionFile, writeInspectionFile } = await import('../../6-grade/inspection-file.ts');
  const { gradeFile, gradeFolder, gradeText, readReviewed, rulesFile } = await import('../grade-folder.ts');

  const before = await readReviewed(folder);
  const asked = await readInspectionFile(folder);
  const inspection = withAnswers(withOptions(asked, options), options, before.reviewed);
  const { graded, remarks } = await gradeFolder(folder, inspection, options.rules);
  // Everything has been checked by now, so that a wrong option leaves the folder as it was.
  if (JSON.stringify(inspection) !== JSON.stringify(asked)) await writeInspectionFile(folder, inspection);
  if (options.rules !== undefined) await writeWhole(join(folder, rulesFile), await readFile(options.rules));
  await writeWhole(join(folder, gradeFile), gradeText(graded));
  for (const remark of remarks) effects.note(`${remark}\n`);
  if (options.json) effects.print(gradeText(graded).trimEnd());
  else effects.print(gradeTable(graded).join('\n'));
}

function withAnswers(inspection: Inspection, options: GradeOptions, reviewed: Reviewed): Inspection {
  const meant = (id: string) => {
    const found = reviewed.observations.find((o) => o.id === id && o.reviewState !== 'rejected');
    if (!found) throw new CliError(`There is no observation ${id} in this folder: see the ids in findings.json.`);
    return { observation: id, kind: found.kind, run: found.run, at: found.at };
  };
  const answers = [...inspection.answers];
  const lay = (id: string, said: Partial<Answer>) => {
    const before = answers.find((answer) => answer.observation === id);
    const rest = answers.filter((answer) => answer.observation !== id);
    answers.splice(0, answers.length, ...rest, { ...before, ...meant(id), ...said });
  };
  for (const text of options.soil ?? []) {
    const [, id, word] = /^(.+)=(yes|no)$/.exec(text) ?? [];
    if (id === undefined) throw new CliError(`"${text}" is no answer: write --soil o12=yes or --soil o12=no.`);
    lay(id, { soilExposed: word === 'yes' });
  }
  for (const text of options.measured ?? []) {
    const [, id, height, width] = /^(.+)=(\d+(?:\.\d+)?)(?:x(\d+(?:\.\d+)?))?$/.exec(text) ?? [];
    if (id === undefined)
      throw new CliError(`"${text}" is no measure: write --measured o5=3.7 or --measured o5=3.7x4.2.`);
    lay(id, { heightIn: Number(height), ...(width === undefined ? {} : { widthIn: Number(width) }) });
  }
  const ownGrades = [...inspection.ownGrades];
  for (const text of options.own ?? []) {
    const [, id, severity, action] = /^(.+)=(.+):(.+)$/.exec(text) ?? [];
    if (id === undefined || !isSeverity(severity) || !isAction(action)) {
      throw new CliError(
        `"${text}" is no grade: write --own o7=severity:action, with ${severityNames.join(', ')} or none, and ${actionNames.join(', ')}.`,
      );
    }
    if (options.reason === undefined) throw new CliError('A grade of your own needs a reason: add --reason "…".');
    const rest = ownGrades.filter((grade) => grade.observation !== id);
    ownGrades.splice(0, ownGrades.length, ...rest, {
      ...meant(id),
      severity: severity === 'none' ? null : severity,
      action,
      reason: options.reason,
      ...(options.by === undefined ? {} : { by: options.by }),
    });
  }
  return { ...inspection, answers, ownGrades };
}

function isSeverity(word: string | undefined): word is SeverityName | 'none' {
  return word === 'none' || severityNames.some((name) => name === word);
}

function isAction(word: string | undefined): word is ActionName {
  return actionNames.some((name) => name === word);
}

const answeringOptions = {
  ownerPart: '--owner-ends, --owner-at, --owner-stated-by',
  date: '--date',
  inspector: '--inspector',
  entryOffset: '--entry-offset',
  compass: '--compass',
} as const;

function howToAnswer({ about, observation, run }: Graded['questions'][number]): string {
  if (about === 'soil') return `${observation}; answer with --soil ${observation}=yes or =no`;
  return `${run === null ? '' : `run ${run}; `}answer with ${answeringOptions[about]}${run === null ? '' : ` ${run}=…`}`;
}

function gradeTable(graded: Graded): string[] {
  const rows = graded.findings
    .filter((f) => f.grade !== null)
    .map((f) => {
      const place = f.at === null ? 'no distance' : `${f.at.feet ?? f.at.counterFeet} ft`;
      const severity = f.status === 'suspected' ? 'suspected' : (f.grade!.severity ?? 'not graded');
      return `  ${f.id.padEnd(5)} run ${f.run}  ${place.padEnd(12)} ${f.kind.padEnd(16)} ${severity.padEnd(11)} ${f.grade!.action}`;
    });
  const open = graded.findings.filter((f) => f.reviewState === 'open').length + graded.unplaced.length;
  return [
    rows.length === 0 ? 'Nothing here takes a grade.' : rows.join('\n'),
    ...graded.questions.map((q) => `Asked: ${q.question} (${howToAnswer(q)})`),
    ...(open === 0
      ? []
      : [
          `${open === 1 ? 'One item is' : `${open} items are`} not settled and not graded: "lineword review" settles them.`,
        ]),
  ];
}
