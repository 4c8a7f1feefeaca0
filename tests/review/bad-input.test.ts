/** What a person can get wrong: one sentence each, and nothing lost. */
import { appendFile, chmod, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { readInspection } from '../../src/5-review/inspection.ts';
import { serveReview } from '../../src/5-review/serve-review.ts';
import { confirmation } from './make-decisions.ts';
import { emptyFolder, writeInspection } from './make-inspection.ts';
import { closeReviews, enter, openReview } from './open-review.ts';

afterEach(closeReviews);

const oneSentence = /^[^\n]+[^.\n]\.$/;

async function refusal(promise: Promise<unknown>): Promise<string> {
  const error = await promise.then(
    () => new Error('nothing was refused'),
    (reason: Error) => reason,
  );
  expect(error.name).toMatch(/^(Review|File)Error$/);
  expect(error.message).toMatch(oneSentence);
  return error.message;
}

describe('a folder that cannot be reviewed', () => {
  test('is not there, is a file, or has no draft', async () => {
    const folder = await emptyFolder();
    expect(
      await refusal(
        openReview(join(folder, 'no', 'such')).catch(async (e) => {
          throw e;
        }),
      ),
    ).toMatch(/There is no folder/);
    await writeFile(join(folder, 'file'), '');
    expect(await refusal(readInspection(join(folder, 'file')))).toMatch(/is a file/);
    expect(await refusal(readInspection(folder))).toMatch(/holds no draft: run "lineword draft"/);
  });
  test('has a draft of a newer version, or one that is damaged', async () => {
    const { folder, draft } = await writeInspection();
    const path = join(folder, 'draft.json');
    await writeFile(path, JSON.stringify({ ...draft, schema: 'lineword/draft@2' }));
    expect(await refusal(openReview(folder))).toMatch(/newer lineword \(lineword\/draft@2\): update this one/);
    await writeFile(path, '{"schema":"linewo');
    expect(await refusal(openReview(folder))).toMatch(/damaged \(not JSON\)/);
    await writeFile(path, '[]');
    expect(await refusal(openReview(folder))).toMatch(/does not hold lineword draft/);
    expect(await readdir(folder)).not.toContain('decisions.jsonl');
  });
  test('has a recording that moved or changed', async () => {
    const { folder } = await writeInspection();
    const wav = join(folder, 'alder.wav');
    const elsewhere = join(folder, '..', 'moved', 'alder.wav');
    await mkdir(join(folder, '..', 'moved'));
    await rename(wav, elsewhere);
    expect(await refusal(openReview(folder))).toMatch(/neither in .* nor beside it: put it back, or say where it is/);
    expect(await refusal(openReview(folder, { recording: [`${elsewhere}x`] }))).toMatch(/There is no recording/);
    expect(await refusal(openReview(folder, { recording: [elsewhere, elsewhere] }))).toMatch(/made from 1 recordings/);
    await (await openReview(folder, { recording: [elsewhere] })).close();
    await rename(elsewhere, join(folder, '..', 'alder.wav'));
    await (await openReview(folder)).close();
    await appendFile(join(folder, '..', 'alder.wav'), 'x');
    expect(await refusal(openReview(folder))).toMatch(/is not the recording this draft was made from/);
  });
  test('has decisions that are damaged before their end', async () => {
    const { folder } = await writeInspection();
    await writeFile(join(folder, 'decisions.jsonl'), 'not a decision\nnor this\n');
    expect(await refusal(openReview(folder))).toMatch(/Line 1 of .* is damaged/);
    expect(await readFile(join(folder, 'decisions.jsonl'), 'utf8')).toBe('not a decision\nnor this\n');
    expect(await readdir(folder)).not.toContain('review.lock');
  });
  test('has decisions cut in the middle of a line: the good part is kept, the loss is said', async () => {
    const { folder, draft } = await writeInspection();
    const first = await openReview(folder);
    const client = await enter(first.address);
    for (const id of ['o4', 'o5']) await client.decide(`decision-${id}`, confirmation(draft, id));
    await first.close();
    const path = join(folder, 'decisions.jsonl');
    await writeFile(path, (await readFile(path)).subarray(0, -50));
    const second = await openReview(folder);
    expect(second.loss).toMatch(/^The last decision in decisions\.jsonl was cut short .*\.$/);
    const { decisions, loss } = (await (await (await enter(second.address)).get('/api/inspection')).json()) as {
      decisions: unknown[];
      loss: string;
    };
    expect([decisions.length, loss]).toEqual([1, second.loss]);
  });
  test.skipIf(process.getuid?.() === 0 || process.platform === 'win32')('cannot be written to', async () => {
    const { folder } = await writeInspection();
    await chmod(folder, 0o555);
    expect(await refusal(openReview(folder))).toMatch(/make it writable/);
    await chmod(folder, 0o755);
  });
});

describe('a computer that is in the way', () => {
  test('a port in use', async () => {
    const { folder } = await writeInspection();
    const taken = createServer();
    await new Promise<void>((done) => taken.listen(0, '127.0.0.1', done));
    const { port } = taken.address() as { port: number };
    expect(await refusal(openReview(folder, { port }))).toBe(
      `Port ${port} is in use: leave --port out to take a free one, or name another.`,
    );
    expect(await readdir(folder)).not.toContain('review.lock');
    taken.close();
  });
  test('a page that was not built', async () => {
    const { folder } = await writeInspection();
    expect(await refusal(serveReview(folder, { pageFolder: join(folder, 'nothing') }))).toMatch(/run "npm run build"/);
  });
  test('sound that cannot be read leaves the review usable and says so', async () => {
    const { folder, draft } = await writeInspection();
    const { createHash } = await import('node:crypto');
    const noise = Buffer.from('this is no sound at all');
    await writeFile(join(folder, 'alder.wav'), noise);
    const recording = { ...draft.recording, sha256: createHash('sha256').update(noise).digest('hex') };
    await writeFile(join(folder, 'draft.json'), JSON.stringify({ ...draft, recording }));
    await rm(join(folder, 'words.json'));
    const client = await enter((await openReview(folder)).address);
    let problem: string | null = null;
    for (let tries = 0; tries < 200 && problem === null; tries++) {
      problem = ((await (await client.get('/api/inspection')).json()) as { soundProblem: string | null }).soundProblem;
      await new Promise((done) => setTimeout(done, 25));
    }
    expect(problem).toMatch(/^There is no sound: .*\.$/);
    expect((await client.decide('decision-1', confirmation(draft, 'o5'))).status).toBe(200);
  });
});

describe('a second review of the same folder', () => {
  test('joins the first: one log, two windows', async () => {
    const { folder, draft } = await writeInspection();
    const first = await openReview(folder);
    const second = await openReview(folder);
    expect(second.isJoined).toBe(true);
    expect(new URL(second.address).port).toBe(new URL(first.address).port);
    const client = await enter(second.address);
    expect((await client.decide('decision-1', confirmation(draft, 'o5'))).status).toBe(200);
    const { decisions } = (await (await (await enter(first.address)).get('/api/inspection')).json()) as {
      decisions: unknown[];
    };
    expect(decisions).toHaveLength(1);
    await first.close();
    expect(await readdir(folder)).not.toContain('review.lock');
  });
  test('takes over a lock whose process is gone, cut short, or of nobody', async () => {
    const { folder } = await writeInspection();
    const { hostname } = await import('node:os');
    for (const left of [
      JSON.stringify({ host: hostname(), process: 2 ** 22 + 1, port: 9, secret: 'x' }),
      '{"host":',
      '',
    ]) {
      await writeFile(join(folder, 'review.lock'), left);
      const review = await openReview(folder);
      expect(review.isJoined).toBe(false);
      await review.close();
    }
  });
  test('on another computer, or one that does not answer, is refused', async () => {
    const { folder } = await writeInspection();
    const { hostname } = await import('node:os');
    const lock = join(folder, 'review.lock');
    await writeFile(lock, JSON.stringify({ host: 'the-other-van', process: 1, port: 9, secret: 'x' }));
    expect(await refusal(openReview(folder))).toMatch(/open on the computer "the-other-van"/);
    await writeFile(lock, JSON.stringify({ host: hostname(), process: process.ppid, port: 9, secret: 'x' }));
    expect(await refusal(openReview(folder))).toMatch(/does not answer: end it, or delete/);
  });
});
