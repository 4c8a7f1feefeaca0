/** A running review for the tests, and a browser's side of it without a browser. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import { type RunningReview, type ServeOptions, serveReview } from '../../src/5-review/serve-review.ts';

const running: RunningReview[] = [];

/** Call after each test. */
export async function closeReviews(): Promise<void> {
  for (const review of running.splice(0).reverse()) await review.close();
}

/** Serves `folder` with a stub of the page beside it, or with the page given. */
export async function openReview(folder: string, options: ServeOptions = {}): Promise<RunningReview> {
  const pageFolder = options.pageFolder ?? (await stubPage(folder));
  const review = await serveReview(folder, { configFolder: join(folder, '..', 'config'), pageFolder, ...options });
  running.push(review);
  return review;
}

async function stubPage(folder: string): Promise<string> {
  const page = join(folder, '..', 'page');
  await mkdir(join(page, 'assets'), { recursive: true });
  await writeFile(join(page, 'index.html'), '<!doctype html><meta name="style-nonce" content="{{nonce}}">');
  await writeFile(join(page, 'assets', 'page.js'), 'export {};');
  return page;
}

export interface Client {
  readonly origin: string;
  readonly cookie: string;
  get(path: string, headers?: Record<string, string>): Promise<Response>;
  post(path: string, body: unknown, headers?: Record<string, string>): Promise<Response>;
  decide(id: string, body: DecisionBody): Promise<Response>;
}

/** Uses the one-time address up, as a browser does. */
export async function enter(address: string): Promise<Client> {
  const answer = await fetch(address, { redirect: 'manual' });
  const cookie = answer.headers.get('set-cookie')?.split(';')[0] ?? '';
  const origin = new URL(address).origin;
  const get: Client['get'] = (path, headers = {}) => fetch(`${origin}${path}`, { headers: { cookie, ...headers } });
  const post: Client['post'] = (path, body, headers = {}) =>
    fetch(`${origin}${path}`, {
      method: 'POST',
      body: JSON.stringify(body),
      headers: { cookie, origin, 'content-type': 'application/json', ...headers },
    });
  return { origin, cookie, get, post, decide: (id, body) => post('/api/decisions', { id, body }) };
}

/** Waits until the sound has been read. */
export async function waitForSound(client: Client): Promise<void> {
  for (let tries = 0; tries < 200; tries++) {
    const { isSoundReady, soundProblem } = (await (await client.get('/api/inspection')).json()) as {
      isSoundReady: boolean;
      soundProblem: string | null;
    };
    if (isSoundReady) return;
    if (soundProblem) throw new Error(soundProblem);
    await new Promise((done) => setTimeout(done, 25));
  }
  throw new Error('the sound did not come');
}
