/** `inspection.json`: what the inspector was asked. Read, with nothing assumed, and written whole. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Inspection, inspectionSchema } from '../../shared/schemas/inspection.ts';
import { writeWhole } from '../disk/write-whole.ts';
import { GradeError } from './grade-error.ts';

export const inspectionFile = 'inspection.json';

export function emptyInspection(): Inspection {
  return inspectionSchema.parse({ schema: 'lineword/inspection@1' });
}

/** Reads it, or gives an empty one when there is none. Throws GradeError naming the field that is wrong. */
export async function readInspectionFile(folder: string): Promise<Inspection> {
  const path = join(folder, inspectionFile);
  const text = await readFile(path, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return null;
    throw new GradeError(`Cannot read ${path} (${error.code}): check that you may read it.`);
  });
  return text === null ? emptyInspection() : parseInspection(text, path);
}

/** @param name how messages call the file */
export function parseInspection(text: string, name: string): Inspection {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    throw new GradeError(`${name} is not JSON: correct it, or remove it to start anew.`);
  }
  const parsed = inspectionSchema.safeParse(json);
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0]!;
  throw new GradeError(`${name} is wrong at ${issue.path.join('.') || 'the top'}: ${issue.message}.`);
}

export async function writeInspectionFile(folder: string, inspection: Inspection): Promise<void> {
  await writeWhole(join(folder, inspectionFile), `${JSON.stringify(inspection, null, 1)}\n`);
}
