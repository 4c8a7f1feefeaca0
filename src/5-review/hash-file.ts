import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';

/** The SHA-256 (hex) and size of a file, read in pieces. @throws what the file system throws. */
export async function hashFile(path: string): Promise<{ sha256: string; bytes: number }> {
  const hash = createHash('sha256');
  let bytes = 0;
  for await (const piece of createReadStream(path, { highWaterMark: 1 << 20 })) {
    hash.update(piece as Buffer);
    bytes += (piece as Buffer).length;
  }
  return { sha256: hash.digest('hex'), bytes };
}
