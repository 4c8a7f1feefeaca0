/** The rows of the findings table. */
import type { Computation, Finding, Graded } from '../../shared/schemas/grade.ts';
import type { ReportFinding } from '../../shared/schemas/report.ts';
import { actions, severityNames, trades } from '../../shared/vocabulary/grading/levels.ts';
import { shortTime } from '../../shared/wording/short.ts';
import { correctedDistanceName } from '../6-grade/distances.ts';
import { notStated } from './standing-text.ts';
import { capital, kindNamed } from './wording/counting.ts';
import { detailWords, sizeWords, titleWords } from './wording/descriptions.ts';
import { length, plainNumber, reading, type Units, volumeRange } from './wording/lengths.ts';
import { clockWords, placeWords } from './wording/places.ts';

export interface NumberedFinding {
  readonly number: number;
  readonly finding: Finding;
}

/**
 * What the table holds: defects, seen or suspected, and whatever else got a grade or informs. Open items are left out:
 * nothing is said of them but that they are open.
 */
export function numberedFindings(graded: Graded): NumberedFinding[] {
  return graded.findings
    .filter((f) => f.reviewState !== 'open')
    .filter((f) => f.group === 'defect' || f.grade !== null)
    .map((finding, index) => ({ number: index + 1, finding }));
}

export function findingRow({ number, finding: f }: NumberedFinding, graded: Graded, units: Units): ReportFinding {
  const kind = kindNamed(f.kind);
  const grade = f.grade;
  const isSuspected = f.status === 'suspected';
  const action = actions.find((a) => a.name === grade?.action);
  return {
    number,
    id: f.id,
    run: f.run,
    place: capital(placeWords(f.at, f.to, units)),
    counter: counterWords(f, graded.counterUnit),
    plusMinus: f.at === null ? '' : `± ${length(f.at.plusMinusFeet, units)}`,
    what: titleWords(f) + (detailWords(f, units) ? `, ${detailWords(f, units)}` : ''),
    where: clockWords(f),
    size: [sizeWords(f, units), heldWords(f, units)].filter(Boolean).join('; '),
    severity: isSuspected ? 'suspected' : (grade?.severity ?? (grade?.isInformation ? 'information' : 'not graded')),
    severityRank: grade?.severity ? severityNames.indexOf(grade.severity) + 1 : 0,
    action: action === undefined ? '' : [action.title, grade?.again].filter(Boolean).join(', '),
    meaning: isSuspected ? `Not certain. If so: ${kind.report.meaning}` : kind.report.meaning,
    next: grade?.next ?? kind.report.next,
    trade: trades.find((trade) => trade.name === grade?.trade)?.title ?? '',
    part: partWords(f),
    words: f.heard.text,
    time: [f.heard, ...f.again].map((heard) => shortTime(heard.start)).join(', again '),
    // The distance less the entry stands in the row itself and in the words of the run.
    computations: f.computations
      .filter((computation) => computation.name !== correctedDistanceName)
      .map((computation) => computationWords(computation, units)),
  };
}

/** The reading as the counter showed it, kept beside a distance that was corrected. */
function counterWords(f: Finding, unit: 'ft' | 'm'): string {
  if (f.at === null || f.at.counterFeet === f.at.feet) return '';
  const from = reading(f.at.counterFeet, unit);
  return f.to === null ? from : `${from.replace(` ${unit}`, '')} to ${reading(f.to.counterFeet, unit)}`;
}

function heldWords(f: Finding, units: Units): string {
  const held = f.computations.find((c) => c.name === 'water held');
  if (held === undefined) return '';
  const gallons = held.results.filter((r) => r.unit === 'gal').map((r) => r.value);
  return `holds ${volumeRange(gallons[0]!, gallons[1]!, units)}`;
}

export function partWords(f: Pick<Finding, 'part'>): string {
  switch (f.part) {
    case 'owner':
      return 'owner’s part';
    case 'beyond-owner':
      return 'beyond the owner’s part';
    case 'near-boundary':
      return 'at the end of the owner’s part';
    default:
      return notStated;
  }
}

const metricUnits = new Set(['L']);
const americanUnits = new Set(['gal']);

/** A computation in words: results in the report's units, inputs as they were said. */
export function computationWords(computation: Computation, units: Units): ReportFinding['computations'][number] {
  const hidden = units === 'meters' ? americanUnits : metricUnits;
  const value = (v: number | string, unit: string) => {
    if (typeof v === 'string') return v;
    if (unit === 'ft') return length(v, units);
    return `${plainNumber(v, unit === 'in/ft' ? 4 : unit === 'in' ? 3 : 1)} ${unit}`;
  };
  return {
    name: capital(computation.name),
    result: computation.results
      .filter((result) => !hidden.has(result.unit))
      .map((result) => `${result.name} ${value(result.value, result.unit)}`)
      .join(', '),
    inputs: `${computation.inputs
      .map((input) => `${input.name} ${value(input.value, input.unit)} (${input.source})`)
      .join('; ')}. ${capital(computation.formula)}.`,
    note: computation.note ?? '',
  };
}
