/**
 * Writing the report of 60 findings after grading: every file, the PDF too. The first report of a process also loads
 * the fonts and the compiler, so it is printed apart. The target is one second for either.
 */
import { type Draft, draftSchema } from '../../shared/schemas/draft.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { draftAsReviewed } from '../6-grade/grade-input.ts';
import { gradeObservations } from '../6-grade/grade-observations.ts';
import { emptyInspection } from '../6-grade/inspection-file.ts';
import { ownRuleSet } from '../6-grade/rule-set.ts';
import { writeReport } from '../7-report/write-report.ts';
import { type Figure, medianSeconds, peakMegabytes } from './figure.ts';

const findings = 60;
const feet = 120;
const recordingSeconds = 900;

export async function benchReport(): Promise<Figure[]> {
  const graded = gradeObservations(draftAsReviewed(inventedDraft()), emptyInspection(), ownRuleSet());
  const write = () => writeReport(graded, { stills: [], signed: null });
  const from = performance.now();
  write();
  const firstSeconds = (performance.now() - from) / 1000;
  const figure = (title: string, workSeconds: number): Figure => ({
    title,
    workSeconds,
    recordingSeconds,
    peakMegabytes: peakMegabytes(),
  });
  return [
    figure(`report of ${findings} findings, first`, firstSeconds),
    figure(`report of ${findings} findings, next`, await medianSeconds(5, write)),
  ];
}

function inventedDraft(): Draft {
  const defects = kinds.filter((kind) => kind.group === 'defect');
  return draftSchema.parse({
    schema: 'lineword/draft@1',
    recording: { file: 'bench.m4a', sha256: '00'.repeat(32), seconds: recordingSeconds },
    runs: [{ n: 1, access: 'front cleanout', direction: 'downstream', heard: null, end: { at: feet, reason: 'main' } }],
    observations: Array.from({ length: findings }, (_, index) => ({
      id: `o${index + 1}`,
      run: 1,
      kind: defects[index % defects.length]!.name,
      status: 'present',
      at: ((index + 1) * feet) / (findings + 1),
      percent: (index * 7) % 100,
      heard: { start: index * 14, end: index * 14 + 6, text: 'what was said of it at this place, in a sentence or so' },
      confidence: 0.95,
    })),
    absent: [],
    unplaced: [],
    setAside: [],
  });
}
