import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { findingsFileSchema } from '../../shared/schemas/report.ts';
import { openDecisionLog, readDecisionLines } from '../../src/5-review/decision-log.ts';
import { readInspection } from '../../src/5-review/inspection.ts';
import { signInspection } from '../../src/5-review/sign-inspection.ts';
import { subjectsOf } from '../../src/5-review/subject.ts';
import { runDraw } from '../../src/cli/commands/draw.ts';
import { type GradeOptions, runGrade } from '../../src/cli/commands/grade.ts';
import { runReport } from '../../src/cli/commands/report.ts';
import type { Effects } from '../../src/cli/effects.ts';
import { type DraftInput, makeDraft } from '../grade/make-draft.ts';

const root = mkdtempSync(join(tmpdir(), 'lineword-report-'));
const configFolder = join(root, 'config');
const before = process.env.LINEWORD_CONFIG;
beforeAll(() => {
  process.env.LINEWORD_CONFIG = configFolder;
});
afterAll(() => {
  if (before === undefined) delete process.env.LINEWORD_CONFIG;
  else process.env.LINEWORD_CONFIG = before;
  rmSync(root, { recursive: true, force: true });
});

let printed: string[] = [];
let noted: string[] = [];
beforeEach(() => {
  printed = [];
  noted = [];
});
const effects: Effects = {
  print: (text) => void printed.push(text),
  note: (text) => void noted.push(text),
  style: (_format, text) => text,
  noteIsTerminal: false,
  program: 'lineword',
  columns: 80,
  nowSeconds: () => 0,
  interruptible: (work) => work(new AbortController().signal),
};

function folderWith(input: DraftInput): string {
  const folder = mkdtempSync(join(root, 'job-'));
  const recording = 'not really sound';
  writeFileSync(join(folder, 'plover-lane.m4a'), recording);
  const draft = makeDraft(input);
  const sha256 = createHash('sha256').update(recording).digest('hex');
  writeFileSync(join(folder, 'draft.json'), JSON.stringify({ ...draft, recording: { ...draft.recording, sha256 } }));
  return folder;
}

const read = (folder: string, name: string) => readFileSync(join(folder, name), 'utf8');
const report = (folder: string, options: object = {}) => runReport(folder, { stills: false, ...options }, effects);
const hole: DraftInput = {
  observations: [
    { kind: 'hole', at: 9 },
    { kind: 'offset-joint', at: 20, inches: 0.5 },
  ],
};
const flag = { reason: 'hedged' } as const;

describe('lineword grade', () => {
  it('keeps what it is told in inspection.json and writes grade.json', async () => {
    const folder = folderWith(hole);
    const options: GradeOptions = {
      date: '2026-03-04',
      inspector: 'R. Vance',
      entryOffset: [{ run: 1, value: 3.5 }],
      ownerEnds: 'property-line',
      soil: ['o2=no'],
    };
    await runGrade(folder, options, effects);
    expect(JSON.parse(read(folder, 'inspection.json'))).toMatchObject({
      date: '2026-03-04',
      inspector: { name: 'R. Vance' },
      runs: [{ n: 1, entryOffset: 3.5 }],
      answers: [{ observation: 'o2', kind: 'offset-joint', run: 1, at: 20, soilExposed: false }],
    });
    const grade = JSON.parse(read(folder, 'grade.json'));
    expect(grade.findings[0].at).toMatchObject({ feet: 5.5, counterFeet: 9 });
    // A second time with other options: what was told before stays.
    await runGrade(folder, { equipment: 'push camera' }, effects);
    expect(JSON.parse(read(folder, 'inspection.json'))).toMatchObject({ date: '2026-03-04', equipment: 'push camera' });
  });

  it('asks what a published limit needs', async () => {
    await runGrade(folderWith(hole), {}, effects);
    expect(printed.join('\n')).toContain(
      'Asked: Does soil show around this joint? (o2; answer with --soil o2=yes or =no)',
    );
  });

  it('counts what is open', async () => {
    await runGrade(folderWith({ observations: [{ kind: 'hole', review: [flag] }] }), {}, effects);
    expect(printed.join('\n')).toContain('One item is not settled and not graded');
  });

  it('takes a local rule file and keeps it with the folder', async () => {
    const folder = folderWith({ observations: [{ kind: 'belly', percent: 10 }] });
    const rules = join(root, 'district.json');
    const rule = {
      id: 'sag-under-25',
      kinds: ['belly'],
      when: [],
      severity: 'severe',
      action: 'repair',
      limit: 'any',
      source: 'District 4',
      why: 'So it says.',
    };
    writeFileSync(
      rules,
      JSON.stringify({ schema: 'lineword/rules@1', name: 'Standard 4', authority: 'District', rules: [rule] }),
    );
    await runGrade(folder, { rules }, effects);
    rmSync(rules);
    await report(folder);
    expect(findingsFileSchema.parse(JSON.parse(read(folder, 'findings.json'))).findings[0]!.grade!.severity).toBe(
      'severe',
    );
    expect(read(folder, 'report.html')).toContain('The local rules “Standard 4” of District');
  });

  it.each([
    ['an own grade without a reason', { own: ['o1=minor:watch'] }, /needs a reason/],
    ['a grade of no such name', { own: ['o1=bad:watch'], reason: 'x' }, /is no grade/],
    ['an answer of no such form', { soil: ['o2=maybe'] }, /is no answer/],
    ['an observation that is not there', { soil: ['o9=yes'] }, /no observation o9/],
    ['a date of no such form', { date: '4 March' }, /date/],
    ['a rule file that is not there', { rules: join(root, 'none.json') }, /Cannot read the rule file/],
  ] as [string, GradeOptions, RegExp][])(
    'refuses %s and leaves the folder as it was',
    async (_name, options, message) => {
      const folder = folderWith(hole);
      await expect(runGrade(folder, options, effects)).rejects.toThrow(message);
      expect([existsSync(join(folder, 'inspection.json')), existsSync(join(folder, 'grade.json'))]).toEqual([
        false,
        false,
      ]);
    },
  );

  it('says what is wrong in inspection.json', async () => {
    const folder = folderWith(hole);
    writeFileSync(join(folder, 'inspection.json'), '{"schema":"lineword/inspection@1","dete":"2026-03-04"}');
    await expect(runGrade(folder, {}, effects)).rejects.toThrow(/inspection\.json is wrong.*dete/);
  });
});

describe('lineword report', () => {
  it('of a folder nobody has reviewed lists what is open and is a draft', async () => {
    const folder = folderWith({
      observations: [
        { kind: 'hole', at: 9 },
        { kind: 'void', at: 30, review: [flag] },
      ],
    });
    await report(folder);
    expect(noted.join('')).toContain('One item is not settled');
    expect(noted.join('')).toContain('the report is a draft');
    const page = read(folder, 'report.html');
    expect(page).toContain('Not settled yet');
    expect(page).toContain('Draft, not signed.');
    for (const name of ['report.html', 'report.pdf', 'findings.csv', 'findings.json', 'summary.txt'])
      expect(existsSync(join(folder, name)), name).toBe(true);
  });

  it('writes the same bytes twice', async () => {
    const folder = folderWith(hole);
    const names = ['report.html', 'report.pdf', 'findings.csv', 'findings.json', 'summary.txt', 'grade.json'];
    await report(folder);
    const first = names.map((name) => readFileSync(join(folder, name)));
    await report(folder);
    for (const [index, name] of names.entries())
      expect(readFileSync(join(folder, name)).equals(first[index]!), name).toBe(true);
  });

  it('goes on without pictures when the recording is not at hand, and says so', async () => {
    const folder = folderWith(hole);
    rmSync(join(folder, 'plover-lane.m4a'));
    await report(folder, { stills: true });
    expect(noted.join('')).toMatch(/No pictures: The recording plover-lane\.m4a is neither/);
    expect(existsSync(join(folder, 'report.pdf'))).toBe(true);
  });

  it('writes elsewhere when asked', async () => {
    const out = join(root, 'elsewhere');
    await report(folderWith(hole), { out });
    expect(existsSync(join(out, 'report.html'))).toBe(true);
  });

  it('of a folder without a draft says what to do', async () => {
    await expect(report(mkdtempSync(join(root, 'bare-')))).rejects.toThrow(/holds no draft/);
    await expect(report(join(root, 'nowhere'))).rejects.toThrow(/There is no folder/);
  });

  describe('of a signed folder', () => {
    const signer = { name: 'R. Vance', licence: 'SI-0417', statement: 'I saw what is written here.' };
    /** Confirms every observation, as whoever signs must have listened to what was drawn. */
    async function confirmAll(folder: string): Promise<void> {
      const { draft } = await readInspection(folder);
      const log = await openDecisionLog(folder);
      for (const [index, subject] of subjectsOf(draft).observations.entries())
        await log.append({ action: 'confirm', subject, values: {} }, { id: `d${index}`, person: signer.name });
      await log.close();
    }
    async function sign(folder: string): Promise<void> {
      const { sealed } = readDecisionLines(readFileSync(join(folder, 'decisions.jsonl')));
      const decisions = sealed.map(({ decision }) => decision);
      const now = () => new Date('2026-03-04T19:20:00Z');
      await signInspection(await readInspection(folder), decisions, signer, configFolder, now);
    }

    it('names the signer and is no draft', async () => {
      const folder = folderWith(hole);
      await confirmAll(folder);
      await runGrade(folder, {}, effects);
      await sign(folder);
      await report(folder);
      const page = read(folder, 'report.html');
      expect(page).toContain('Signed by R. Vance, license or certificate SI-0417, on March 4, 2026 at 19:20 UTC');
      expect(page).not.toContain('Draft, not signed');
      expect(JSON.parse(read(folder, 'findings.json')).isSigned).toBe(true);
    });

    it('refuses to change the grade that was signed', async () => {
      const folder = folderWith(hole);
      await confirmAll(folder);
      await runGrade(folder, {}, effects);
      await sign(folder);
      const signedGrade = read(folder, 'grade.json');
      await expect(report(folder, { address: 'Another Street' })).rejects.toThrow(/changed since it was signed/);
      expect(read(folder, 'grade.json')).toBe(signedGrade);
    });

    it('is a draft again when something was changed after signing', async () => {
      const folder = folderWith(hole);
      await confirmAll(folder);
      await runGrade(folder, {}, effects);
      await sign(folder);
      await runGrade(folder, { address: 'Another Street' }, effects);
      await report(folder);
      expect(read(folder, 'report.html')).toContain('Draft, not signed');
      expect(noted.join('')).toContain('grade.json was changed after signing');
    });

    it('is a draft when the grade was not part of what was signed', async () => {
      const folder = folderWith(hole);
      await confirmAll(folder);
      await sign(folder);
      await report(folder);
      expect(read(folder, 'report.html')).toContain('Draft, not signed');
    });

    it('is a draft when the signature was tampered with', async () => {
      const folder = folderWith(hole);
      await confirmAll(folder);
      await runGrade(folder, {}, effects);
      await sign(folder);
      const manifest = join(folder, 'signed/1/manifest.json');
      writeFileSync(manifest, readFileSync(manifest, 'utf8').replace('R. Vance', 'S. Vance'));
      await report(folder);
      expect(read(folder, 'report.html')).toContain('Draft, not signed');
      expect(noted.join('')).toContain('does not fit its manifest');
    });
  });
});

describe('lineword draw', () => {
  it('writes the line and says where', async () => {
    const folder = folderWith(hole);
    await runDraw(folder, {}, effects);
    expect(printed).toEqual([join(folder, 'line.svg')]);
    expect(read(folder, 'line.svg')).toContain('Hole, 9 ft, severe');
  });

  it('says when there is nothing to draw', async () => {
    await runDraw(folderWith({ runs: [] }), {}, effects);
    expect(noted.join('')).toContain('nothing to draw');
  });
});
