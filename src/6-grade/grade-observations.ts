/**
 * Stage 6: from the reviewed inspection to grades.
 * In: the reviewed inspection (or a draft nobody has reviewed yet), what the inspector was asked (`inspection.json`),
 * and the rules in force. Out: `grade.json`, from which alone the report is written.
 * Each observation that is confirmed or not flagged, and that is no mere suspicion, is compared with the rule table:
 * the most severe rule that holds gives the grade and the others are kept beside it. Suspicions get the step that
 * would settle them, open items get nothing, rejected ones are left out. Age never enters: no rule may ask for it.
 * It refuses an own grade or an answer that no longer fits the observation it was given for.
 */
import type { Finding, Grade, Graded, Part, Place } from '../../shared/schemas/grade.ts';
import type { GradeRule } from '../../shared/schemas/grade-rule.ts';
import type { Answer, Inspection, OwnGrade } from '../../shared/schemas/inspection.ts';
import { actions, tradeForAction } from '../../shared/vocabulary/grading/levels.ts';
import { plays } from '../../shared/vocabulary/grading/roles.ts';
import { settlingStepForAll, settlingSteps } from '../../shared/vocabulary/grading/settling.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { decidingRule, rulesThatHold } from './choose-grade.ts';
import { correctedDistance, placeOf } from './distances.ts';
import { factsOf } from './facts.ts';
import { leastSlope } from './fall-by-code.ts';
import type { GradableObservation, GradeInput } from './grade-input.ts';
import { gradeRun, type RunInHand } from './grade-run.ts';
import { meantObservation } from './meant-observation.ts';
import { pipeAt } from './pipe-here.ts';
import { questionsFor } from './questions.ts';
import { measuredRoundness } from './roundness.ts';
import type { RuleSet } from './rule-set.ts';
import { backwaterReach, heldWater, type WaterDepth, waterDepth } from './water.ts';
import { partOf } from './whose-part.ts';

interface Given {
  readonly inspection: Inspection;
  readonly rules: RuleSet;
  readonly answers: ReadonlyMap<string, Answer>;
  readonly ownGrades: ReadonlyMap<string, OwnGrade>;
}

/** Grades an inspection. Throws GradeError when something the inspector gave no longer fits. */
export function gradeObservations(input: GradeInput, inspection: Inspection, rules: RuleSet): Graded {
  const standing = input.observations.filter((o) => o.reviewState !== 'rejected');
  const given: Given = {
    inspection,
    rules,
    answers: new Map(inspection.answers.map((a) => [meantObservation(a, standing, 'answer').id, a])),
    ownGrades: new Map(inspection.ownGrades.map((g) => [meantObservation(g, standing, 'own grade').id, g])),
  };
  const runs = input.runs
    .filter((run) => run.reviewState !== 'rejected')
    .map((run) => {
      const asked = inspection.runs.find((r) => r.n === run.n);
      const own = standing.filter((o) => o.run === run.n);
      return gradeRun(run, asked, own, input.unit, rules.slope);
    });
  const findings = runs.flatMap((run) =>
    standing
      .filter((o) => o.run === run.graded.n)
      .sort(byPlace)
      .map((o) => findingOf(o, run, given)),
  );
  const usedIds = new Set(findings.flatMap((f) => f.grade?.rulesHeld ?? []));
  return {
    schema: 'lineword/grade@1',
    recording: { file: input.recording.file, sha256: input.recording.sha256, seconds: input.recording.seconds },
    counterUnit: input.unit,
    inspection,
    site: siteOf(input),
    runs: runs.map((run) => run.graded),
    findings,
    absent: input.absent
      .filter((absent) => absent.reviewState !== 'rejected')
      .map(({ run, kind, heard }) => ({ run, kind, heard })),
    unplaced: input.unplaced
      .filter((aside) => (aside.reviewState ?? 'open') === 'open')
      .map(({ heard, why }) => ({ heard, why })),
    rules: { table: rules.table, used: rules.rules.filter((rule) => usedIds.has(rule.id)), local: rules.local },
    questions: questionsFor(findings, inspection, given.answers),
  };
}

function byPlace(a: GradableObservation, b: GradableObservation): number {
  return (a.at ?? Infinity) - (b.at ?? Infinity) || a.heard.start - b.heard.start || (a.id < b.id ? -1 : 1);
}

function findingOf(observation: GradableObservation, run: RunInHand, given: Given): Finding {
  const o = observation;
  const at = o.at === null ? null : startOf(placeOf(o.at, run.counter, o.atBasis, o.atPlusMinus ?? 0), o);
  const to = o.to === null ? null : placeOf(o.to, run.counter, null);
  const pipe = pipeAt(run.changes, at?.counterFeet ?? null);
  const group = kinds.find((kind) => kind.name === o.kind)!.group;
  const water = plays('holdsWater', o.kind) ? waterDepth(o.inches, o.percent, pipe) : null;
  const isGraded = o.status === 'present' && o.reviewState !== 'open' && group !== 'limit';
  const answer = given.answers.get(o.id);
  const roundness = plays('outOfRound', o.kind) ? measuredRoundness(answer, pipe) : null;
  const facts = factsOf(o, run.standing, run.counter.feetPerUnit, pipe, water, roundness, answer);
  const held = isGraded ? rulesThatHold(o.kind, facts, given.rules.rules) : [];
  const part: Part = partOf(o.kind, at, run.graded, given.inspection.ownerPart);
  return {
    id: o.id,
    run: o.run,
    kind: o.kind,
    group,
    status: o.status,
    reviewState: o.reviewState === 'rejected' ? 'open' : o.reviewState,
    at,
    to,
    position: o.position,
    clock: o.clock,
    clockTo: o.clockTo ?? null,
    degree: o.degree,
    percent: o.percent,
    inches: o.inches,
    material: o.material,
    diameterIn: o.diameterIn,
    fromMaterial: o.fromMaterial,
    toMaterial: o.toMaterial,
    serves: o.serves,
    angleDeg: o.angleDeg,
    heard: o.heard,
    again: o.again,
    review: o.reviewState === 'open' ? o.review : [],
    pipeHere: pipe,
    part,
    grade: isGraded ? gradeOf(o, held, given.ownGrades.get(o.id)) : settlingGrade(o),
    computations: [
      ...(roundness === null ? [] : [roundness.computation]),
      ...computationsOf(o, at, to, pipe, water, run, given),
    ],
  };
}

/** What the pipe is from the start of the run on is told at counter 0, which may lie before the entry. */
function startOf(place: Place, o: GradableObservation): Place {
  return plays('namesPipe', o.kind) && place.feet === null ? { ...place, feet: 0 } : place;
}

/** The grade by the rules, with the inspector's own laid over it. `null` for a fitting that informs of nothing. */
function gradeOf(o: GradableObservation, held: readonly GradeRule[], own: OwnGrade | undefined): Grade | null {
  const rule = decidingRule(held);
  if (rule === null && own === undefined) return null;
  const report = kinds.find((kind) => kind.name === o.kind)!.report;
  const byRules = { severity: rule?.severity ?? null, action: rule?.action ?? ('none' as const) };
  const isOwnStep = own !== undefined && own.action !== byRules.action;
  const action = own?.action ?? byRules.action;
  return {
    severity: own ? own.severity : byRules.severity,
    action,
    again: isOwnStep ? null : (rule?.again ?? null),
    trade: isOwnStep ? tradeForAction[action] : (rule?.trade ?? tradeForAction[action]),
    rule: rule?.id ?? null,
    rulesHeld: held.map((r) => r.id),
    needsCorrection: held.filter((r) => r.needsCorrection).map((r) => r.id),
    isInformation: rule?.isInformation ?? false,
    next: isOwnStep ? actions.find((a) => a.name === action)!.step : (rule?.next ?? report.next),
    own: own ? { reason: own.reason, by: own.by ?? null, rulesGave: byRules } : null,
  };
}

/** A suspicion is not graded; it gets the step that would settle it. */
function settlingGrade(o: GradableObservation): Grade | null {
  const isDefect = kinds.find((kind) => kind.name === o.kind)!.group === 'defect';
  if (o.status !== 'suspected' || o.reviewState === 'open' || !isDefect) return null;
  const settling = settlingSteps[o.kind] ?? settlingStepForAll;
  return {
    severity: null,
    action: 'settle',
    again: null,
    trade: settling.trade,
    rule: null,
    rulesHeld: [],
    needsCorrection: [],
    isInformation: false,
    next: settling.step,
    own: null,
  };
}

function computationsOf(
  o: GradableObservation,
  at: Finding['at'],
  to: Finding['to'],
  pipe: Finding['pipeHere'],
  water: WaterDepth | null,
  run: RunInHand,
  given: Given,
): Finding['computations'] {
  const list = [at === null ? null : correctedDistance(at, run.counter.entryFeet), water?.computation ?? null];
  if (water?.inches != null && pipe.insideIn !== null) {
    if (at !== null && to !== null)
      list.push(heldWater(Math.abs(to.counterFeet - at.counterFeet), water.inches, pipe.insideIn));
    const measured = given.inspection.runs.find((r) => r.n === o.run)?.slopeInchesPerFoot;
    if (measured !== undefined) list.push(backwaterReach(water.inches, measured, 'measured, as the inspector gave it'));
    else if (pipe.nominalIn !== null)
      list.push(backwaterReach(water.inches, leastSlope(pipe.nominalIn, given.rules.slope), given.rules.slope.source));
  }
  return list.filter((computation) => computation !== null);
}

function siteOf(input: GradeInput): Graded['site'] {
  const entries = Object.entries(input.site).filter(([, field]) => field.reviewState !== 'rejected');
  return Object.fromEntries(
    entries.map(([name, field]) => [
      name,
      {
        value: field.value,
        isOpen: (field.reviewState ?? (field.review.length > 0 ? 'open' : 'unflagged')) === 'open',
      },
    ]),
  );
}
