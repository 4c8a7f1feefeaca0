/** Every bad input: one sentence that says what to do, a non-zero exit, and nothing half-written. */
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findFfmpeg } from '../../src/1-recording/find-ffmpeg.ts';
import { lineword, type Ran, root, sample, sampleTranscript, scratchFolder } from './run-lineword.ts';
import { music, silence, water, wav } from './sounds.ts';

const folder = scratchFolder();
const at = (name: string) => join(folder, name);
const put = (name: string, content: string | Buffer) => {
  writeFileSync(at(name), content);
  return at(name);
};

/** The program with everything it was installed with but the ffmpeg that npm brings along. */
function installWithoutFfmpeg(): string {
  const installation = at('installation');
  cpSync(join(root, 'dist'), join(installation, 'dist'), { recursive: true });
  copyFileSync(join(root, 'package.json'), join(installation, 'package.json'));
  symlinkSync(join(root, 'models'), join(installation, 'models'));
  mkdirSync(join(installation, 'node_modules'));
  for (const name of readdirSync(join(root, 'node_modules')))
    if (name !== '@ffmpeg-installer')
      symlinkSync(join(root, 'node_modules', name), join(installation, 'node_modules', name));
  return installation;
}

/** The last line on stderr, after what progress there was; it must be one sentence. */
function complaint(ran: Ran): string {
  expect(ran.code).toBe(1);
  expect(ran.stdout).toBe('');
  const lines = ran.stderr
    .trimEnd()
    .split('\n')
    .filter((line) => !line.startsWith('Listening'));
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/[.]$/);
  expect(lines[0]).not.toMatch(/Error|undefined|\[object/);
  return lines[0]!;
}

async function refused(name: string, ...options: string[]): Promise<string> {
  const ran = await lineword(['draft', at(name), '--out', at('never'), ...options]);
  expect(existsSync(at('never'))).toBe(false);
  return complaint(ran);
}

describe('a recording that cannot be used', () => {
  it('is not there', async () => {
    expect(await refused('gone.m4a')).toMatch(/no file .*gone\.m4a/i);
  });

  it('is a folder', async () => {
    mkdirSync(at('a-folder'));
    expect(await refused('a-folder')).toMatch(/is a folder/);
  });

  it('is empty', async () => {
    put('empty.m4a', '');
    expect(await refused('empty.m4a')).toMatch(/empty/);
  });

  it('is no media', async () => {
    put('letter.mp3', 'Dear inspector, this is a letter and no sound at all.\n'.repeat(50));
    expect(await refused('letter.mp3')).toMatch(/letter\.mp3/);
  });

  it('has no sound', async () => {
    const ffmpeg = findFfmpeg()!.path;
    const picture = ['-f', 'lavfi', '-i', 'color=gray:s=64x64:d=2', '-c:v', 'mpeg4'];
    execFileSync(ffmpeg, ['-nostdin', '-v', 'error', ...picture, at('silent-film.mp4')]);
    expect(await refused('silent-film.mp4')).toMatch(/sound|audio/);
  });

  it('needs ffmpeg, and there is none at all', async () => {
    const installation = installWithoutFfmpeg();
    copyFileSync(sample, at('phone.m4a'));
    const ran = await lineword(['draft', at('phone.m4a'), '--out', at('never')], {
      installation,
      env: { PATH: at('nowhere'), FFMPEG_PATH: '' },
    });
    expect(complaint(ran)).toMatch(/none was found: install ffmpeg/);
    expect(existsSync(at('never'))).toBe(false);
  });

  it.each([
    ['silence', silence],
    ['water', water()],
    ['music', music],
  ])('is only %s', async (name, sampleAt) => {
    put(`${name}.wav`, wav(20, sampleAt));
    expect(await refused(`${name}.wav`)).toMatch(/No speech was found/);
  });

  it('is a film cut short', async () => {
    const whole = readFileSync(sample);
    put('cut.m4a', whole.subarray(0, whole.length / 2));
    expect(await refused('cut.m4a')).toMatch(/cut\.m4a/);
  });

  it('is a wav cut short', async () => {
    put('cut.wav', wav(20, water()).subarray(0, 300_001));
    expect(await refused('cut.wav')).toMatch(/cut/);
  });

  it('needs an ffmpeg that is not where it was said to be', async () => {
    copyFileSync(sample, at('fine.m4a'));
    expect(await refused('fine.m4a', '--ffmpeg', at('no-ffmpeg'))).toMatch(/ffmpeg/);
  });
});

describe('a recogniser that cannot be used', () => {
  it('is not there', async () => {
    copyFileSync(sample, at('fine.m4a'));
    expect(await refused('fine.m4a', '--model', at('no-model'))).toMatch(/no-model/);
  });

  it('is damaged', async () => {
    copyFileSync(sample, at('fine.m4a'));
    const model = join(root, 'models/whisper-base-trade');
    mkdirSync(at('damaged-model/onnx'), { recursive: true });
    for (const file of readdirSync(model).filter((name) => name.endsWith('.json'))) {
      symlinkSync(join(model, file), at(`damaged-model/${file}`));
    }
    for (const file of readdirSync(join(model, 'onnx'))) writeFileSync(at(`damaged-model/onnx/${file}`), 'not weights');
    expect(await refused('fine.m4a', '--model', at('damaged-model'))).toMatch(/damaged|model/);
  });
});

describe('a transcript that cannot be used', () => {
  it.each([
    ['none.vtt', null, /no file/i],
    ['empty.srt', '', /empty/],
    ['letter.vtt', 'Dear inspector,\n\nno times here.\n', /letter\.vtt/],
    ['broken.json', '{"schema": "lineword/wor', /damaged/],
    ['other.json', '{"name": "something else"}', /does not hold lineword words/],
    ['halved.json', '{"schema": "lineword/words@1", "words": 3}', /damaged/],
    ['newer.json', '{"schema": "lineword/words@7", "words": []}', /newer lineword/],
  ])('%s', async (name, content, says) => {
    if (content !== null) put(name, content);
    expect(await refused(name)).toMatch(says);
  });

  it('is given together with a recording', async () => {
    const ran = await lineword(['draft', sample, sampleTranscript, '--out', at('never')]);
    expect(complaint(ran)).toMatch(/give it alone/);
    expect(existsSync(at('never'))).toBe(false);
  });
});

describe('a folder that cannot be written', () => {
  it('is read-only', async () => {
    // Root may write anywhere but where the system itself forbids it.
    const isRoot = process.getuid?.() === 0;
    const locked = isRoot ? '/sys' : at('locked');
    if (!isRoot) {
      mkdirSync(locked);
      chmodSync(locked, 0o555);
    }
    const ran = await lineword(['draft', sampleTranscript, '--out', join(locked, 'results')]);
    expect(complaint(ran)).toMatch(/read-only/);
  });

  it('is a file', async () => {
    put('a-file', 'mine\n');
    expect(complaint(await lineword(['draft', sampleTranscript, '--out', at('a-file')]))).toMatch(/a file stands/);
    expect(readFileSync(at('a-file'), 'utf8')).toBe('mine\n');
  });
});

describe('a folder that explain cannot use', () => {
  it.each([
    ['is not there', () => at('nowhere'), /no folder/i],
    ['is a recording', () => sample, /is a file/],
    ['holds no draft', () => root, /holds no draft/],
  ])('%s', async (_title, path, says) => {
    expect(complaint(await lineword(['explain', path()]))).toMatch(says);
  });
});

describe('a command that is not there', () => {
  it('is answered with the one that was meant', async () => {
    const ran = await lineword(['daft', 'x.m4a']);
    expect(ran.code).toBe(2);
    expect(ran.stderr).toMatch(/Did you mean draft/);
  });

  it('and an option likewise', async () => {
    const ran = await lineword(['draft', 'x.m4a', '--otu', 'y']);
    expect(ran.code).toBe(2);
    expect(ran.stderr).toMatch(/Did you mean --out/);
  });
});
