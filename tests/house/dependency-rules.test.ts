/** The rules in `tests/dependency-rules.cjs` bite: each is given one import it must refuse. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { afterAll, describe, expect, it } from 'vitest';

const rules = createRequire(import.meta.url)('../dependency-rules.cjs');
const folder = mkdtempSync(join(tmpdir(), 'lineword-rules-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function put(path: string, text: string): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

async function broken(files: Record<string, string>): Promise<string[]> {
  rmSync(folder, { recursive: true, force: true });
  for (const [path, text] of Object.entries(files)) put(path, text);
  const { tsConfig: _, ...options } = rules.options;
  const result = await cruise(['src', 'shared'], { ...options, baseDir: folder, validate: true, ruleSet: rules });
  return (result.output as ICruiseResult).summary.violations.map((violation) => violation.rule.name);
}

const fine = {
  'shared/schemas/word.ts': 'export const word = 1;',
  'src/1-recording/read.ts': "import '../../shared/schemas/word.ts'; export const read = 1;",
  'src/2-words/hear.ts': "import '../1-recording/read.ts'; export const hear = 1;",
  'src/5-review/page/page.ts': "import '../../../shared/schemas/word.ts'; export const page = 1;",
};

describe('dependency rules', () => {
  it('let a tree pass that keeps them', async () => {
    expect(await broken(fine)).toEqual([]);
  });

  it.each([
    ['1-recording-imports-no-later-stage', 'src/1-recording/bad.ts', "import '../2-words/hear.ts';"],
    ['1-recording-imports-no-later-stage', 'src/1-recording/bad.ts', "import type {} from '../2-words/hear.ts';"],
    ['stages-know-no-command', 'src/1-recording/bad.ts', "import '../cli/main.ts';"],
    ['disk-knows-nothing', 'src/disk/bad.ts', "import '../1-recording/read.ts';"],
    ['shared-imports-no-stage', 'shared/bad.ts', "import '../src/1-recording/read.ts';"],
    ['shared-runs-in-a-browser', 'shared/bad.ts', "import 'node:fs';"],
    ['page-runs-in-a-browser', 'src/5-review/page/bad.ts', "import 'node:fs';"],
    ['page-imports-only-the-review-and-shared', 'src/5-review/page/bad.ts', "import '../../1-recording/read.ts';"],
    ['page-leads-to-no-node', 'src/5-review/page/main.tsx', "import '../deep.ts';"],
    ['no-circle', 'src/2-words/hear.ts', "import './other.ts';"],
    ['nothing-unresolved', 'src/2-words/bad.ts', "import './not-there.ts';"],
  ])('%s', async (name, path, text) => {
    const others = {
      'src/cli/main.ts': 'export {};',
      'src/2-words/other.ts': "import './hear.ts';",
      'src/5-review/deep.ts': "import 'node:fs';",
    };
    expect(await broken({ ...fine, ...others, [path]: text })).toContain(name);
  });
});
