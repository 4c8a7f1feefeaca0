import { readFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import type { Decision } from '../../shared/schemas/decision.ts';
import { confirmation, subjectOf } from './make-decisions.ts';
import { makeDraft, makeWav, writeInspection } from './make-inspection.ts';
import { closeReviews, enter, openReview, waitForSound } from './open-review.ts';

afterEach(closeReviews);

/** A request with headers that `fetch` does not let one set. */
function raw(address: string, headers: Record<string, string>, method = 'GET'): Promise<number> {
  return new Promise((resolve, reject) => {
    const { hostname, port, pathname, search } = new URL(address);
    const sent = request({ hostname, port, path: pathname + search, method, headers }, (answer) => {
      answer.resume();
      resolve(answer.statusCode ?? 0);
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('who is let in', () => {
  test('the address opens the page once', async () => {
    const { folder } = await writeInspection();
    const { address } = await openReview(folder);
    expect(new URL(address).hostname).toBe('127.0.0.1');
    const first = await fetch(address, { redirect: 'manual' });
    expect(first.status).toBe(303);
    expect(first.headers.get('set-cookie')).toMatch(/HttpOnly; SameSite=Strict|SameSite=Strict; HttpOnly|HttpOnly/);
    expect(first.headers.get('set-cookie')).toMatch(/SameSite=Strict/);
    expect((await fetch(address, { redirect: 'manual' })).status).toBe(403);
    expect((await fetch(address.replace(/token=.*/, 'token=guessed'), { redirect: 'manual' })).status).toBe(403);
  });
  test('nothing is given without the session', async () => {
    const { folder } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    for (const path of [
      '/',
      '/api/inspection',
      '/api/events',
      '/api/sound.wav',
      '/api/recording/1',
      '/api/peaks',
      '/assets/page.js',
    ]) {
      expect([path, (await fetch(`${client.origin}${path}`)).status]).toEqual([path, 403]);
    }
    expect((await client.get('/assets/page.js')).status).toBe(200);
    expect((await client.get('/assets/..%2f..%2findex.html')).status).toBe(404);
  });
  test('another host name, another origin and another site are turned away', async () => {
    const { folder } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    const { host } = new URL(client.origin);
    const path = `${client.origin}/api/inspection`;
    expect(await raw(path, { host, cookie: client.cookie })).toBe(200);
    expect(await raw(path, { host: 'evil.example', cookie: client.cookie })).toBe(421);
    expect(await raw(path, { host: `evil.example:${host.split(':')[1]}`, cookie: client.cookie })).toBe(421);
    expect(await raw(path, { host, cookie: client.cookie, origin: 'http://evil.example' })).toBe(403);
    expect(await raw(path, { host, cookie: client.cookie, origin: 'null' })).toBe(403);
    expect(await raw(path, { host, cookie: client.cookie, 'sec-fetch-site': 'cross-site' })).toBe(403);
    expect(await raw(path, { host, cookie: client.cookie, 'sec-fetch-site': 'same-site' })).toBe(403);
    const decisions = `${client.origin}/api/decisions`;
    expect(await raw(decisions, { host, cookie: client.cookie }, 'POST')).toBe(403);
    expect(await raw(`${client.origin}/join`, { host }, 'POST')).toBe(403);
  });
  test('the policy allows nothing from elsewhere and nothing inline', async () => {
    const { folder } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    const page = await client.get('/');
    const policy = page.headers.get('content-security-policy') ?? '';
    const nonce = /'nonce-([^']+)'/.exec(policy)?.[1];
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(await page.text()).toContain(`content="${nonce}"`);
    const again = await client.get('/');
    expect(again.headers.get('content-security-policy')).not.toBe(policy);
  });
});

describe('sound', () => {
  test('is the decoded recording, in ranges', async () => {
    const { folder } = await writeInspection(makeDraft({ recording: { file: 'a.wav', sha256: '', seconds: 90 } }));
    const client = await enter((await openReview(folder)).address);
    await waitForSound(client);
    const whole = Buffer.from(await (await client.get('/api/sound.wav')).arrayBuffer());
    expect(whole.equals(makeWav(90))).toBe(true);
    for (const [range, from, to] of [
      ['bytes=0-99', 0, 99],
      ['bytes=10-50', 10, 50],
      ['bytes=43-45', 43, 45],
      ['bytes=101-200000', 101, 200_000],
      ['bytes=-7', whole.length - 7, whole.length - 1],
      [`bytes=${whole.length - 3}-`, whole.length - 3, whole.length - 1],
    ] as const) {
      const answer = await client.get('/api/sound.wav', { range });
      expect(answer.status).toBe(206);
      expect(answer.headers.get('content-range')).toBe(`bytes ${from}-${to}/${whole.length}`);
      expect(Buffer.from(await answer.arrayBuffer()).equals(whole.subarray(from, to + 1))).toBe(true);
    }
    const outside = await client.get('/api/sound.wav', { range: `bytes=${whole.length}-` });
    expect([outside.status, outside.headers.get('content-range')]).toEqual([416, `bytes */${whole.length}`]);
  });
  test('the recording itself is served byte for byte, in ranges', async () => {
    const { folder } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    const file = await readFile(join(folder, 'alder.wav'));
    const answer = await client.get('/api/recording/1', { range: 'bytes=1000-1999' });
    expect(answer.status).toBe(206);
    expect(Buffer.from(await answer.arrayBuffer()).equals(file.subarray(1000, 2000))).toBe(true);
    expect((await client.get('/api/recording/2')).status).toBe(404);
  });
  test('the peaks follow the sound: quiet at a second’s start, loud at its end', async () => {
    const { folder } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    await waitForSound(client);
    const peaks = new Int8Array(await (await client.get('/api/peaks')).arrayBuffer());
    expect(peaks).toHaveLength(90 * 20);
    expect(peaks[0]).toBeLessThan(peaks[10]!);
    expect(peaks[10]).toBeLessThan(peaks[19]!);
    // 6000 of 32768 at the end of each second.
    expect(peaks[19]).toBeCloseTo((6000 / 32768) * 127, -1);
  });
});

describe('decisions', () => {
  test('are on the disk when the answer comes, and every window hears of them', async () => {
    const { folder, draft } = await writeInspection();
    const review = await openReview(folder, { person: 'R. Inspector' });
    const client = await enter(review.address);
    const events = await client.get('/api/events');
    const reader = events.body!.getReader();
    const answer = await client.decide('decision-1', confirmation(draft, 'o5'));
    const { decision } = (await answer.json()) as { decision: Decision };
    expect(decision).toMatchObject({ n: 1, person: 'R. Inspector', previous: null });
    expect(await readFile(join(folder, 'decisions.jsonl'), 'utf8')).toContain('"id":"decision-1"');
    let text = '';
    while (!text.includes('"decision-1"')) text += new TextDecoder().decode((await reader.read()).value);
    expect(text).toContain('"type":"decision"');
    await reader.cancel();
  });
  test('sent twice are written once; many windows at once lose and double none', async () => {
    const { folder, draft } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    const ids = draft.observations.map((o) => o.id);
    const sent = Array.from({ length: 60 }, (_, i) =>
      client.decide(`decision-${Math.floor(i / 2)}`, confirmation(draft, ids[Math.floor(i / 2) % ids.length]!)),
    );
    expect((await Promise.all(sent)).map((answer) => answer.status)).toEqual(Array(60).fill(200));
    const lines = (await readFile(join(folder, 'decisions.jsonl'), 'utf8')).trim().split('\n');
    expect(lines).toHaveLength(30);
  });
  test('that do not fit are refused with a sentence and not written', async () => {
    const { folder, draft } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    const refused = async (answer: Response) => [
      answer.status,
      ((await answer.json()) as { sentence: string }).sentence,
    ];
    const o4 = subjectOf(draft, 'o4');
    expect(
      await refused(
        await client.decide('decision-1', { action: 'change', subject: o4, changes: { at: { was: 99, now: 42 } } }),
      ),
    ).toEqual([409, 'It reads otherwise now than when this was decided.']);
    expect(
      await refused(
        await client.decide('decision-1', { action: 'change', subject: o4, changes: { at: { was: 41, now: -1 } } }),
      ),
    ).toEqual([409, 'A distance is 0 or more.']);
    expect(
      await refused(
        await client.decide('decision-1', {
          action: 'change',
          subject: o4,
          changes: { kind: { was: 'wye', now: 'x' } },
        }),
      ),
    ).toEqual([409, '"x" cannot be the kind of this.']);
    expect(await refused(await client.decide('decision-1', { action: 'undo', of: 'nothing' }))).toEqual([
      409,
      'That was changed in another window: look at it again.',
    ]);
    // A window that has not seen the change another one made cannot confirm what is no longer there.
    await client.decide('decision-2', { action: 'change', subject: o4, changes: { at: { was: 41, now: 42 } } });
    expect(await refused(await client.decide('decision-3', confirmation(draft, 'o4')))).toEqual([
      409,
      'It was changed in another window: look at it again.',
    ]);
    expect((await client.post('/api/decisions', { id: 'decision-4', body: { action: 'burn' } })).status).toBe(400);
    expect((await client.post('/api/decisions', 'not an object')).status).toBe(400);
    expect((await readFile(join(folder, 'decisions.jsonl'), 'utf8')).trim().split('\n')).toHaveLength(1);
  });
  test('come back when the review is opened again', async () => {
    const { folder, draft } = await writeInspection();
    const first = await openReview(folder);
    await (await enter(first.address)).decide('decision-1', confirmation(draft, 'o5'));
    await first.close();
    const client = await enter((await openReview(folder)).address);
    const { decisions } = (await (await client.get('/api/inspection')).json()) as { decisions: Decision[] };
    expect(decisions.map(({ id }) => id)).toEqual(['decision-1']);
  });
  test('signing is refused while something is open', async () => {
    const { folder } = await writeInspection();
    const client = await enter((await openReview(folder)).address);
    const answer = await client.post('/api/sign', { name: 'R.', licence: null, statement: 'mine' });
    expect([answer.status, await answer.json()]).toEqual([
      409,
      { sentence: '4 flagged items are still open: settle them first.' },
    ]);
  });
});
