/** `npm run score` on the sample: drafts from the transcript, the table, the figures in a file, and its refusals. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const sample = join(root, 'fixtures/sample');
const out = mkdtempSync(join(tmpdir(), 'lineword-score-test-'));
afterAll(() => rmSync(out, { recursive: true, force: true }));

function score(...args: string[]) {
  return spawnSync(process.execPath, [join(root, 'dist/src/score/main.js'), ...args], { cwd: root, encoding: 'utf8' });
}

describe('score', () => {
  it('drafts every narration with gold and prints how it compares', () => {
    const ran = score(sample, '--out', out, '--json', join(out, 'figures.json'));
    expect(ran.stderr).toBe('');
    expect(ran.status).toBe(0);
    expect(ran.stdout).toMatch(/^amber-hill-road +\d+\.\d/m);
    expect(ran.stdout).toMatch(/^silent errors: \d+ of \d+ unflagged, at most/m);
    expect(readdirSync(out).sort()).toEqual(['amber-hill-road.draft.json', 'figures.json']);
    const figures = JSON.parse(readFileSync(join(out, 'figures.json'), 'utf8'));
    expect(figures.rows).toMatchObject([{ id: 'amber-hill-road', missing: false, counts: { gold: 13 } }]);
    expect(figures.reliability.bins).toHaveLength(5);
  });

  it('scores drafts made before without drafting, and says where one is missing', () => {
    expect(score(sample, '--drafts', out).stdout).not.toContain('no draft');
    expect(score(sample, '--drafts', sample).stdout).toContain('no draft');
  });

  it('takes up words heard before', () => {
    const words = {
      schema: 'lineword/words@1',
      recording: { file: 'x', sha256: '0', seconds: 2 },
      hearing: { model: 'x', sha256: null },
      words: [{ text: 'hello', startSeconds: 0, endSeconds: 1, probability: 0.9 }],
    };
    writeFileSync(join(out, 'amber-hill-road.words.json'), JSON.stringify(words));
    const ran = score(sample, '--audio', '--out', out);
    expect(ran.status).toBe(0);
    expect(JSON.parse(readFileSync(join(out, 'amber-hill-road.draft.json'), 'utf8')).observations).toEqual([]);
  });

  it.each([
    ['a folder that is not there', 'no-such-folder', /no folder/],
    ['a folder without gold', 'shared', /no NAME\.gold\.json|holds no/],
  ])('refuses %s', (_title, folder, says) => {
    const ran = score(folder);
    expect(ran.status).toBe(1);
    expect(ran.stderr).toMatch(says);
    expect(existsSync(join(root, folder, 'draft.json'))).toBe(false);
  });
});
