/** `lineword draw`: the line of a folder as SVG, to scale. */
import type { Command } from 'commander';
import { type Effects, realEffects } from '../effects.ts';

export interface DrawOptions {
  out?: string;
}

export function register(program: Command): void {
  program
    .command('draw')
    .summary('draw the line to scale')
    .description('Writes the line of an inspection as SVG drawings: materials, fittings, defects and limits, to scale.')
    .argument('<folder>', 'the folder that "lineword draft" wrote')
    .option('-o, --out <folder>', 'where the drawings go (default: the folder itself)')
    .addHelpText('after', '\nExamples:\n  lineword draw alder-court')
    .action((folder: string, options: DrawOptions) => runDraw(folder, options, realEffects));
}

export async function runDraw(folder: string, options: DrawOptions, effects: Effects): Promise<void> {
  const { join } = await import('node:path');
  const { writeWhole } = await import('../../disk/write-whole.ts');
  const { readInspectionFile } = await import('../../6-grade/inspection-file.ts');
  const { drawInspection } = await import('../../7-report/draw-line.ts');
  const { drawingFiles } = await import('../../7-report/write-report.ts');
  const { gradeFolder } = await import('../grade-folder.ts');

  const { graded, remarks } = await gradeFolder(folder, await readInspectionFile(folder));
  for (const remark of remarks) effects.note(`${remark}\n`);
  const files = drawingFiles(drawInspection(graded));
  if (files.length === 0) {
    effects.note('No distance of any run is on record, so there is nothing to draw to scale.\n');
    return;
  }
  const out = options.out ?? folder;
  for (const file of files) await writeWhole(join(out, file.name), file.content);
  effects.print(files.map((file) => join(out, file.name)).join('\n'));
}
