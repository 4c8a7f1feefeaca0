/** `lineword report`: writes the report of a folder, signed or as a draft. */
import type { Command } from 'commander';
import type { SignedFacts } from '../../7-report/signed-facts.ts';
import type { RecordingPart } from '../../7-report/take-stills.ts';
import { CliError } from '../cli-error.ts';
import { type Effects, realEffects } from '../effects.ts';
import { addInspectionOptions, type InspectionOptions, withOptions } from '../inspection-options.ts';

export interface ReportOptions extends InspectionOptions {
  out?: string;
  recording?: string[];
  ffmpeg?: string;
  stills: boolean;
  quiet?: true;
}

export function register(program: Command): void {
  const command = program
    .command('report')
    .summary('write the report')
    .description(
      'Writes report.html, report.pdf, findings.csv, findings.json and summary.txt. A folder that nobody has signed gives a draft that says so on every page.',
    )
    .argument('<folder>', 'the folder that "lineword draft" wrote')
    .option('-o, --out <folder>', 'where the files go (default: the folder itself)')
    .option('--recording <file...>', 'where the recording is, when it is neither in the folder nor beside it')
    .option('--ffmpeg <path>', 'the ffmpeg program to take pictures with')
    .option('--no-stills', 'leave the pictures out')
    .option('-q, --quiet', 'print nothing unless something is wrong');
  addInspectionOptions(command)
    .addHelpText(
      'after',
      '\nExamples:\n  lineword report alder-court\n  lineword report alder-court --out ~/reports/alder-court --units meters',
    )
    .action((folder: string, options: ReportOptions) => runReport(folder, options, realEffects));
}

export async function runReport(folder: string, options: ReportOptions, effects: Effects): Promise<void> {
  const { readFile } = await import('node:fs/promises');
  const { join } = await import('node:path');
  const { writeWhole } = await import('../../disk/write-whole.ts');
  const { readInspectionFile, writeInspectionFile } = await import('../../6-grade/inspection-file.ts');
  const { writeReport } = await import('../../7-report/write-report.ts');
  const { gradeFile, gradeFolder, gradeText } = await import('../grade-folder.ts');

  const asked = await readInspectionFile(folder);
  const inspection = withOptions(asked, options);
  const { graded, remarks } = await gradeFolder(folder, inspection);
  const text = gradeText(graded);
  const gradePath = join(folder, gradeFile);
  const before = await readFile(gradePath, 'utf8').catch(() => null);
  const standing = await standingSignature(folder, options.recording);
  if (standing.signed !== null && before !== text) {
    throw new CliError(
      'The grade has changed since it was signed: run "lineword grade" on the folder and sign it anew, or take the change back.',
    );
  }
  if (JSON.stringify(inspection) !== JSON.stringify(asked)) await writeInspectionFile(folder, inspection);
  if (before !== text) await writeWhole(gradePath, text);

  const pictures = await picturesFor(folder, graded, options);
  const written = writeReport(graded, { stills: pictures.stills, signed: standing.signed });
  const out = options.out ?? folder;
  for (const file of written.files) await writeWhole(join(out, file.name), file.content);
  for (const remark of [...remarks, ...standing.remarks, ...pictures.remarks, ...written.warnings])
    effects.note(`${remark}\n`);
  if (options.quiet) return;
  const open = written.report.openItems.length;
  if (open > 0)
    effects.note(
      open === 1
        ? 'One item is not settled: the report lists it and does not count it.\n'
        : `${open} items are not settled: the report lists them and does not count them.\n`,
    );
  if (written.report.draftNotice !== null)
    effects.note('Nobody has signed this folder, so the report is a draft: sign it with "lineword review".\n');
  effects.print(written.files.map((file) => join(out, file.name)).join('\n'));
}

/** The newest signature, when it holds, covers the grade and nothing has changed since. */
async function standingSignature(
  folder: string,
  recording: readonly string[] | undefined,
): Promise<{ signed: SignedFacts | null; remarks: string[] }> {
  const { existsSync } = await import('node:fs');
  const { join } = await import('node:path');
  const { signedFolder } = await import('../../5-review/sign-inspection.ts');
  if (!existsSync(join(folder, signedFolder))) return { signed: null, remarks: [] };
  const { createHash } = await import('node:crypto');
  const { readFile } = await import('node:fs/promises');
  const { verifyInspection } = await import('../../5-review/verify-inspection.ts');
  const { configFolder } = await import('../../disk/config-folder.ts');
  const found = await verifyInspection(folder, configFolder(), recording);
  const newest = found.versions.at(-1);
  const faults = [...found.versions.flatMap(({ faults }) => faults), ...found.changedSince];
  if (!found.isWhole || !newest?.manifest)
    return {
      signed: null,
      remarks: [`The signature does not stand for this folder (${faults.join(' ')}): the report is a draft.`],
    };
  const { manifest } = newest;
  if (!manifest.files.some((file) => file.role === 'grade'))
    return {
      signed: null,
      remarks: ['The grade was not part of what was signed: run "lineword grade", then sign anew.'],
    };
  const bytes = await readFile(join(folder, signedFolder, String(newest.version), 'manifest.json'));
  return {
    remarks: [],
    signed: {
      name: manifest.signer.name,
      license: manifest.signer.licence,
      statement: manifest.signer.statement,
      time: manifest.signedAt,
      version: manifest.version,
      manifestSha256: createHash('sha256').update(bytes).digest('hex'),
      publicKey: manifest.publicKey,
    },
  };
}

/** Pictures at the findings. A recording that is not at hand costs the pictures, not the report. */
async function picturesFor(
  folder: string,
  graded: Parameters<typeof import('../../7-report/compose-findings.ts').numberedFindings>[0],
  options: ReportOptions,
): Promise<{
  stills: Awaited<ReturnType<typeof import('../../7-report/take-stills.ts').takeStills>>;
  remarks: string[];
}> {
  if (!options.stills) return { stills: [], remarks: [] };
  const { readInspection } = await import('../../5-review/inspection.ts');
  const { ReviewError } = await import('../../5-review/review-error.ts');
  const { FileError } = await import('../../disk/read-as.ts');
  const { findFfmpeg } = await import('../../1-recording/find-ffmpeg.ts');
  const { numberedFindings } = await import('../../7-report/compose-findings.ts');
  const { unitsOf } = await import('../../7-report/compose-runs.ts');
  const { takeStills } = await import('../../7-report/take-stills.ts');
  let parts: RecordingPart[];
  try {
    const inspection = await readInspection(folder, options.recording);
    const seconds = (inspection.words?.recording.parts ?? [inspection.draft.recording]).map((part) => part.seconds);
    let startSeconds = 0;
    parts = inspection.recordingFiles.map((path, index) => {
      const part = { path, startSeconds, seconds: seconds[index] ?? 0 };
      startSeconds += part.seconds;
      return part;
    });
  } catch (error) {
    if (!(error instanceof ReviewError || error instanceof FileError)) throw error;
    return { stills: [], remarks: [`No pictures: ${error.message}`] };
  }
  if (parts.length === 0) return { stills: [], remarks: [] };
  const ffmpeg = findFfmpeg(options.ffmpeg);
  if (ffmpeg === null)
    return { stills: [], remarks: ['No pictures: there is no ffmpeg on this computer to take them with.'] };
  return { stills: await takeStills(parts, numberedFindings(graded), ffmpeg.path, unitsOf(graded)), remarks: [] };
}
