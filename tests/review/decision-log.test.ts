import { appendFile, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import { type LogFile, openDecisionLog, readDecisionLines } from '../../src/5-review/decision-log.ts';
import { emptyFolder } from './make-inspection.ts';

const reject = (at: number): DecisionBody => ({
  action: 'reject',
  subject: { what: 'observation', kind: 'roots', at, words: 'roots – “at” 23½ 根', nth: 0 },
});
const pathIn = (folder: string) => join(folder, 'decisions.jsonl');

async function logWith(count: number): Promise<string> {
  const folder = await emptyFolder();
  const log = await openDecisionLog(folder);
  for (let n = 1; n <= count; n++) await log.append(reject(n), { id: `id-${n}`, person: 'R. Inspector' });
  await log.close();
  return folder;
}

describe('the decisions file', () => {
  test('gives back what was appended, in order, with time and person', async () => {
    const folder = await logWith(3);
    const log = await openDecisionLog(folder);
    expect(log.decisions.map(({ n, id, person }) => [n, id, person])).toEqual([
      [1, 'id-1', 'R. Inspector'],
      [2, 'id-2', 'R. Inspector'],
      [3, 'id-3', 'R. Inspector'],
    ]);
    expect(log.loss).toBeNull();
    await log.close();
  });
  test('writes the same id once, however often it is sent', async () => {
    const folder = await emptyFolder();
    const log = await openDecisionLog(folder);
    const twice = await Promise.all([1, 2].map(() => log.append(reject(1), { id: 'same', person: 'x' })));
    expect(twice[0]).toEqual(twice[1]);
    await log.close();
    expect((await readFile(pathIn(folder), 'utf8')).trim().split('\n')).toHaveLength(1);
  });
  test('keeps the good part when the last line is cut anywhere, says the loss, and goes on', async () => {
    const folder = await logWith(4);
    const whole = await readFile(pathIn(folder));
    const lastLine = whole.subarray(0, -1).lastIndexOf(0x0a) + 1;
    for (const cut of [lastLine + 1, lastLine + 40, whole.length - 30, whole.length - 2]) {
      await writeFile(pathIn(folder), whole.subarray(0, cut));
      const log = await openDecisionLog(folder);
      expect(log.decisions).toHaveLength(3);
      expect(log.loss).toMatch(/cut short and is lost: the 3 before it are kept/);
      await log.append(reject(9), { id: `after-${cut}`, person: 'x' });
      await log.close();
      const read = readDecisionLines(await readFile(pathIn(folder)));
      expect([read.sealed.length, read.fault, read.cutBytes.length]).toEqual([4, null, 0]);
    }
    const kept = (await readdir(folder)).filter((name) => name.startsWith('decisions.cut-'));
    expect(kept).toHaveLength(4);
  });
  test('a last line that only lacks its line break is whole', async () => {
    const folder = await logWith(2);
    await writeFile(pathIn(folder), (await readFile(pathIn(folder))).subarray(0, -1));
    const log = await openDecisionLog(folder);
    expect([log.decisions.length, log.loss]).toEqual([2, null]);
    await log.append(reject(3), { id: 'next', person: 'x' });
    await log.close();
    expect(readDecisionLines(await readFile(pathIn(folder))).sealed).toHaveLength(3);
  });
  test('refuses a line that was changed, removed or put in between, and changes nothing', async () => {
    const folder = await logWith(3);
    const lines = (await readFile(pathIn(folder), 'utf8')).trim().split('\n');
    const damaged = [
      [lines[0]!.replace('"at":1', '"at":7'), lines[1], lines[2]],
      [lines[0], lines[2]],
      [lines[1], lines[2]],
      [lines[0], lines[0], lines[1], lines[2]],
      [lines[0], '{"half":', lines[2]],
    ];
    for (const some of damaged) {
      const text = `${some.join('\n')}\n`;
      await writeFile(pathIn(folder), text);
      await expect(openDecisionLog(folder)).rejects.toThrow(
        /Line \d of .* is damaged .* nothing was opened or changed/,
      );
      expect(await readFile(pathIn(folder), 'utf8')).toBe(text);
    }
  });
  test('any single changed byte of a finished line is noticed', async () => {
    const folder = await logWith(2);
    const whole = await readFile(pathIn(folder));
    fc.assert(
      fc.property(fc.integer({ min: 0, max: whole.length - 2 }), fc.integer({ min: 1, max: 255 }), (at, by) => {
        const changed = Buffer.from(whole);
        changed[at] = changed[at]! ^ by;
        const read = readDecisionLines(changed);
        expect(read.fault !== null || read.sealed.length < 2).toBe(true);
      }),
      { numRuns: 400 },
    );
  });
  test('refuses to write beside another program', async () => {
    const folder = await emptyFolder();
    const log = await openDecisionLog(folder);
    await appendFile(pathIn(folder), 'something else\n');
    await expect(log.append(reject(1), { id: 'a', person: 'x' })).rejects.toThrow(/Another program has changed/);
    await log.close();
  });
});

describe('a full disk', () => {
  test('takes the half-written line off again, says so, and takes decisions when there is room', async () => {
    const folder = await emptyFolder();
    let room = 500;
    const log = await openDecisionLog(folder, {
      wrapFile: (file): LogFile => ({
        stat: file.stat.bind(file),
        sync: () => file.sync(),
        truncate: (size) => file.truncate(size),
        close: () => file.close(),
        // As a real disk does: it takes what fits, and only the next write fails.
        write: (async (bytes: Uint8Array) => {
          if (room === 0) throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
          const fitting = bytes.subarray(0, room);
          room -= fitting.length;
          return file.write(fitting);
        }) as LogFile['write'],
      }),
    });
    await log.append(reject(1), { id: 'a', person: 'x' });
    await expect(log.append(reject(2), { id: 'b', person: 'x' })).rejects.toThrow(
      'The disk is full, so this decision is not kept: free some space, then decide again.',
    );
    expect(log.decisions).toHaveLength(1);
    room = 10_000;
    await log.append(reject(2), { id: 'b', person: 'x' });
    await log.close();
    const read = readDecisionLines(await readFile(pathIn(folder)));
    expect(read.sealed.map(({ decision }) => decision.id)).toEqual(['a', 'b']);
    expect(read.cutBytes).toHaveLength(0);
  });
});
