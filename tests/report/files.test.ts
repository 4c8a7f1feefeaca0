import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { findingsFileSchema, reportSchema } from '../../shared/schemas/report.ts';
import { writeReport } from '../../src/7-report/write-report.ts';
import { type DraftInput, gradeDraft } from '../grade/make-draft.ts';
import { crowdedDraft, fullInspection } from './full-inspection.ts';

const none = { stills: [], signed: null } as const;
const written = writeReport(fullInspection(), none);
const text = (name: string, from = written) => String(from.files.find((file) => file.name === name)!.content);

// csv-parse is the independent reader: it refuses rows of unequal length and stray quotes.
const rowsOf = (csv: string) => parse(csv, { columns: true, record_delimiter: '\r\n' }) as Record<string, string>[];

describe('findings.csv', () => {
  it('has one row a finding, readable by another program', () => {
    const rows = rowsOf(text('findings.csv'));
    expect(rows.map((row) => row.number)).toEqual(written.report.findings.map((f) => String(f.number)));
    expect(rows[0]).toMatchObject({
      kind: 'roots',
      distance_ft: '19.5',
      counter_ft: '23',
      clock: '11',
      percent: '25',
      severity: 'moderate',
      in_need_of_correction: 'yes',
      part: 'owner’s part',
      state: 'Draft, not signed. The inspector has not yet stood behind it.',
    });
    expect(rows.at(-1)).toMatchObject({ kind: 'hole', distance_ft: '' });
  });

  // What a spreadsheet runs: OWASP, "CSV Injection" (from memory): = + - @, tab and carriage return, also full width.
  it.each([
    '=1+1',
    '+1',
    '-1+cmd|calc',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '  =1',
    '＝1+1',
    '\u200b=1',
    '=HYPERLINK("http://x","y")',
  ])('does not let %j run as a formula', (words) => {
    const input: DraftInput = { observations: [{ kind: 'hole', heard: { start: 1, end: 2, text: words } }] };
    const [row] = rowsOf(text('findings.csv', writeReport(gradeDraft(input), none)));
    expect(row!.words).toBe(`'${words}`);
  });

  it('keeps commas, quotes and line breaks as they were said', () => {
    const words = 'a "big" one,\nover there, o\'clock';
    const input: DraftInput = { observations: [{ kind: 'hole', heard: { start: 1, end: 2, text: words } }] };
    expect(rowsOf(text('findings.csv', writeReport(gradeDraft(input), none)))[0]!.words).toBe(words);
  });

  it('has only its head when there is no finding', () => {
    const csv = text('findings.csv', writeReport(gradeDraft({}), none));
    expect(csv.trim().split('\r\n')).toHaveLength(1);
    expect(rowsOf(csv)).toEqual([]);
  });
});

describe('findings.json', () => {
  it('fits its schema and numbers what the report numbers', () => {
    const file = findingsFileSchema.parse(JSON.parse(text('findings.json')));
    expect(file).toMatchObject({ isSigned: false, address: '7 Plover Lane', date: '2026-03-04' });
    const numbers = file.findings.flatMap((f) => (f.number === null ? [] : [f.number]));
    expect(numbers).toEqual(written.report.findings.map((f) => f.number));
    expect(file.findings.find((f) => f.kind === 'intrusion')!.number).toBeNull();
  });
});

describe('summary.txt', () => {
  it('is short, plain and narrow, and says that it is a draft', () => {
    const summary = text('summary.txt');
    expect(summary.startsWith('DRAFT, NOT SIGNED.')).toBe(true);
    expect(Math.max(...summary.split('\n').map((line) => line.length))).toBeLessThanOrEqual(76);
    const flowing = summary.replace(/\n/g, ' ');
    for (const sentence of written.report.short) expect(flowing).toContain(sentence);
    expect(flowing).toContain('Not inspected: Run 1: beyond 44 ft 6 in');
    expect(flowing).toContain('2 items have not been settled and are not counted.');
  });
});

describe('the whole report', () => {
  it('fits its schema', () => {
    expect(reportSchema.parse(written.report)).toEqual(written.report);
  });

  it('is the same bytes when it is written again', () => {
    const again = writeReport(fullInspection(), none);
    for (const [index, file] of written.files.entries())
      expect(Buffer.from(again.files[index]!.content).equals(Buffer.from(file.content)), file.name).toBe(true);
  });

  it('says who signed it, and then no longer that it is a draft', () => {
    const signed = {
      name: 'R. Vance',
      license: 'SI-0417',
      statement: 'I saw what is written here.',
      time: '2026-03-04T11:20:00-08:00',
      version: 2,
      manifestSha256: 'cd'.repeat(32),
      publicKey: 'a2V5',
    };
    const { report, files } = writeReport(fullInspection(), { stills: [], signed });
    expect(report.draftNotice).toBeNull();
    expect(report.signature[0]).toBe(
      'Signed by R. Vance, license or certificate SI-0417, on March 4, 2026 at 11:20 (2026-03-04T11:20:00-08:00).',
    );
    expect(report.signature.join(' ')).toContain('lineword verify');
    for (const file of files.filter(({ name }) => !name.endsWith('.pdf')))
      expect(String(file.content), file.name).not.toMatch(/draft, not signed/i);
  });

  it.each([
    ['no finding', {}],
    ['no run', { runs: [], site: {} }],
    ['no distance', { runs: [{ end: null }], observations: [{ kind: 'hole', at: null, atBasis: null }] }],
    ['300 ft with 120 marks', crowdedDraft(120, 300)],
  ] as [string, DraftInput][])('is written for %s', (_name, input) => {
    const { files, warnings } = writeReport(gradeDraft(input), none);
    expect(warnings).toEqual([]);
    for (const file of files) expect(file.content.length, file.name).toBeGreaterThan(0);
  });
});
