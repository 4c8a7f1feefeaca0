import { randomBytes } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import { ReviewError } from './review-error.ts';

/** Writes a file that only this user may read, whole or not at all. @throws ReviewError */
export async function writePrivate(path: string, content: string): Promise<void> {
  const beside = `${path}.${randomBytes(3).toString('hex')}.part`;
  try {
    const file = await open(beside, 'wx', 0o600);
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (cause) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw new ReviewError(
      `${path} could not be written (${(cause as NodeJS.ErrnoException).code}): see that the disk has room and the folder is yours.`,
      { cause },
    );
  }
}
