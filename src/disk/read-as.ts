/**
 * Reads one of lineword's own JSON files and holds it against its schema. The schema is handed in: this knows only that
 * such a file names itself and its version in "schema" ("lineword/draft@1").
 */
import { readFile } from 'node:fs/promises';

/** A file is there and cannot be used. The message is a sentence for the person at the keyboard. */
export class FileError extends Error {
  override readonly name = 'FileError';
}

interface Schema<T> {
  safeParse(
    data: unknown,
  ): { success: true; data: T } | { success: false; error: { issues: { path: PropertyKey[] }[] } };
}

/** What the file holds, or null when there is none. Throws FileError for one that cannot be read or used. */
export async function readAs<T>(path: string, schema: Schema<T>, noun: 'draft' | 'words'): Promise<T | null> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    if (code === 'ENOENT') return null;
    throw new FileError(`${path} cannot be read (${code}): check its permissions.`, { cause });
  }
  const again = 'run "lineword draft" on the recording again';
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (cause) {
    throw new FileError(`${path} is damaged (not JSON): ${again}.`, { cause });
  }
  const parsed = schema.safeParse(data);
  if (parsed.success) return parsed.data;
  const name = typeof data === 'object' && data !== null && 'schema' in data ? String(data.schema) : '';
  const [family, version] = name.split('@');
  if (family !== `lineword/${noun}`) {
    throw new FileError(`${path} does not hold lineword ${noun}: give another file, or ${again}.`);
  }
  if (Number(version) > 1) {
    throw new FileError(`${path} was written by a newer lineword (${name}): update this one, or ${again}.`);
  }
  const where = parsed.error.issues[0]?.path.join('.') || 'its top';
  throw new FileError(`${path} is damaged (at ${where}): ${again}.`);
}
