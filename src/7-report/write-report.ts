/**
 * Stage 7: from the grade to a report that a buyer, an agent and a plumber can each act on.
 * In: `grade.json` alone, the pictures at the findings when the recording is a video, and the signature when it was
 * checked and holds. Out: one HTML file that needs nothing else, a tagged PDF, findings.csv, findings.json, a short
 * summary.txt, and the line drawings. All are written from one composed report, so none says more than another, and
 * the same input gives the same bytes.
 * It refuses nothing that could be graded: no findings, no distances, open items and unstated facts are all said.
 */
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Drawing, Report } from '../../shared/schemas/report.ts';
import { numberedFindings } from './compose-findings.ts';
import { composeReport, type ReportParts } from './compose-report.ts';
import { findingsCsv } from './files/findings-csv.ts';
import { findingsFile } from './files/findings-json.ts';
import { summaryText } from './files/summary-text.ts';
import { reportHtml } from './html/write-html.ts';
import { reportPdf } from './pdf/write-pdf.ts';

export interface WrittenReport {
  readonly report: Report;
  /** Name to content, in the order in which they are worth reading. */
  readonly files: readonly { readonly name: string; readonly content: string | Uint8Array }[];
  /** Sentences for the person at the keyboard. */
  readonly warnings: readonly string[];
}

export function writeReport(graded: Graded, parts: ReportParts): WrittenReport {
  const report = composeReport(graded, parts);
  const numbered = numberedFindings(graded);
  const pdf = reportPdf(report);
  return {
    report,
    files: [
      { name: 'report.html', content: reportHtml(report) },
      { name: 'report.pdf', content: pdf.bytes },
      { name: 'findings.csv', content: findingsCsv(report, numbered) },
      {
        name: 'findings.json',
        content: `${JSON.stringify(findingsFile(graded, numbered, parts.signed !== null), null, 1)}\n`,
      },
      { name: 'summary.txt', content: summaryText(report) },
    ],
    warnings: pdf.warning === null ? [] : [pdf.warning],
  };
}

/** File names for drawings: `line.svg`, or `line-1.svg`, `line-2.svg` when there are several sheets. */
export function drawingFiles(drawings: readonly Drawing[]): { name: string; content: string }[] {
  return drawings.map((drawing, index) => ({
    name: drawings.length === 1 ? 'line.svg' : `line-${index + 1}.svg`,
    content: `<?xml version="1.0" encoding="UTF-8"?>\n${drawing.svg}\n`,
  }));
}
