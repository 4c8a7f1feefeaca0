/** The inspection folder as a review needs it: draft, words if there, and the recording's file or files. */
import { access, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { type Draft, draftSchema } from '../../shared/schemas/draft.ts';
import { type Words, wordsSchema } from '../../shared/schemas/word.ts';
import { readAs } from '../disk/read-as.ts';
import { hashFile } from './hash-file.ts';
import { ReviewError } from './review-error.ts';

export interface Inspection {
  readonly folder: string;
  readonly draft: Draft;
  /** Null when the folder has no words.json: the transcript is then made of the draft's own stretches. */
  readonly words: Words | null;
  /** In order. Empty when the draft was made from a typed transcript. */
  readonly recordingFiles: readonly string[];
  /** SHA-256 of `draft.json` as it was read: what is signed later must still be this. */
  readonly draftSha256: string;
}

/** @throws ReviewError with one sentence: no folder, no draft, a newer draft, no recording, another recording. */
export async function readInspection(folder: string, recording?: readonly string[]): Promise<Inspection> {
  const found = await stat(folder).catch(() => null);
  if (!found) throw new ReviewError(`There is no folder ${folder}: give the one that "lineword draft" wrote.`);
  if (!found.isDirectory()) throw new ReviewError(`${folder} is a file: give the folder that "lineword draft" wrote.`);
  const draft = await readAs(join(folder, 'draft.json'), draftSchema, 'draft');
  if (!draft) throw new ReviewError(`${folder} holds no draft: run "lineword draft" on the recording first.`);
  const { sha256: draftSha256 } = await hashFile(join(folder, 'draft.json'));
  const words = await readAs(join(folder, 'words.json'), wordsSchema, 'words');
  return { draftSha256, folder, draft, words, recordingFiles: await findRecording(folder, draft, words, recording) };
}

/** The recordings the draft was made from, in order. */
export function recordingParts({
  draft,
  words,
}: Pick<Inspection, 'draft' | 'words'>): { file: string; sha256: string }[] {
  return words?.recording.parts ?? [draft.recording];
}

/** Looks in the folder, then beside it; and makes sure that it is the recording the draft was made from. */
async function findRecording(
  folder: string,
  draft: Draft,
  words: Words | null,
  given?: readonly string[],
): Promise<string[]> {
  const parts = recordingParts({ draft, words });
  if (!given?.length && words?.hearing.model === 'transcript') return [];
  if (given?.length && given.length !== parts.length) {
    throw new ReviewError(
      `The draft was made from ${parts.length} recordings (${parts.map(({ file }) => file).join(', ')}): name all of them with --recording, in that order.`,
    );
  }
  const files: string[] = [];
  for (const [index, part] of parts.entries()) {
    const places = given?.length
      ? [resolve(given[index]!)]
      : [resolve(folder, part.file), resolve(dirname(resolve(folder)), part.file)];
    const file = await firstThere(places);
    if (!file) {
      throw new ReviewError(
        given?.length
          ? `There is no recording ${places[0]}: check the name given with --recording.`
          : `The recording ${part.file} is neither in ${folder} nor beside it: put it back, or say where it is with --recording.`,
      );
    }
    if ((await hashFile(file)).sha256 !== part.sha256) {
      throw new ReviewError(
        `${file} is not the recording this draft was made from (its SHA-256 differs): give the right one with --recording, or draft this one anew.`,
      );
    }
    files.push(file);
  }
  return files;
}

async function firstThere(paths: readonly string[]): Promise<string | null> {
  for (const path of paths) {
    const isThere = await access(path).then(
      () => true,
      () => false,
    );
    if (isThere) return path;
  }
  return null;
}
