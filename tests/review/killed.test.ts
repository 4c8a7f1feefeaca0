/** The built program, killed while it works: what was answered is there, once, and nothing is torn. */
import { type ChildProcess, spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import { openDecisionLog, readDecisionLines } from '../../src/5-review/decision-log.ts';
import { lineword, root } from '../cli/run-lineword.ts';
import { confirmation } from './make-decisions.ts';
import { writeInspection } from './make-inspection.ts';
import { type Client, enter } from './open-review.ts';

const children: ChildProcess[] = [];
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
});

/** `lineword review FOLDER --no-open` in a process of its own, once it has given its address. */
async function startProcess(folder: string, shellFirst = ''): Promise<{ child: ChildProcess; client: Client }> {
  const main = join(root, 'dist/src/cli/main.js');
  const [program, args] = shellFirst
    ? ['bash', ['-c', `${shellFirst}; exec "$0" "$@"`, process.execPath, main, 'review', folder, '--no-open']]
    : [process.execPath, [main, 'review', folder, '--no-open']];
  const child = spawn(program as string, args as string[], {
    env: { ...process.env, LINEWORD_CONFIG: join(folder, '..', 'config') },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  children.push(child);
  let text = '';
  const address = await new Promise<string>((resolve, reject) => {
    child.stderr!.setEncoding('utf8').on('data', (more: string) => {
      text += more;
    });
    child.stdout!.setEncoding('utf8').on('data', (more: string) => {
      text += more;
      const found = /http:\/\/127\.0\.0\.1:\d+\/\?token=\S+/.exec(text);
      if (found) resolve(found[0]);
    });
    child.on('exit', () => reject(new Error(`ended early: ${text}`)));
  });
  return { child, client: await enter(address) };
}

function killHard(child: ChildProcess): Promise<void> {
  return new Promise((done) => {
    child.once('exit', () => done());
    child.kill('SIGKILL');
  });
}

describe('kill -9', () => {
  test('at any moment loses no decision that was answered, and doubles none that is sent again', async () => {
    const { folder, draft } = await writeInspection();
    const ids = draft.observations.map((o) => o.id);
    const answered = new Set<string>();
    const unanswered: { id: string; body: DecisionBody }[] = [];
    let sent = 0;
    for (const killAfter of [1, 7, 12, 20]) {
      const { child, client } = await startProcess(folder);
      // What got no answer last time is sent again, as the page does when a person decides again.
      for (const { id, body } of unanswered.splice(0)) {
        expect((await client.decide(id, body)).status).toBe(200);
        answered.add(id);
      }
      let gotAnswers = 0;
      let killed: Promise<void> | null = null;
      const all = Array.from({ length: 40 }, async () => {
        const id = `decision-${sent++}`;
        const body = confirmation(draft, ids[sent % ids.length]!);
        try {
          const answer = await client.decide(id, body);
          if (answer.status !== 200) throw new Error(String(answer.status));
          await answer.json();
          answered.add(id);
          gotAnswers++;
          if (gotAnswers === killAfter) killed = killHard(child);
        } catch {
          unanswered.push({ id, body });
        }
      });
      await Promise.all(all);
      await (killed ?? killHard(child));
      const { sealed, fault } = readDecisionLines(await readFile(join(folder, 'decisions.jsonl')));
      expect(fault).toBeNull();
      const written = sealed.map(({ decision }) => decision.id);
      expect(new Set(written).size).toBe(written.length);
      expect([...answered].filter((id) => !written.includes(id))).toEqual([]);
    }
    const log = await openDecisionLog(folder);
    expect(log.loss === null || log.loss.includes('cut short')).toBe(true);
    expect(log.decisions.map(({ n }) => n)).toEqual(log.decisions.map((_, index) => index + 1));
    await log.close();
  });
});

describe.skipIf(process.platform === 'win32')('a file that may not grow', () => {
  test('refuses what does not fit with a sentence, keeps what did, and stays up', async () => {
    const { folder, draft } = await writeInspection(undefined, { withWords: false });
    // The limit of the system itself (RLIMIT_FSIZE, in blocks of 1024 bytes) stands in for a full disk; the sound's
    // temporary file meets it too, and then the review goes on without sound.
    const { client } = await startProcess(folder, 'ulimit -f 4');
    const statuses: number[] = [];
    let sentence = '';
    for (let i = 0; i < 12; i++) {
      const answer = await client.decide(`decision-${i}`, confirmation(draft, draft.observations[i % 9]!.id));
      statuses.push(answer.status);
      const content = (await answer.json()) as { sentence?: string };
      sentence ||= content.sentence ?? '';
    }
    const kept = statuses.filter((status) => status === 200).length;
    expect(kept).toBeGreaterThan(2);
    expect(kept).toBeLessThan(12);
    expect(sentence).toBe('The disk is full, so this decision is not kept: free some space, then decide again.');
    const read = readDecisionLines(await readFile(join(folder, 'decisions.jsonl')));
    expect([read.sealed.length, read.cutBytes.length, read.fault]).toEqual([kept, 0, null]);
  });
});

describe('the commands', () => {
  test('Ctrl-C ends the review, gives the folder back, and a second review joined it meanwhile', async () => {
    const { folder } = await writeInspection();
    const { child, client } = await startProcess(folder);
    const joined = await lineword(['review', folder, '--no-open']);
    expect(joined.code).toBe(0);
    expect(joined.stdout).toContain('was already open');
    expect(joined.stdout).toContain(client.origin);
    const ended = new Promise<number | null>((done) => child.once('exit', done));
    child.kill('SIGINT');
    expect(await ended).toBe(0);
    await expect(readFile(join(folder, 'review.lock'))).rejects.toThrow();
  });
  test('without a browser the address is given to open by hand', async () => {
    const { folder } = await writeInspection();
    const main = join(root, 'dist/src/cli/main.js');
    const child = spawn(process.execPath, [main, 'review', folder], {
      env: { LINEWORD_CONFIG: join(folder, '..', 'config'), PATH: folder },
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    children.push(child);
    let text = '';
    for await (const more of child.stdout!.setEncoding('utf8')) {
      text += more;
      if (text.includes('?token=')) break;
    }
    expect(text).toMatch(/^Open this address in a browser:\nhttp:\/\/127\.0\.0\.1:\d+\/\?token=/);
  });
  test('refuse with one sentence and exit 1', async () => {
    const { folder } = await writeInspection();
    const unsigned = await lineword(['verify', folder]);
    expect([unsigned.code, unsigned.stderr]).toEqual([
      1,
      `Nothing in ${folder} has been signed: sign it with "lineword review".\n`,
    ]);
    const nowhere = await lineword(['review', join(folder, 'nowhere'), '--no-open']);
    expect([nowhere.code, nowhere.stderr]).toEqual([
      1,
      `There is no folder ${join(folder, 'nowhere')}: give the one that "lineword draft" wrote.\n`,
    ]);
    expect((await lineword(['review', folder, '--port', '80'])).stderr).toContain(
      'A port is a number from 1024 to 65535.',
    );
  });
});
