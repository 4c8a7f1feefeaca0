/**
 * What goes on one drawing: a run, or two runs from one access that go both ways, laid along one axis. The flow runs
 * down the sheet, so a run upstream is laid upward from its access. Long or crowded lines are cut into sheets.
 */
import type { Finding, Graded, GradedRun } from '../../../shared/schemas/grade.ts';
import { plays } from '../../../shared/vocabulary/grading/roles.ts';
import type { MaterialName } from '../../../shared/vocabulary/materials.ts';
import type { NumberedFinding } from '../compose-findings.ts';

export interface StripItem {
  readonly finding: Finding;
  readonly number: number | null;
  /** Feet from the top of the strip. */
  readonly fromFeet: number;
  readonly toFeet: number | null;
  readonly side: 'left' | 'right';
}

export interface Strip {
  readonly runs: readonly GradedRun[];
  readonly lengthFeet: number;
  readonly accessFeet: number;
  readonly isFlowKnown: boolean;
  readonly items: readonly StripItem[];
  readonly withoutDistance: readonly { finding: Finding; number: number | null }[];
  readonly stretches: readonly {
    fromFeet: number;
    toFeet: number;
    material: MaterialName | null;
    nominalIn: number | null;
  }[];
  readonly ends: readonly { feet: number; run: GradedRun }[];
}

/** A part of a strip that fits one sheet. */
export interface Sheet {
  readonly fromFeet: number;
  readonly toFeet: number;
}

export function stripsOf(graded: Graded, numbered: readonly NumberedFinding[]): Strip[] {
  const taken = new Set<number>();
  const runs = graded.runs.filter((run) => canBeDrawn(run, graded));
  return runs.flatMap((run) => {
    if (taken.has(run.n)) return [];
    const other = runs.find((r) => r.n > run.n && !taken.has(r.n) && isOtherWay(run, r));
    taken.add(run.n);
    if (other) taken.add(other.n);
    return [stripOf(other ? [run, other] : [run], graded, numbered)];
  });
}

/** A run of which no distance is known has no scale to be drawn to. */
export function canBeDrawn(run: GradedRun, graded: Graded): boolean {
  return run.reachedFeet !== null || graded.findings.some((f) => f.run === run.n && f.at?.feet != null);
}

function isOtherWay(one: GradedRun, other: GradedRun): boolean {
  if (one.access === null || other.access === null || one.direction === null || other.direction === null) return false;
  return one.direction !== other.direction && one.access.trim().toLowerCase() === other.access.trim().toLowerCase();
}

function stripOf(runs: readonly GradedRun[], graded: Graded, numbered: readonly NumberedFinding[]): Strip {
  const findings = graded.findings.filter((f) => runs.some((run) => run.n === f.run));
  const reach = (run: GradedRun | undefined) => {
    if (run === undefined) return 0;
    const places = findings.filter((f) => f.run === run.n).flatMap((f) => [f.at?.feet ?? 0, f.to?.feet ?? 0]);
    return Math.max(1, run.reachedFeet ?? 0, ...places);
  };
  const up = runs.find((run) => run.direction === 'upstream');
  const down = runs.find((run) => run.direction !== 'upstream');
  const accessFeet = reach(up);
  const along = (run: number, feet: number) => (run === up?.n ? accessFeet - feet : accessFeet + feet);
  const numberOf = (finding: Finding) => numbered.find((n) => n.finding.id === finding.id)?.number ?? null;
  return {
    runs,
    lengthFeet: accessFeet + reach(down),
    accessFeet,
    isFlowKnown: runs.every((run) => run.direction !== null),
    items: findings
      .filter((f) => f.at !== null && f.at.feet !== null && !plays('namesPipe', f.kind))
      .map((finding) => ({
        finding,
        number: numberOf(finding),
        fromFeet: along(finding.run, finding.at!.feet!),
        toFeet: finding.to?.feet == null ? null : along(finding.run, finding.to.feet),
        side: finding.group === 'defect' ? ('right' as const) : ('left' as const),
      })),
    withoutDistance: findings
      .filter((f) => (f.at === null || f.at.feet === null) && !plays('namesPipe', f.kind))
      .map((finding) => ({ finding, number: numberOf(finding) })),
    stretches: runs
      .flatMap((run) =>
        run.stretches.map((s) => {
          const ends = [along(run.n, s.fromFeet), along(run.n, s.toFeet)];
          return {
            fromFeet: Math.min(...ends),
            toFeet: Math.max(...ends),
            material: s.material,
            nominalIn: s.nominalIn,
          };
        }),
      )
      .sort((a, b) => a.fromFeet - b.fromFeet),
    ends: runs.filter((run) => run.reachedFeet !== null).map((run) => ({ feet: along(run.n, run.reachedFeet!), run })),
  };
}

/** Halves a strip until no sheet holds more labels on one side than fit; a foot is never cut. */
export function sheetsOf(strip: Strip, labelsThatFit: number): Sheet[] {
  const cut = (fromFeet: number, toFeet: number): Sheet[] => {
    const inside = strip.items.filter((item) => isOnSheet(item, { fromFeet, toFeet }, strip));
    const fullest = Math.max(
      ...(['left', 'right'] as const).map((side) => inside.filter((i) => i.side === side).length),
    );
    if (fullest <= labelsThatFit || toFeet - fromFeet < 2) return [{ fromFeet, toFeet }];
    const middle = Math.round((fromFeet + toFeet) / 2);
    return [...cut(fromFeet, middle), ...cut(middle, toFeet)];
  };
  return cut(0, strip.lengthFeet);
}

/** A mark on a cut belongs to the sheet that begins there; the last sheet takes its own end. */
export function isOnSheet(item: StripItem, sheet: Sheet, strip: Strip): boolean {
  const isLast = sheet.toFeet >= strip.lengthFeet;
  return item.fromFeet >= sheet.fromFeet && (item.fromFeet < sheet.toFeet || (isLast && item.fromFeet <= sheet.toFeet));
}
