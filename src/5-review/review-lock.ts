/**
 * One review a folder. `review.lock` (private file mode) says which process holds the folder and how to reach it, so
 * that a second `lineword review` joins the first instead of writing beside it. A lock whose process is gone, or does
 * not answer, is taken over.
 */
import { randomBytes } from 'node:crypto';
import { open, readFile, rm } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { ReviewError } from './review-error.ts';

export const lockFile = 'review.lock';

const lockSchema = z.object({
  host: z.string(),
  process: z.number().int(),
  port: z.number().int(),
  /** Whoever can read this file may ask the running review for a new address. */
  secret: z.string(),
});

export type ReviewLock = z.infer<typeof lockSchema>;

export type Claim =
  | { readonly held: { readonly secret: string; release(): Promise<void> } }
  /** Another review is running: it gave this address to join it. */
  | { readonly joinAddress: string };

/**
 * Takes the folder for the process listening on `port`, or gives the address of the review that has it.
 * @throws ReviewError when the folder is held on another computer, or by a process that cannot be reached.
 */
export async function claimFolder(folder: string, port: number): Promise<Claim> {
  const path = join(folder, lockFile);
  const lock: ReviewLock = { host: hostname(), process: process.pid, port, secret: randomBytes(24).toString('hex') };
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      const file = await open(path, 'wx', 0o600);
      await file.writeFile(`${JSON.stringify(lock)}\n`);
      await file.close();
      return { held: { secret: lock.secret, release: () => release(path, lock.secret) } };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') {
        throw new ReviewError(
          `The folder ${folder} cannot be written to (${(error as NodeJS.ErrnoException).code}): make it writable, or copy it to a place that is.`,
          { cause: error },
        );
      }
    }
    const other = await readLock(path);
    if (other && other.host !== lock.host) {
      throw new ReviewError(
        `A review of ${folder} is open on the computer "${other.host}": close it there, or delete ${path} if that computer is off.`,
      );
    }
    const joinAddress = other && (await askToJoin(other));
    if (joinAddress) return { joinAddress };
    if (other && isRunning(other.process) && other.process !== process.pid) {
      throw new ReviewError(
        `A review of ${folder} is open (process ${other.process}) but does not answer: end it, or delete ${path} if it is none of lineword.`,
      );
    }
    await rm(path, { force: true });
  }
  throw new ReviewError(`Another review of ${folder} is just starting: wait a moment and run it again.`);
}

async function readLock(path: string): Promise<ReviewLock | null> {
  try {
    return lockSchema.parse(JSON.parse(await readFile(path, 'utf8')));
  } catch {
    // Cut short by a crash, or gone meanwhile: nobody to talk to.
    return null;
  }
}

async function askToJoin(lock: ReviewLock): Promise<string | null> {
  try {
    const answer = await fetch(`http://127.0.0.1:${lock.port}/join`, {
      method: 'POST',
      headers: { 'x-lineword-secret': lock.secret },
      signal: AbortSignal.timeout(3000),
    });
    if (!answer.ok) return null;
    return z.object({ address: z.url() }).parse(await answer.json()).address;
  } catch {
    return null;
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

async function release(path: string, secret: string): Promise<void> {
  if ((await readLock(path))?.secret === secret) await rm(path, { force: true });
}
