/** `findings.csv`: one row a finding of the table, for a spreadsheet. RFC 4180, UTF-8 without a mark. */
import type { Finding } from '../../../shared/schemas/grade.ts';
import type { Report } from '../../../shared/schemas/report.ts';
import type { NumberedFinding } from '../compose-findings.ts';

type Cell = string | number | null;

const columns: readonly { readonly name: string; readonly of: (row: Row) => Cell }[] = [
  { name: 'number', of: (row) => row.number },
  { name: 'run', of: (row) => row.f.run },
  { name: 'kind', of: (row) => row.f.kind },
  { name: 'what', of: (row) => row.printed.what },
  { name: 'status', of: (row) => row.f.status },
  { name: 'reviewed', of: (row) => row.f.reviewState },
  { name: 'distance_ft', of: (row) => row.f.at?.feet ?? null },
  { name: 'distance_to_ft', of: (row) => row.f.to?.feet ?? null },
  { name: 'plus_minus_ft', of: (row) => row.f.at?.plusMinusFeet ?? null },
  { name: 'counter_ft', of: (row) => row.f.at?.counterFeet ?? null },
  { name: 'clock', of: (row) => row.f.clock },
  { name: 'clock_to', of: (row) => row.f.clockTo },
  { name: 'position', of: (row) => row.f.position },
  { name: 'degree', of: (row) => row.f.degree },
  { name: 'percent', of: (row) => row.f.percent },
  { name: 'inches', of: (row) => row.f.inches },
  { name: 'pipe_material', of: (row) => row.f.pipeHere.material },
  { name: 'pipe_nominal_in', of: (row) => row.f.pipeHere.nominalIn },
  { name: 'severity', of: (row) => row.printed.severity },
  { name: 'action', of: (row) => row.f.grade?.action ?? null },
  { name: 'again', of: (row) => row.f.grade?.again ?? null },
  { name: 'trade', of: (row) => row.printed.trade },
  { name: 'rule', of: (row) => row.f.grade?.rule ?? null },
  { name: 'in_need_of_correction', of: (row) => ((row.f.grade?.needsCorrection.length ?? 0) > 0 ? 'yes' : 'no') },
  { name: 'own_grade_reason', of: (row) => row.f.grade?.own?.reason ?? null },
  { name: 'part', of: (row) => row.printed.part },
  { name: 'meaning', of: (row) => row.printed.meaning },
  { name: 'next_step', of: (row) => row.printed.next },
  { name: 'words', of: (row) => row.f.heard.text },
  { name: 'time_s', of: (row) => row.f.heard.start },
  { name: 'state', of: (row) => row.state },
];

interface Row {
  readonly number: number;
  readonly f: Finding;
  readonly printed: Report['findings'][number];
  readonly state: string;
}

export function findingsCsv(report: Report, numbered: readonly NumberedFinding[]): string {
  const state = report.draftNotice ?? 'signed';
  const rows = numbered.map(
    ({ number, finding }, index): Row => ({ number, f: finding, printed: report.findings[index]!, state }),
  );
  const lines = [columns.map(({ name }) => name), ...rows.map((row) => columns.map(({ of }) => cell(of(row))))];
  return `${lines.map((line) => line.join(',')).join('\r\n')}\r\n`;
}

/**
 * A spreadsheet runs a cell that begins like a formula. Such text gets an apostrophe before it, which a spreadsheet
 * takes as "this is text"; numbers of our own are never text.
 */
function cell(value: Cell): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const safe = /^[\s\p{Cc}\p{Cf}]*[=+\-@＝＋－＠]/u.test(value) || /^[\t\r\n]/.test(value) ? `'${value}` : value;
  return /[",\r\n]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
