/** Puts the report together from the grade: every part in its order, all words final. Pure. */
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Report, ReportStill } from '../../shared/schemas/report.ts';
import { reasonSentences } from '../../shared/vocabulary/review-reasons.ts';
import { shortTime } from '../../shared/wording/short.ts';
import { addressOf, inspectionFacts } from './compose-facts.ts';
import { findingRow, type NumberedFinding, numberedFindings } from './compose-findings.ts';
import { couldNotInspect, lookedForNotSeen } from './compose-gaps.ts';
import { nextSteps } from './compose-next.ts';
import { cautionsFor, glossaryFor, ownershipWords, rulesInWords, signatureWords } from './compose-rest.ts';
import { runInWords, unitsOf } from './compose-runs.ts';
import { inShort } from './compose-short.ts';
import { drawLines } from './draw-line.ts';
import type { SignedFacts } from './signed-facts.ts';
import { draftNotice, limits, noRun, notStated } from './standing-text.ts';
import { titleWords } from './wording/descriptions.ts';
import type { Units } from './wording/lengths.ts';
import { placeWords } from './wording/places.ts';

export interface ReportParts {
  /** Pictures at the findings, in order; empty when the recording has no picture. */
  readonly stills: readonly ReportStill[];
  readonly signed: SignedFacts | null;
}

export function composeReport(graded: Graded, parts: ReportParts): Report {
  const units = unitsOf(graded);
  const numbered = numberedFindings(graded);
  const address = addressOf(graded);
  const openItems = openInWords(graded, units);
  const printed: Omit<Report, 'glossary'> = {
    schema: 'lineword/report@1',
    units,
    title: 'Sewer lateral inspection',
    address: address?.text ?? `Address ${notStated}`,
    draftNotice: parts.signed === null ? draftNotice : null,
    short: inShort(graded, numbered, units),
    openItems,
    next: nextSteps(graded, numbered, units),
    facts: inspectionFacts(graded, units),
    drawings: drawLines(graded, numbered, units),
    runs: graded.runs.map((run) => runInWords(run, graded, units)),
    findings: numbered.map((n: NumberedFinding) => findingRow(n, graded, units)),
    noFinding: graded.runs.length === 0 ? noRun : 'No defect was noted in the part that was seen.',
    stills: [...parts.stills],
    notSeen: lookedForNotSeen(graded),
    notInspected: couldNotInspect(graded, units),
    limits: [...limits],
    cautions: cautionsFor(graded),
    ownership: ownershipWords(graded, units),
    rules: rulesInWords(graded, numbered),
    signature: signatureWords(parts.signed),
  };
  return { ...printed, glossary: glossaryFor(graded, textsIn({ ...printed, drawings: [], stills: [] })) };
}

/** Every text of a value, deep inside too. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(textsIn) : [];
}

/** What nobody has settled yet: flagged observations and talk that found no place. */
function openInWords(graded: Graded, units: Units): Report['openItems'] {
  const observations = graded.findings
    .filter((f) => f.reviewState === 'open')
    .map((f) => ({
      what: `${titleWords(f)}, ${placeWords(f.at, f.to, units)}`,
      why: [...new Set(f.review.map((flag) => flag.detail ?? reasonSentences[flag.reason]))].join('; '),
      words: f.heard.text,
      time: shortTime(f.heard.start),
    }));
  const unplaced = graded.unplaced.map((aside) => ({
    what: 'Talk that found no place in the draft',
    why: aside.why,
    words: aside.heard.text,
    time: shortTime(aside.heard.start),
  }));
  return [...observations, ...unplaced];
}
