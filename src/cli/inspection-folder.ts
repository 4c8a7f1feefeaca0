/**
 * The folder of one inspection: what lies in it, how its files are read, and what may not be overwritten.
 * `words.json` and `draft.json` are the program's work and can be made again; `decisions.jsonl` is a person's.
 */
import { existsSync } from 'node:fs';
import { rmdir, stat } from 'node:fs/promises';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { type Draft, draftSchema } from '../../shared/schemas/draft.ts';
import { type Words, wordsSchema } from '../../shared/schemas/word.ts';
import { readAs } from '../disk/read-as.ts';
import { CliError } from './cli-error.ts';

export const fileNames = {
  words: 'words.json',
  draft: 'draft.json',
  decisions: 'decisions.jsonl',
} as const;

/** Where the results of these inputs go when nobody says: beside the first, in a folder named after it. */
export function folderFor(firstInput: string): string {
  const path = resolve(firstInput);
  if (basename(path) === fileNames.words) return dirname(path);
  const name = basename(path, extname(path));
  return join(dirname(path), name === basename(path) ? `${name}-lineword` : name);
}

export async function readWords(path: string): Promise<Words> {
  return (await readAs(path, wordsSchema, 'words')) ?? notThere(path);
}

export async function readDraft(path: string): Promise<Draft> {
  return (await readAs(path, draftSchema, 'draft')) ?? notThere(path);
}

function notThere(path: string): never {
  throw new CliError(`There is no file ${path}: check the name and the folder.`);
}

/** The folder a person names after `explain` and the like, with a draft in it. Throws CliError when it has none. */
export async function checkDraftFolder(folder: string): Promise<void> {
  const found = await stat(folder).catch(() => null);
  if (found === null) throw new CliError(`There is no folder ${folder}: give the one that "lineword draft" wrote.`);
  if (!found.isDirectory()) {
    throw new CliError(
      `${folder} is a file: give the folder that "lineword draft" wrote (for a new recording, run "lineword draft" on it first).`,
    );
  }
  if (!existsSync(join(folder, fileNames.draft))) {
    throw new CliError(`${folder} holds no draft: run "lineword draft" on the recording first.`);
  }
}

/** Takes back a folder that was made for nothing. */
export async function removeIfEmpty(folder: string): Promise<void> {
  await rmdir(folder).catch(() => {}); // It holds something, or was never made: both are fine.
}

/** The form in which words and drafts are written, and compared with what is there. */
export function asJson(value: Words | Draft): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}
