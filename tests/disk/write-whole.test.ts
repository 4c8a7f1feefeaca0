/** Whole or not at all, whatever the disk says. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { FileHandle } from 'node:fs/promises';
import * as fs from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { checkWritable, DiskError, writeWhole } from '../../src/disk/write-whole.ts';

vi.mock('node:fs/promises', { spy: true });

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lineword-disk-'));
});
afterEach(() => {
  vi.resetAllMocks();
  rmSync(folder, { recursive: true, force: true });
});

/** The next file that is opened fails with `code` when it is written to. */
function failWriting(code: string): void {
  const failing = async () => ({
    writeFile: () => Promise.reject(Object.assign(new Error(`${code}: made to fail`), { code })),
    sync: async () => {},
    close: async () => {},
  });
  vi.mocked(fs.open).mockImplementationOnce(failing as unknown as () => Promise<FileHandle>);
}

describe('writeWhole', () => {
  it('makes the folder, writes the file and leaves nothing beside it', async () => {
    await writeWhole(join(folder, 'a/b.json'), '{}');
    await writeWhole(join(folder, 'a/b.json'), '{"new": 1}');
    expect(readFileSync(join(folder, 'a/b.json'), 'utf8')).toBe('{"new": 1}');
    expect(readdirSync(join(folder, 'a'))).toEqual(['b.json']);
  });

  it.each([
    ['ENOSPC', /disk is full/],
    ['EDQUOT', /disk is full/],
    ['EROFS', /read-only/],
    ['EACCES', /read-only/],
    ['EIO', /made to fail/],
  ])('on %s keeps the old file and says what to do', async (code, says) => {
    const path = join(folder, 'old.json');
    writeFileSync(path, 'old');
    failWriting(code);
    const writing = writeWhole(path, 'new');
    await expect(writing).rejects.toThrow(DiskError);
    await expect(writing).rejects.toThrow(says);
    expect(readFileSync(path, 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['old.json']);
  });

  it('does not put a file in the place of a folder, nor a folder in the place of a file', async () => {
    mkdirSync(join(folder, 'taken'));
    await expect(writeWhole(join(folder, 'taken'), 'x')).rejects.toThrow(/folder of that name/);
    writeFileSync(join(folder, 'file'), 'mine');
    await expect(writeWhole(join(folder, 'file/inside.json'), 'x')).rejects.toThrow(/a file stands/);
    expect(readdirSync(folder).sort()).toEqual(['file', 'taken']);
  });
});

describe('checkWritable', () => {
  it('leaves nothing behind', async () => {
    await checkWritable(join(folder, 'new'));
    expect(readdirSync(join(folder, 'new'))).toEqual([]);
  });

  it('tells of a full disk before the long work', async () => {
    failWriting('ENOSPC');
    await expect(checkWritable(folder)).rejects.toThrow(/disk is full/);
  });
});
