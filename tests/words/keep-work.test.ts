import { appendFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import type { Window } from '../../src/2-words/cut-windows.ts';
import { openKeptWork } from '../../src/2-words/keep-work.ts';
import { defaultSettings } from '../../src/2-words/settings.ts';
import { makeFolder } from '../recording/make-sound.ts';

const folder = makeFolder();
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const batch = [{ startSeconds: 1, endSeconds: 9 }] as unknown as Window[];
const other = [{ startSeconds: 9, endSeconds: 20 }] as unknown as Window[];
const results = [{ words: [{ text: 'roots', startSeconds: 2, endSeconds: 3, probability: 0.9 }], lost: [] }];
const settings = defaultSettings([]);
const files = () => readdirSync(folder).filter((name) => name.endsWith('.partial.jsonl'));

describe('work in progress', () => {
  test('is found again after a kill, a half-written line is not', async () => {
    const first = await openKeptWork(folder, 'sound', 'model', settings);
    await first.add(batch, results);
    // A kill: not finished, not closed; and the next line was cut off.
    appendFileSync(path.join(folder, files()[0]!), '\n{"batch":"9.000-20.000","resu');
    await first.close();
    const second = await openKeptWork(folder, 'sound', 'model', settings);
    expect(second.find(batch)).toEqual(results);
    expect(second.find(other)).toBeUndefined();
    await second.add(other, results);
    await second.close();
    const third = await openKeptWork(folder, 'sound', 'model', settings);
    expect(third.find(other)).toEqual(results);
    await third.close();
  });

  test.each([
    ['another recording', ['sound 2', 'model', settings]],
    ['another model', ['sound', 'model 2', settings]],
    ['another setting', ['sound', 'model', { ...settings, beams: 1 }]],
    ["the speaker's own words", ['sound', 'model', defaultSettings(['Quillfeather'])]],
  ] as const)('does not serve %s', async (_, [sound, model, own]) => {
    const kept = await openKeptWork(folder, sound, model, own);
    expect(kept.find(batch)).toBeUndefined();
    await kept.finish();
    await kept.close();
  });

  test('is gone when all is done', async () => {
    const kept = await openKeptWork(folder, 'sound', 'model', settings);
    await kept.finish();
    await kept.close();
    expect(files()).toEqual([]);
  });

  test('a folder that cannot be written to is one sentence', async () => {
    const inTheWay = path.join(folder, 'file');
    writeFileSync(inTheWay, '');
    await expect(openKeptWork(path.join(inTheWay, 'x'), 'sound', 'model', settings)).rejects.toMatchObject({
      name: 'HearingError',
      message: expect.stringMatching(/choose another folder/),
    });
  });
});
