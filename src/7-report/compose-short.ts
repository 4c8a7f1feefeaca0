/** What was found in three sentences that a buyer understands: how far the camera came, what it saw, what to do. */
import type { Finding, Graded } from '../../shared/schemas/grade.ts';
import { actions, severityNames } from '../../shared/vocabulary/grading/levels.ts';
import { plays } from '../../shared/vocabulary/grading/roles.ts';
import type { NumberedFinding } from './compose-findings.ts';
import { noRun } from './standing-text.ts';
import { count, kindNamed, list, lowerTitle, oneOf, plural, several } from './wording/counting.ts';
import { length, type Units } from './wording/lengths.ts';
import { atPlace } from './wording/places.ts';

/** At most this many findings are named one by one; the table has them all. */
const namedAtMost = 4;

const nothingOnRecord = [
  noRun,
  'Nothing can be said of the condition of the line.',
  'Have the line inspected before relying on this report.',
];

export function inShort(graded: Graded, numbered: readonly NumberedFinding[], units: Units): string[] {
  if (graded.runs.length === 0) return nothingOnRecord;
  return [reachSentence(graded, units), foundSentence(graded, numbered, units), doSentence(graded, numbered, units)];
}

function reachSentence(graded: Graded, units: Units): string {
  const runs = graded.runs;
  const main = mainClause(graded);
  if (runs.length === 1) {
    const run = runs[0]!;
    const from = run.access === null ? '' : ` from the ${run.access}`;
    const way = run.direction === null ? '' : ` ${run.direction}`;
    if (run.reachedFeet === null) return `The camera went in${from}${way}; how far it came was not said, ${main}.`;
    return `The camera went ${length(run.reachedFeet, units)}${way}${from}, ${main}.`;
  }
  const known = runs.filter((run) => run.reachedFeet !== null);
  const total = known.reduce((sum, run) => sum + run.reachedFeet!, 0);
  const distance = known.length === 0 ? '' : ` and went ${length(total, units)} altogether`;
  const unknown = runs.length - known.length;
  const gap = unknown === 0 ? '' : ` (how far it came in ${count(unknown)} of the runs was not said)`;
  return `The camera was put in ${times(runs.length)}${distance}${gap}, ${main}.`;
}

function times(n: number): string {
  return n === 2 ? 'twice' : `${count(n)} times`;
}

/** Whether the public main was reached, and nothing more than is on record. */
function mainClause(graded: Graded): string {
  const ends = new Set(graded.runs.map((run) => run.end?.reason));
  const stood = graded.findings.filter((f) => f.reviewState !== 'open' && f.status === 'present');
  if (ends.has('main') || stood.some((f) => plays('meetsMain', f.kind))) return 'and it reached the public main';
  if (ends.has('tank')) return 'and it reached the septic tank';
  if (stood.some((f) => plays('notReached', f.kind))) return 'and it did not reach the end of the line';
  if (ends.has('stopped')) return 'and it was stopped before it saw the public main';
  if (ends.has('end-of-line')) return 'and it came to the upper end of the line';
  return 'and reaching the public main is not on record';
}

function foundSentence(graded: Graded, numbered: readonly NumberedFinding[], units: Units): string {
  const defects = numbered.map(({ finding }) => finding).filter((f) => f.group === 'defect');
  if (defects.length === 0) return 'No defect was noted in the part that was seen.';
  const bySeverity = severityNames.map((name) => defects.filter((f) => f.grade?.severity === name)).reverse();
  const suspected = defects.filter((f) => f.status === 'suspected');
  const ungraded = defects.filter((f) => f.status === 'present' && f.grade?.severity == null);
  const [severe, moderate, minor] = bySeverity as [Finding[], Finding[], Finding[]];
  const worst = [severe, moderate, minor, ungraded, suspected].find((group) => group.length > 0)!;
  const words = [
    severe.length > 0 && `${count(severe.length)} severe`,
    moderate.length > 0 && `${count(moderate.length)} moderate`,
    minor.length > 0 && `${count(minor.length)} minor`,
    ungraded.length > 0 && `${count(ungraded.length)} that could not be graded`,
    suspected.length > 0 && `${count(suspected.length)} only suspected`,
  ].filter((word) => word !== false);
  const named = namedFindings(worst, graded, units);
  if (defects.length === 1) return `It showed one thing, ${words[0]!.replace('one ', '')}: ${named}.`;
  if (words.length === 1) return `It showed ${words[0]}${worst[0]!.grade?.severity ? ' findings' : ''}: ${named}.`;
  const lead = worst === severe ? 'the severe' : worst === moderate ? 'the moderate' : 'the first named';
  const verb = worst.length === 1 ? 'one is' : 'ones are';
  return `It showed ${plural(defects.length, 'thing', 'things')} of note, ${list(words)}; ${lead} ${verb} ${named}.`;
}

/** "a hole at 9 ft, a belly from 34 ft to 41 ft"; by kind when there are many. */
function namedFindings(findings: readonly Finding[], graded: Graded, units: Units): string {
  if (findings.length <= namedAtMost)
    return list(findings.map((f) => `${oneOf(kindNamed(f.kind))} ${placeInRun(f, graded, units)}`));
  const counts = new Map<string, number>();
  for (const f of findings) counts.set(f.kind, (counts.get(f.kind) ?? 0) + 1);
  return list([...counts].map(([name, n]) => several(kindNamed(name), n)));
}

/** "the hole at 9 ft and the void at 41 ft"; only their number when there are many. */
function theFindings(findings: readonly Finding[], graded: Graded, units: Units): string {
  if (findings.length > namedAtMost) return `what was found in ${count(findings.length)} places`;
  return list(findings.map((f) => `the ${lowerTitle(kindNamed(f.kind))} ${placeInRun(f, graded, units)}`));
}

/** With several runs a distance alone would not say where. */
function placeInRun(f: Finding, graded: Graded, units: Units): string {
  const run = graded.runs.length > 1 ? ` in run ${f.run}` : '';
  if (f.at === null) return `at a place${run} whose distance was not said`;
  return `${atPlace(f.at, f.to, units)}${run}`;
}

function doSentence(graded: Graded, numbered: readonly NumberedFinding[], units: Units): string {
  const findings = numbered.map(({ finding }) => finding);
  const calling = (name: string) => findings.filter((f) => f.grade?.action === name);
  const urgent = [...actions].reverse().find((action) => action.name !== 'none' && calling(action.name).length > 0);
  const wasCutShort = graded.runs.some((run) => run.notSeen.length > 0);
  const rest = wasCutShort ? ', and have the part that was not seen looked at' : '';
  if (urgent === undefined) {
    return wasCutShort
      ? 'Nothing that was seen calls for repair; have the part that was not seen looked at before relying on the line.'
      : 'Nothing that was seen calls for repair.';
  }
  const group = calling(urgent.name);
  const things = theFindings(group, graded, units);
  const repairs = calling('repair').length;
  switch (urgent.name) {
    case 'act-now':
      return `Have a licensed plumber or sewer contractor deal at once with ${things}${repairs > 0 ? `; ${plural(repairs, 'other place needs', 'other places need')} repair` : ''}${rest}.`;
    case 'repair':
      return `Have a licensed plumber or sewer contractor price the repair of ${things}${rest}.`;
    case 'clean':
      return `Have the line cleaned at ${plural(group.length, 'place', 'places')} and looked at again${rest}; what should follow is for a licensed plumber to say.`;
    case 'watch': {
      const again = group.find((f) => f.grade?.again)?.grade?.again;
      return `No repair is advised now; have the line looked at again${group.length === 1 && again ? ` ${again}` : ' as listed below'}${rest}.`;
    }
    default:
      return `Have ${plural(group.length, 'place', 'places')} looked at again before relying on this report there${rest}.`;
  }
}
