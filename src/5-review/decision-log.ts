/**
 * `decisions.jsonl`: opened, read back, appended to. An append is done when the line is on the disk (fsync); until
 * then nobody is told that it is kept. A line that could not be written whole is taken off again, so that the file
 * always ends with a whole line. A last line cut short by a crash is moved to a file beside it and reported.
 */
import { randomUUID } from 'node:crypto';
import { type FileHandle, open } from 'node:fs/promises';
import { join } from 'node:path';
import type { Decision, DecisionBody } from '../../shared/schemas/decision.ts';
import { writeWhole } from '../disk/write-whole.ts';
import { openLine, type SealedDecision, sealDecision } from './decision-line.ts';
import { ReviewError } from './review-error.ts';

export const decisionsFile = 'decisions.jsonl';

export interface DecisionLog {
  readonly decisions: readonly Decision[];
  /** What was lost when the file was opened, in one sentence; null when nothing was. */
  readonly loss: string | null;
  /**
   * Appends one decision and flushes it to the disk. The same `id` a second time changes nothing and gives the line
   * that is there. @throws ReviewError: the disk is full, the file was changed by another program.
   */
  append(body: DecisionBody, stamp: { id: string; person: string }): Promise<Decision>;
  close(): Promise<void>;
}

/** The part of a file handle that appending needs; tests put a full disk in its place. */
export type LogFile = Pick<FileHandle, 'write' | 'sync' | 'truncate' | 'stat' | 'close'>;

export interface DecisionLogOptions {
  readonly now?: () => Date;
  readonly wrapFile?: (file: FileHandle) => LogFile;
}

/** @throws ReviewError when a line before the last is damaged: nothing is changed then. */
export async function openDecisionLog(folder: string, options: DecisionLogOptions = {}): Promise<DecisionLog> {
  const path = join(folder, decisionsFile);
  const handle = await openForAppend(path, folder);
  const file = options.wrapFile?.(handle) ?? handle;
  try {
    const bytes = await handle.readFile();
    const read = readDecisionLines(bytes);
    if (read.fault) throw new ReviewError(damaged(path, read.fault));
    let size = bytes.length;
    let loss: string | null = null;
    if (read.cutBytes.length > 0) {
      const saved = await keepCutPart(folder, read.cutBytes);
      size -= read.cutBytes.length;
      await handle.truncate(size);
      await handle.sync();
      loss = `The last decision in ${decisionsFile} was cut short and is lost: the ${read.sealed.length} before it are kept, and the cut piece lies in ${saved}.`;
    } else if (bytes.length > 0 && bytes.at(-1) !== 0x0a) {
      await handle.write('\n');
      await handle.sync();
      size += 1;
    }
    return makeLog(path, file, read.sealed, size, loss, options.now ?? (() => new Date()));
  } catch (error) {
    await handle.close();
    throw error;
  }
}

export interface ReadLines {
  readonly sealed: SealedDecision[];
  /** A last line that is not whole. */
  readonly cutBytes: Uint8Array;
  /** A damaged line that is not the last. */
  readonly fault: { readonly line: number; readonly why: string } | null;
}

/** Reads the lines of a decisions file and follows the chain. Pure. */
export function readDecisionLines(bytes: Uint8Array): ReadLines {
  const sealed: SealedDecision[] = [];
  const text = new TextDecoder();
  for (let from = 0; from < bytes.length; ) {
    const lineBreak = bytes.indexOf(0x0a, from);
    const to = lineBreak === -1 ? bytes.length : lineBreak;
    const opened = openLine(text.decode(bytes.subarray(from, to)));
    const before = sealed.at(-1)?.sum ?? null;
    if ('fault' in opened) {
      // Only a line without its line break can be one that a crash cut; anything else was done to the file.
      if (lineBreak === -1) return { sealed, cutBytes: bytes.subarray(from), fault: null };
      return { sealed, cutBytes: bytes.subarray(0, 0), fault: { line: sealed.length + 1, why: opened.fault } };
    }
    if (opened.sealed.decision.previous !== before || opened.sealed.decision.n !== sealed.length + 1) {
      const why = 'it does not follow the line before it';
      return { sealed, cutBytes: bytes.subarray(0, 0), fault: { line: sealed.length + 1, why } };
    }
    sealed.push(opened.sealed);
    from = to + 1;
  }
  return { sealed, cutBytes: bytes.subarray(bytes.length), fault: null };
}

function makeLog(
  path: string,
  file: LogFile,
  sealed: SealedDecision[],
  startSize: number,
  loss: string | null,
  now: () => Date,
): DecisionLog {
  const decisions = sealed.map(({ decision }) => decision);
  const byId = new Map(decisions.map((decision) => [decision.id, decision]));
  let lastSum = sealed.at(-1)?.sum ?? null;
  let size = startSize;
  let queue: Promise<unknown> = Promise.resolve();

  async function appendNow(body: DecisionBody, { id, person }: { id: string; person: string }): Promise<Decision> {
    const known = byId.get(id);
    if (known) return known;
    const decision: Decision = {
      n: decisions.length + 1,
      id,
      time: now().toISOString(),
      person,
      previous: lastSum,
      ...body,
    };
    const { sum, line } = sealDecision(decision);
    if ((await file.stat()).size !== size) {
      throw new ReviewError(`Another program has changed ${path}: close this review and open it again.`);
    }
    const bytes = Buffer.from(`${line}\n`);
    try {
      // A single write may stop short when the disk fills; the next one then gives the reason.
      for (let done = 0; done < bytes.length; ) done += (await file.write(bytes.subarray(done))).bytesWritten;
      await file.sync();
    } catch (cause) {
      await file.truncate(size).catch(() => undefined);
      throw new ReviewError(notWritten(cause), { cause });
    }
    size += bytes.length;
    lastSum = sum;
    decisions.push(decision);
    byId.set(id, decision);
    return decision;
  }

  return {
    decisions,
    loss,
    append(body, stamp) {
      const done = queue.then(() => appendNow(body, stamp));
      queue = done.catch(() => undefined);
      return done;
    },
    async close() {
      await queue;
      await file.close();
    },
  };
}

async function openForAppend(path: string, folder: string): Promise<FileHandle> {
  try {
    const handle = await open(path, 'a+', 0o644);
    // The folder's own entry of the file must reach the disk too, or a crash could lose the whole file.
    const parent = await open(folder, 'r').catch(() => null);
    await parent?.sync().catch(() => undefined);
    await parent?.close();
    return handle;
  } catch (cause) {
    throw new ReviewError(
      `Decisions cannot be written into ${folder} (${(cause as NodeJS.ErrnoException).code}): make the folder writable, or copy it to a place that is.`,
      { cause },
    );
  }
}

/** Puts the cut piece into a file of its own; its name comes back. */
async function keepCutPart(folder: string, bytes: Uint8Array): Promise<string> {
  const name = `decisions.cut-${new Date().toISOString().replaceAll(/[:.]/g, '-')}-${randomUUID().slice(0, 4)}.txt`;
  await writeWhole(join(folder, name), bytes);
  return name;
}

function damaged(path: string, fault: { line: number; why: string }): string {
  return `Line ${fault.line} of ${path} is damaged (${fault.why}), so nothing was opened or changed: put back a copy of the file, or rename it to begin the review anew.`;
}

function notWritten(cause: unknown): string {
  const code = (cause as NodeJS.ErrnoException).code;
  return code === 'ENOSPC' || code === 'EDQUOT' || code === 'EFBIG'
    ? 'The disk is full, so this decision is not kept: free some space, then decide again.'
    : `This decision could not be written (${code ?? String(cause)}), so it is not kept: see that the folder is still there, then decide again.`;
}
