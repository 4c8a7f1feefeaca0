/**
 * The report as PDF, tagged for screen readers (PDF/UA-1), by the Typst compiler. A letter that none of our fonts has
 * makes PDF/UA impossible: then a plain tagged PDF is written and a warning says which letters are missing.
 */
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { NodeCompiler, PdfStandard } from '@myriaddreamin/typst-ts-node-compiler';
import type { Report } from '../../../shared/schemas/report.ts';
import { allFonts, fontBytes } from '../fonts.ts';
import { printableText } from '../printable.ts';
import { ReportError } from '../report-error.ts';
import { template } from './template.ts';

export interface WrittenPdf {
  readonly bytes: Buffer;
  /** A sentence for the person at the keyboard, when the PDF is less than it should be. */
  readonly warning: string | null;
}

/** The compiler wants a folder to look for files in; ours are only in memory, so it is one that need not exist. */
const noFolder = join(tmpdir(), 'lineword-report-in-memory');

let compiler: NodeCompiler | null = null;

/** Loading fonts takes longer than a report, so one compiler serves them all. */
function theCompiler(): NodeCompiler {
  compiler ??= NodeCompiler.create({ workspace: noFolder, fontArgs: [{ fontBlobs: allFonts.map(fontBytes) }] });
  return compiler;
}

/** Throws ReportError when no PDF at all can be made. */
export function reportPdf(report: Report): WrittenPdf {
  const typst = theCompiler();
  typst.resetShadow();
  const stills = report.stills.map((still) => {
    const file = still.jpeg === null ? null : `/still-${still.number}.jpg`;
    if (file !== null) typst.mapShadow(join(noFolder, file), Buffer.from(still.jpeg!, 'base64'));
    return { caption: still.caption, file, why: still.why ?? 'none could be taken' };
  });
  const source = { mainFileContent: template, inputs: { data: JSON.stringify(printable({ ...report, stills })) } };
  try {
    return { bytes: typst.pdf(source, { pdfStandard: PdfStandard.UA_1 }), warning: null };
  } catch (error) {
    const letters = missingLetters(messageOf(error));
    if (letters.length === 0) throw new ReportError(`The PDF could not be made: ${firstFault(messageOf(error))}.`);
    return {
      bytes: typst.pdf(source, {}),
      warning: `No font of ours has ${letters.join(' ')}: the PDF shows empty boxes there and is not PDF/UA; the HTML report has them.`,
    };
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

function missingLetters(message: string): string[] {
  const found = [...message.matchAll(/the text `\\?"(.+?)\\?"` could not be displayed/g)].map((match) => match[1]!);
  return [...new Set(found)].slice(0, 12);
}

/** The compiler tells its faults as one long line; the first message in it is what matters. */
function firstFault(message: string): string {
  return /message: "((?:[^"\\]|\\.)*)"/.exec(message)?.[1] ?? message.slice(0, 200);
}

/** Every text of the report, deep inside too. */
function printable<T>(value: T): T {
  if (typeof value === 'string') return printableText(value) as T;
  if (Array.isArray(value)) return value.map(printable) as T;
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, printable(inner)])) as T;
  return value;
}
