/** `lineword draft` and `explain` as a person meets them. */
import type { ChildProcess } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { draftSchema } from '../../shared/schemas/draft.ts';
import { wordsSchema } from '../../shared/schemas/word.ts';
import { lineword, sample, sampleTranscript, scratchFolder } from './run-lineword.ts';

const folder = scratchFolder();
const at = (name: string) => join(folder, name);
const json = (path: string) => JSON.parse(readFileSync(path, 'utf8'));
const longestLine = (text: string) => Math.max(...text.split('\n').map((line) => line.length));

describe('a transcript', () => {
  it('becomes words, draft and a table of 80 columns without colour', async () => {
    const ran = await lineword(['draft', sampleTranscript, '--out', at('text')]);
    expect(ran.code).toBe(0);
    expect(ran.stderr).toBe('');
    expect(ran.stdout).toContain('26 Amber Hill Road');
    expect(ran.stdout).toContain('Roots');
    expect(ran.stdout).not.toContain('\u001b');
    expect(longestLine(ran.stdout)).toBeLessThanOrEqual(80);
    draftSchema.parse(json(at('text/draft.json')));
    wordsSchema.parse(json(at('text/words.json')));
    expect(readdirSync(at('text')).sort()).toEqual(['draft.json', 'words.json']);
  });

  it('goes beside itself when no folder is named', async () => {
    writeFileSync(at('birch.vtt'), readFileSync(sampleTranscript));
    expect((await lineword(['draft', at('birch.vtt'), '--quiet'])).stdout).toBe('');
    expect(existsSync(at('birch/draft.json'))).toBe(true);
  });

  it('is printed as JSON when asked', async () => {
    const ran = await lineword(['draft', sampleTranscript, '--out', at('text'), '--json']);
    expect(draftSchema.parse(JSON.parse(ran.stdout))).toEqual(draftSchema.parse(json(at('text/draft.json'))));
  });

  it('gives the same draft again from the words it wrote', async () => {
    const before = readFileSync(at('text/draft.json'), 'utf8');
    const ran = await lineword(['draft', at('text/words.json'), '--json']);
    expect(ran.code).toBe(0);
    expect(readFileSync(at('text/draft.json'), 'utf8')).toBe(before);
  });

  it('without a finding gives an empty draft that says so', async () => {
    const talk = ['Okay, the camera is in the truck.', 'What a day. The dog is asleep, and so am I.'];
    const cues = talk.map((line, i) => `00:00:0${2 * i}.000 --> 00:00:0${2 * i + 1}.800\n${line}`);
    writeFileSync(at('quiet.vtt'), `WEBVTT\n\n${cues.join('\n\n')}\n`);
    const ran = await lineword(['draft', at('quiet.vtt')]);
    expect(ran.code).toBe(0);
    expect(ran.stdout).toContain('the draft is empty');
    expect(json(at('quiet/draft.json')).observations).toEqual([]);
  });
});

describe('what is there already', () => {
  it('is not replaced when somebody changed it', async () => {
    await lineword(['draft', sampleTranscript, '--out', at('changed')]);
    const mine = `${readFileSync(at('changed/draft.json'), 'utf8')}\n`;
    writeFileSync(at('changed/draft.json'), mine);
    const ran = await lineword(['draft', sampleTranscript, '--out', at('changed')]);
    expect(ran.code).toBe(1);
    expect(ran.stderr).toMatch(/differs.*--force/);
    expect(readFileSync(at('changed/draft.json'), 'utf8')).toBe(mine);
    expect((await lineword(['draft', sampleTranscript, '--out', at('changed'), '--force'])).code).toBe(0);
    expect(readFileSync(at('changed/draft.json'), 'utf8')).not.toBe(mine);
  });

  it('is left alone when somebody has begun to decide, and --force keeps the decisions', async () => {
    mkdirSync(at('decided'));
    writeFileSync(at('decided/decisions.jsonl'), '{"a decision": 1}\n');
    const ran = await lineword(['draft', sampleTranscript, '--out', at('decided')]);
    expect(ran.code).toBe(1);
    expect(ran.stderr).toMatch(/decisions/);
    expect(readdirSync(at('decided'))).toEqual(['decisions.jsonl']);
    expect((await lineword(['draft', sampleTranscript, '--out', at('decided'), '--force'])).code).toBe(0);
    expect(readFileSync(at('decided/decisions.jsonl'), 'utf8')).toBe('{"a decision": 1}\n');
  });
});

describe('a run that is killed, then stopped with Ctrl-C', () => {
  const twice = [sample, sample];
  const out = at('stopped');
  /** Sends `signal`, once, as soon as the first piece is done. */
  const afterFirstPiece = (signal: NodeJS.Signals) => {
    let isSent = false;
    return (stderr: string, child: ChildProcess) => {
      if (isSent || !/^Listening: (?!0:00)/m.test(stderr)) return;
      isSent = true;
      child.kill(signal);
    };
  };

  it('goes on where it was, to the same draft as a run in one go', async () => {
    const killed = await lineword(['draft', ...twice, '--out', out], { watch: afterFirstPiece('SIGKILL') });
    expect(killed.code).toBe(null);
    expect(existsSync(join(out, 'words.json'))).toBe(false);

    // What the killed run had done comes back at once, so this one stops in the piece after it.
    const stopped = await lineword(['draft', ...twice, '--out', out], { watch: afterFirstPiece('SIGINT') });
    expect(stopped.code).toBe(130);
    expect(stopped.stderr).toMatch(/run the same command again/);
    expect(existsSync(join(out, 'draft.json'))).toBe(false);

    expect((await lineword(['draft', ...twice, '--out', out, '--quiet'])).code).toBe(0);
    expect(readdirSync(out).sort()).toEqual(['draft.json', 'words.json']);

    const whole = await lineword(['draft', ...twice, '--out', at('whole'), '--quiet']);
    expect(whole).toEqual({ code: 0, stdout: '', stderr: '' });
    expect(json(join(out, 'words.json'))).toEqual(json(at('whole/words.json')));
    expect(json(join(out, 'draft.json'))).toEqual(json(at('whole/draft.json')));
  }, 240_000);
});

describe('the sample recording', () => {
  const out = at('heard');

  it('is heard with progress on stderr and the table on stdout', async () => {
    const ran = await lineword(['draft', sample, '--out', out]);
    expect(ran.code).toBe(0);
    expect(ran.stderr).toMatch(/^Listening: 0:00 of 1:3\d\n/);
    expect(ran.stdout).toContain('Amber Hill Road');
    expect(readdirSync(out).sort()).toEqual(['draft.json', 'words.json']);
  }, 240_000);

  it('finds what the script says', () => {
    const draft = draftSchema.parse(json(join(out, 'draft.json')));
    const found = draft.observations.map((o) => `${o.run} ${o.kind} ${o.at}`);
    for (const wanted of [
      '1 scale 9',
      '1 material-change 17.5',
      '1 roots 22',
      '1 offset-joint 33',
      '1 belly 38',
      '2 wye 8',
    ]) {
      expect(found).toContain(wanted);
    }
    expect(draft.runs.map((run) => run.direction)).toEqual(['downstream', 'upstream']);
  });

  it('is not heard a second time', async () => {
    const ran = await lineword(['draft', sample, '--out', out]);
    expect(ran.code).toBe(0);
    expect(ran.stderr).toMatch(/^Heard before/);
    expect(ran.stderr).not.toContain('Listening');
  });

  it('is explained', async () => {
    const ran = await lineword(['explain', out]);
    expect(ran.code).toBe(0);
    expect(ran.stdout).toMatch(/roots/i);
    expect(longestLine(ran.stdout)).toBeLessThanOrEqual(80);
    expect(JSON.parse((await lineword(['explain', out, '--json'])).stdout)).toBeTruthy();
  });
});

describe('help', () => {
  it.each([[['--help']], [['draft', '--help']], [['explain', '--help']]])('%j has examples', async (args) => {
    const ran = await lineword(args);
    expect(ran.code).toBe(0);
    expect(ran.stdout).toContain('Examples:');
  });
});
