/** The shape of the house: where things stand, what they may be called, how long they may grow. */
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';

const root = join(import.meta.dirname, '../..');
const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8', maxBuffer: 1 << 24 })
  .split('\0')
  .filter((path) => path !== '' && existsSync(join(root, path)));
const sources = tracked.filter((path) => /^(src|shared|tests)\/.*\.tsx?$/.test(path));
const read = (path: string) => readFileSync(join(root, path), 'utf8');

describe('layout', () => {
  it('names the stages in the order the data flows', () => {
    const stages = readdirSync(join(root, 'src')).filter((name) => /^\d/.test(name));
    expect(stages).toEqual([
      '1-recording',
      '2-words',
      '3-phrases',
      '4-observations',
      '5-review',
      '6-grade',
      '7-report',
    ]);
  });

  it('lists every kind that has a file, under the name of its file', () => {
    const files = readdirSync(join(root, 'shared/vocabulary/kinds'))
      .filter((file) => file !== 'index.ts')
      .map((file) => basename(file, '.ts'));
    expect(kinds.map((kind) => kind.name).sort()).toEqual(files.sort());
  });

  it('tests every stage', () => {
    const stages = readdirSync(join(root, 'src')).filter((name) => /^\d/.test(name));
    const tests = sources.filter((path) => path.startsWith('tests/') && !path.startsWith('tests/house/')).map(read);
    expect(stages.filter((stage) => !tests.some((text) => text.includes(`src/${stage}/`)))).toEqual([]);
  });

  it('has no file or folder that says nothing about what is in it', () => {
    const empty = /(^|\/)(utils?|helpers?|common|misc|types|lib|stuff)(\.|\/|$)/i;
    expect(tracked.filter((path) => empty.test(path))).toEqual([]);
  });

  it('writes file names in kebab-case', () => {
    const names = sources.map((path) => basename(path, extname(path)).replace(/\.(test|config|d)$/, ''));
    expect(names.filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name))).toEqual([]);
  });

  it('keeps the command line short and imports the heavy parts late', () => {
    const main = read('src/cli/main.ts');
    expect(main.split('\n').length).toBeLessThan(100);
    for (const command of readdirSync(join(root, 'src/cli/commands'))) {
      const text = read(`src/cli/commands/${command}`);
      expect(text, command).not.toMatch(
        /^import (?!type)[^;]*from '[^']*(transformers|onnxruntime|typst|compromise|hono)/m,
      );
    }
  });
});

describe('file length', () => {
  // A file over 300 lines needs a reason, written here.
  const reasons: Record<string, string> = {};
  const lines = (path: string) => read(path).split('\n').length;

  // A lexicon is a list of sayings, one a line: long, but nothing in it depends on the rest.
  const isList = (path: string) => basename(path) === 'lexicon.ts';

  it('stays under 300 lines', () => {
    const isLogic = (path: string) => !path.startsWith('tests/') && !isList(path);
    const long = sources.filter((path) => isLogic(path) && lines(path) > 300 && !(path in reasons));
    expect(long.map((path) => `${path}: ${lines(path)}`)).toEqual([]);
  });

  it('excuses no file that does not need it', () => {
    expect(Object.keys(reasons).filter((path) => !sources.includes(path) || lines(path) <= 300)).toEqual([]);
  });
});

describe('what is committed', () => {
  const isText = (path: string) =>
    /\.(tsx?|m?js|cjs|json|jsonl|md|css|html|vtt|srt|ya?ml|txt|py|svg|csv|toml)$/.test(path);
  const texts = tracked.filter((path) => isText(path) || /(^|\/)(\.npmrc|\.gitignore|LICENSE|run)$/.test(path));

  it('holds no path of one machine', () => {
    // Written in pieces, so that this file does not find itself.
    const machine = new RegExp(
      ['/wo' + 'rk/', '/ro' + 'ot/', '/ho' + 'me/[a-z]', '/Us' + 'ers/[a-z]', 'C:\\\\Us' + 'ers'].join('|'),
    );
    expect(texts.filter((path) => machine.test(read(path)))).toEqual([]);
  });

  it('holds no registry address', () => {
    const registry = new RegExp(
      ['registry\\.np' + 'mjs', 'registry\\.ya' + 'rnpkg', 'py' + 'pi\\.org', '"reso' + 'lved": *"'].join('|'),
    );
    expect(texts.filter((path) => registry.test(read(path)))).toEqual([]);
  });

  it('pins every package to one version', () => {
    const { dependencies, devDependencies, optionalDependencies } = JSON.parse(read('package.json'));
    const loose = Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies }).filter(
      ([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(String(version)),
    );
    expect(loose).toEqual([]);
  });

  it('keeps one copy of the weights, each file with its sum', () => {
    const sums = read('models/SHA256SUMS')
      .trim()
      .split('\n')
      .map((line) => line.split(/\s+/)[1]!.replace(/^\*?(\.\/)?/, ''));
    const weights = tracked.filter((path) => path.endsWith('.onnx'));
    expect(weights.length).toBeGreaterThan(0);
    expect(weights.filter((path) => !sums.some((sum) => path.endsWith(sum)))).toEqual([]);
  });
});
