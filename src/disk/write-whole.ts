/**
 * Whole files only: what is read back later is either the old file or the new one, never half of it.
 * The text goes to a file beside the target, is flushed to the disk, and then takes the target's name.
 * Any stage may use this; it knows nothing of the work.
 */
import { randomBytes } from 'node:crypto';
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** A file or folder could not be written. The message is a sentence for the person at the keyboard. */
export class DiskError extends Error {
  override readonly name = 'DiskError';
}

/**
 * Writes `content` to `path`, making its folder when needed; `mode` says who may read it (0o600: this user alone).
 * Throws DiskError; the old file then still stands.
 */
export async function writeWhole(path: string, content: string | Uint8Array, mode = 0o666): Promise<void> {
  await write(path, content, mode, path);
}

async function write(path: string, content: string | Uint8Array, mode: number, title: string): Promise<void> {
  const beside = `${path}.${process.pid}-${randomBytes(3).toString('hex')}.part`;
  try {
    await mkdir(dirname(path), { recursive: true });
    const file = await open(beside, 'wx', mode);
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => {});
    throw new DiskError(sentenceFor(error, title), { cause: error });
  }
}

/** Throws DiskError when nothing can be written into `folder`, which is made when missing. */
export async function checkWritable(folder: string): Promise<void> {
  const probe = join(folder, '.lineword-write-check');
  await write(probe, 'x\n', 0o666, folder);
  await rm(probe, { force: true });
}

function sentenceFor(error: unknown, title: string): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  switch (code) {
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return `Cannot write ${title}: the folder is read-only, so choose another one.`;
    case 'ENOSPC':
    case 'EDQUOT':
      return `Cannot write ${title}: the disk is full, so free some space or choose another folder.`;
    case 'ENOTDIR':
    case 'EEXIST':
      return `Cannot write ${title}: a file stands where a folder is needed, so choose another folder.`;
    case 'EISDIR':
      return `Cannot write ${title}: a folder of that name is in the way, so move it or choose another folder.`;
    default:
      return `Cannot write ${title}: ${error instanceof Error ? error.message : String(error)}`;
  }
}
