/** What to do next, by urgency and by trade. Steps that read the same are said once, with every place they belong to. */
import type { Finding, Graded } from '../../shared/schemas/grade.ts';
import type { Report } from '../../shared/schemas/report.ts';
import { type ActionName, actions, type TradeName, trades } from '../../shared/vocabulary/grading/levels.ts';
import type { NumberedFinding } from './compose-findings.ts';
import { kindNamed, lowerTitle } from './wording/counting.ts';
import type { Units } from './wording/lengths.ts';
import { atPlace } from './wording/places.ts';

interface Step {
  readonly action: ActionName;
  readonly trade: TradeName;
  readonly step: string;
  readonly where: string;
}

export function nextSteps(graded: Graded, numbered: readonly NumberedFinding[], units: Units): Report['next'] {
  const asked = numbered.filter(({ finding }) => finding.grade?.isInformation !== true);
  const told = numbered.filter(({ finding }) => finding.grade?.isInformation === true);
  const steps = [...asked.flatMap((n) => stepOf(n, units)), ...stepsForLimits(graded, units)];
  return [
    ...[...actions].reverse().flatMap((action) =>
      groupOf(
        action.title,
        steps.filter((step) => step.action === action.name),
      ),
    ),
    ...groupOf(
      'Good to know',
      told.flatMap((n) => stepOf(n, units)),
    ),
  ];
}

function groupOf(title: string, steps: readonly Step[]): Report['next'] {
  if (steps.length === 0) return [];
  const byTrade = trades.flatMap((trade) => {
    const theirs = steps.filter((step) => step.trade === trade.name);
    return theirs.length === 0 ? [] : [{ title: trade.title, steps: gathered(theirs) }];
  });
  return [{ title, trades: byTrade }];
}

function stepOf({ number, finding }: NumberedFinding, units: Units): Step[] {
  if (finding.grade === null) return [];
  return [
    {
      action: finding.grade.action,
      trade: finding.grade.trade,
      step: finding.grade.next,
      where: `No. ${number}, ${nameOf(finding)} ${atPlace(finding.at, finding.to, units)}`,
    },
  ];
}

function nameOf(finding: Finding): string {
  const name = lowerTitle(kindNamed(finding.kind));
  return finding.status === 'suspected' ? `possible ${name}` : name;
}

/** What the camera could not see asks for a step too. */
function stepsForLimits(graded: Graded, units: Units): Step[] {
  return graded.findings
    .filter((f) => f.group === 'limit' && f.reviewState !== 'open' && f.status === 'present')
    .map((f) => ({
      action: 'settle' as const,
      trade: 'inspector' as const,
      step: kindNamed(f.kind).report.next,
      where: `${lowerTitle(kindNamed(f.kind))}${f.at === null ? '' : ` ${atPlace(f.at, f.to, units)}`}${graded.runs.length > 1 ? ` in run ${f.run}` : ''}`,
    }));
}

function gathered(steps: readonly Step[]): { step: string; where: string[] }[] {
  const places = new Map<string, string[]>();
  for (const { step, where } of steps) places.set(step, [...(places.get(step) ?? []), where]);
  return [...places].map(([step, where]) => ({ step, where }));
}
