/** Who reviews: the name and licence number of the last signing, kept in the configuration folder. */
import { mkdir, readFile } from 'node:fs/promises';
import { userInfo } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { writeWhole } from '../disk/write-whole.ts';

const inspectorFile = 'inspector.json';
const inspectorSchema = z.object({ name: z.string(), licence: z.string().nullable() });

/** The inspector who signed last; before the first signing the user name of the system. */
export async function knownInspector(configFolder: string): Promise<{ name: string; licence: string | null }> {
  try {
    return inspectorSchema.parse(JSON.parse(await readFile(join(configFolder, inspectorFile), 'utf8')));
  } catch {
    return { name: userName(), licence: null };
  }
}

export async function rememberInspector(
  configFolder: string,
  { name, licence }: { name: string; licence: string | null },
): Promise<void> {
  await mkdir(configFolder, { recursive: true, mode: 0o700 });
  await writeWhole(join(configFolder, inspectorFile), `${JSON.stringify({ name, licence }, null, 1)}\n`, 0o600);
}

function userName(): string {
  try {
    return userInfo().username;
  } catch {
    // A user without an entry in the system's list (some containers).
    return 'inspector';
  }
}
