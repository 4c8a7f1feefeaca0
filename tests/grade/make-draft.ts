/** Short ways to an invented draft for the tests of grade and report. */
import type { Draft, Observation } from '../../shared/schemas/draft.ts';
import { draftSchema } from '../../shared/schemas/draft.ts';
import type { Finding, Graded } from '../../shared/schemas/grade.ts';
import { type Inspection, inspectionSchema } from '../../shared/schemas/inspection.ts';
import { draftAsReviewed } from '../../src/6-grade/grade-input.ts';
import { gradeObservations } from '../../src/6-grade/grade-observations.ts';
import { ownRuleSet, type RuleSet } from '../../src/6-grade/rule-set.ts';

type ObservationInput = Partial<Observation> & Pick<Observation, 'kind'>;

export interface DraftInput {
  readonly observations?: readonly ObservationInput[];
  readonly runs?: readonly Partial<Draft['runs'][number]>[];
  readonly absent?: Draft['absent'];
  readonly unplaced?: Draft['unplaced'];
  readonly site?: Record<string, string | number>;
  readonly unit?: 'ft' | 'm';
  readonly file?: string;
}

/** One downstream run from the front cleanout unless told otherwise; ids are o1, o2 … in the order given. */
export function makeDraft(input: DraftInput = {}): Draft {
  const heard = (n: number, text: string) => ({ start: 10 + n * 8, end: 15 + n * 8, text });
  return draftSchema.parse({
    schema: 'lineword/draft@1',
    unit: input.unit ?? 'ft',
    recording: { file: input.file ?? 'plover-lane.m4a', sha256: 'ab'.repeat(32), seconds: 900 },
    site: Object.fromEntries(
      Object.entries(input.site ?? { address: '7 Plover Lane' }).map(([name, value]) => [
        name,
        { value, heard: heard(0, ''), confidence: 0.9, review: [] },
      ]),
    ),
    runs: (input.runs ?? [{}]).map((run, index) => ({
      n: index + 1,
      access: 'front cleanout',
      direction: 'downstream',
      heard: heard(0, 'going downstream from the front cleanout'),
      end: { at: 60, reason: 'main' },
      ...run,
    })),
    observations: (input.observations ?? []).map((o, index) => ({
      id: `o${index + 1}`,
      run: 1,
      status: 'present',
      at: 10,
      atBasis: 'spoken',
      heard: heard(index + 1, `the words of number ${index + 1}`),
      confidence: 0.95,
      ...o,
    })),
    absent: input.absent ?? [],
    unplaced: input.unplaced ?? [],
    setAside: [],
  });
}

export function makeInspection(facts: Partial<Inspection> = {}): Inspection {
  return inspectionSchema.parse({ schema: 'lineword/inspection@1', ...facts });
}

export function gradeDraft(input: DraftInput, facts: Partial<Inspection> = {}, rules: RuleSet = ownRuleSet()): Graded {
  return gradeObservations(draftAsReviewed(makeDraft(input)), makeInspection(facts), rules);
}

/** Grades one observation in a pipe of this material and size and gives its finding. */
export function gradeOne(
  observation: ObservationInput,
  pipe: Partial<Observation> = { material: 'pvc', diameterIn: 4 },
  facts: Partial<Inspection> = {},
): Finding {
  const graded = gradeDraft({ observations: [{ kind: 'pipe', at: 0, ...pipe }, observation] }, facts);
  return graded.findings.find((f) => f.id === 'o2')!;
}
