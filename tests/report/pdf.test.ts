import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { composeReport } from '../../src/7-report/compose-report.ts';
import { reportPdf } from '../../src/7-report/pdf/write-pdf.ts';
import { type DraftInput, gradeDraft } from '../grade/make-draft.ts';
import { crowdedDraft, fullInspection } from './full-inspection.ts';

const none = { stills: [], signed: null } as const;
const pdfOf = (input: DraftInput) => reportPdf(composeReport(gradeDraft(input), none));
const spoken = (text: string): DraftInput => ({
  observations: [{ kind: 'hole', heard: { start: 1, end: 2, text } }],
});

const folder = mkdtempSync(join(tmpdir(), 'lineword-pdf-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
function onDisk(name: string, bytes: Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

const full = reportPdf(composeReport(fullInspection(), none));
const crowded = pdfOf(crowdedDraft(120, 300));

describe('the PDF', () => {
  it('calls itself PDF/UA-1 and is tagged', () => {
    const raw = full.bytes.toString('latin1');
    expect(raw.startsWith('%PDF-1.')).toBe(true);
    expect(raw).toContain('/MarkInfo');
    expect(full.warning).toBeNull();
  });

  it('is the same bytes when it is written again', () => {
    expect(reportPdf(composeReport(fullInspection(), none)).bytes.equals(full.bytes)).toBe(true);
  });

  it('falls back to a plain PDF with a warning when a letter is in no font', () => {
    const { bytes, warning } = pdfOf(spoken('right by the 漢字 sign'));
    expect(warning).toMatch(/No font of ours has 漢 字.*not PDF\/UA/);
    expect(bytes.length).toBeGreaterThan(10_000);
  });

  it('comes back to PDF/UA after such a report', () => {
    expect(reportPdf(composeReport(fullInspection(), none)).warning).toBeNull();
  });

  it.each(['#panic("x")', '#eval("1")', '*bold* _it_ $x^2$ = Head', '#{', '"]', '\\', '<label> @ref', '\u0000\u0007'])(
    'takes %j as words',
    (text) => {
      expect(pdfOf(spoken(text)).warning).toBeNull();
    },
  );
});

const hasTextTool = spawnSync('pdftotext', ['-v']).error === undefined;

describe.skipIf(!hasTextTool)('the PDF read by pdftotext (poppler)', () => {
  const textOf = (bytes: Uint8Array, ...options: string[]) =>
    execFileSync('pdftotext', [...options, onDisk('read.pdf', bytes), '-'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });

  it('says on every page of a draft that it is one', () => {
    for (const { bytes } of [full, crowded]) {
      const pages = textOf(bytes).split('\f').slice(0, -1);
      expect(pages.length).toBeGreaterThan(5);
      expect(pages.filter((page) => !page.includes('Draft, not signed.'))).toEqual([]);
    }
  });

  it('says so on no page once it is signed', () => {
    const signed = {
      name: 'R. Vance',
      license: null,
      statement: 'I saw what is written here.',
      time: '2026-03-04T19:20:00Z',
      version: 1,
      manifestSha256: 'cd'.repeat(32),
      publicKey: 'a2V5',
    };
    const text = textOf(reportPdf(composeReport(fullInspection(), { stills: [], signed })).bytes);
    expect(text).toContain('Signed by R. Vance, on March 4, 2026 at 19:20 UTC');
    expect(text).not.toMatch(/draft, not signed/i);
  });

  it('prints markup as it was typed', () => {
    const text = textOf(pdfOf(spoken('<b>x</b> #eval("1") *bold* $x^2$ [y] \\ `raw`')).bytes).replace(/\s+/g, ' ');
    expect(text).toContain('<b>x</b> #eval("1") *bold* $x^2$ [y] \\ `raw`');
  });

  it('leaves no heading at the foot of a page', () => {
    const headings = new Set([
      'Findings',
      'Limits',
      'Cautions',
      'Who owns what',
      'Signature',
      'What to do next',
      'The line',
      'The inspection',
      'Words of the trade',
      'How it was graded',
      'Looked for and not seen',
    ]);
    for (const { bytes } of [full, crowded]) {
      for (const page of textOf(bytes, '-layout').split('\f').slice(0, -1)) {
        const lines = page
          .split('\n')
          .map((line) => line.trim())
          .filter(Boolean);
        // The last line is the foot with the page number.
        expect(lines.at(-1)).toMatch(/Page \d+ of \d+$/);
        expect(headings.has(lines.at(-2)!)).toBe(false);
      }
    }
  });

  it('prints a speech of four thousand letters whole', () => {
    const speech = `first ${Array.from({ length: 700 }, (_, n) => `w${n}`).join(' ')} last`;
    const text = textOf(pdfOf(spoken(speech)).bytes);
    for (const word of ['first', 'w0', 'w350', 'w699', 'last']) expect(text).toMatch(new RegExp(`\\b${word}\\b`));
  });

  it('keeps every word on the page', () => {
    const wide = pdfOf({ ...spoken('x'.repeat(300)), site: { address: 'y'.repeat(120) } });
    const boxes = execFileSync('pdftotext', ['-bbox', onDisk('wide.pdf', wide.bytes), '-'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    const right = [...boxes.matchAll(/xMax="([\d.]+)"/g)].map((match) => Number(match[1]));
    expect(right.length).toBeGreaterThan(100);
    // US letter is 612 points wide with margins of 54; a word of 120 wide letters may hang over by one of them.
    expect(Math.max(...right)).toBeLessThanOrEqual(612 - 54 + 14);
  });
});

// veraPDF, the reference validator. Left out unless LINEWORD_VERAPDF names a folder with its jars, which
// "mvn dependency:copy-dependencies" gives for org.verapdf:validation-model 1.26.1.
const jars = process.env.LINEWORD_VERAPDF;
const hasVeraPdf = jars !== undefined && readdirSync(jars).length > 0 && spawnSync('java', ['-version']).status === 0;

describe.skipIf(!hasVeraPdf)('the PDF judged by veraPDF', () => {
  it.each([
    ['full', full],
    ['crowded', crowded],
    ['empty', pdfOf({ runs: [], site: {} })],
  ] as const)('%s is PDF/UA-1', (name, { bytes }) => {
    const check = join(import.meta.dirname, 'verapdf/CheckPdf.java');
    const said = spawnSync('java', ['-cp', join(jars!, '*'), check, onDisk(`${name}.pdf`, bytes)], {
      encoding: 'utf8',
    });
    expect(said.stdout).toMatch(/^compliant=true assertions=\d{3,}/);
  });
});
