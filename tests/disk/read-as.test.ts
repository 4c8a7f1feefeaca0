/** Each way in which one of our own files can be unusable is told apart from the others. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { FileError, readAs } from '../../src/disk/read-as.ts';

const folder = mkdtempSync(join(tmpdir(), 'lineword-read-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const schema = z.object({ schema: z.literal('lineword/draft@1'), runs: z.array(z.object({ n: z.number() })) });

describe('readAs', () => {
  const path = join(folder, 'draft.json');
  const read = (text: string) => {
    writeFileSync(path, text);
    return readAs(path, schema, 'draft');
  };

  it('gives what the file holds, and null when there is none', async () => {
    expect(await readAs(join(folder, 'none.json'), schema, 'draft')).toBe(null);
    const draft = { schema: 'lineword/draft@1', runs: [{ n: 1 }] };
    expect(await read(JSON.stringify(draft))).toEqual(draft);
  });

  it.each([
    ['{"schema": "linew', /is damaged \(not JSON\)/],
    ['[]', /does not hold lineword draft/],
    ['null', /does not hold lineword draft/],
    ['{"schema": "lineword/words@1"}', /does not hold lineword draft/],
    ['{"schema": "lineword/draft@2"}', /written by a newer lineword \(lineword\/draft@2\): update this one/],
    ['{"schema": "lineword/draft@1", "runs": [{"n": "one"}]}', /is damaged \(at runs\.0\.n\)/],
  ])('refuses %s', async (text, says) => {
    await expect(read(text)).rejects.toThrow(says);
    await expect(read(text)).rejects.toThrow(FileError);
  });

  it('refuses a folder of that name', async () => {
    mkdirSync(join(folder, 'words.json'));
    await expect(readAs(join(folder, 'words.json'), schema, 'words')).rejects.toThrow(/cannot be read \(EISDIR\)/);
  });
});
