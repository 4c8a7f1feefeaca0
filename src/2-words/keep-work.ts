/**
 * Keeps finished windows in a file, one line each batch, forced to the disk: a run that was stopped or killed goes on from
 * there. The file's name holds what the work depends on; a line that was cut off by the kill is left out.
 */
import { createHash } from 'node:crypto';
import { type FileHandle, mkdir, open, readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import type { Window } from './cut-windows.ts';
import type { HeardWindow, HearingSettings } from './hear-windows.ts';
import { HearingError } from './hearing-error.ts';

/** Raised when the method changes so that old work no longer fits. */
const METHOD = 4;

export interface KeptWork {
  find(batch: readonly Window[]): HeardWindow[] | undefined;
  add(batch: readonly Window[], results: readonly HeardWindow[]): Promise<void>;
  /** All is done: the kept work is no longer needed. */
  finish(): Promise<void>;
  close(): Promise<void>;
}

export async function openKeptWork(
  folder: string | undefined,
  recordingSha256: string,
  modelSha256: string,
  settings: HearingSettings,
): Promise<KeptWork> {
  const nothing = async (): Promise<void> => undefined;
  if (!folder) return { find: () => undefined, add: nothing, finish: nothing, close: nothing };
  const key = createHash('sha256')
    .update(JSON.stringify([METHOD, recordingSha256, modelSha256, settings]))
    .digest('hex')
    .slice(0, 16);
  const filePath = path.join(folder, `hearing-${key}.partial.jsonl`);
  const done = await readLines(filePath);
  let file: FileHandle;
  try {
    await mkdir(folder, { recursive: true });
    file = await open(filePath, 'a');
  } catch (cause) {
    throw new HearingError(
      `Nothing can be written to ${folder} (${(cause as Error).message}): choose another folder.`,
      { cause },
    );
  }
  return {
    find: (batch) => done.get(nameOf(batch)),
    async add(batch, results) {
      try {
        // A line break first: the last line may have been cut off by a kill.
        await file.appendFile(`\n${JSON.stringify({ batch: nameOf(batch), results })}`);
        await file.sync();
      } catch (cause) {
        throw new HearingError(
          `Work could not be kept in ${folder} (${(cause as Error).message}): free some space and run again.`,
          { cause },
        );
      }
    },
    finish: () => rm(filePath, { force: true }),
    close: () => file.close(),
  };
}

async function readLines(filePath: string): Promise<Map<string, HeardWindow[]>> {
  const done = new Map<string, HeardWindow[]>();
  for (const line of (await readFile(filePath, 'utf8').catch(() => '')).split('\n')) {
    try {
      const { batch, results } = JSON.parse(line) as { batch: string; results: HeardWindow[] };
      done.set(batch, results);
    } catch {
      // Empty, or cut off by a kill: heard again.
    }
  }
  return done;
}

const nameOf = (batch: readonly Window[]): string =>
  batch.map((window) => `${window.startSeconds.toFixed(3)}-${window.endSeconds.toFixed(3)}`).join(' ');
