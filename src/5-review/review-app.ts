/** The routes of the review, on Hono. Everything but `/join` needs the session that the one-time address began. */
import { randomBytes } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import { Readable } from 'node:stream';
import { type Context, Hono } from 'hono';
import { streamSSE } from 'hono/streaming';
import { z } from 'zod';
import type { Recording } from '../1-recording/read-recording.ts';
import { acceptOwnWord, offersOfOwnWords } from './own-words.ts';
import { peaksPerSecond } from './peaks.ts';
import { ReviewError } from './review-error.ts';
import { type ReviewSession, requestSchema } from './review-session.ts';
import { contentSecurityPolicy, type SessionGuard } from './session-guard.ts';
import { signedVersions, signInspection } from './sign-inspection.ts';
import { readRange, readSound, soundBytes } from './sound.ts';

export interface ReviewAppParts {
  readonly session: ReviewSession;
  readonly guard: SessionGuard;
  /** The built page: index.html and assets/. */
  readonly pageFolder: string;
  readonly configFolder: string;
  readonly joinSecret: () => string;
  /** Null until the sound is ready, and for good when there is none. */
  readonly sound: () => { recording: Recording; peaks: Promise<Int8Array> } | null;
  /** Why there is no sound although there is a recording; null when all is well. */
  readonly soundProblem: () => string | null;
  readonly inspector: { name: string; licence: string | null };
}

const contentTypes: Record<string, string> = {
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
};
/**
 * Recordings that a browser may play as they are, until the decoded sound is ready. No mp3: a browser finds places in
 * one of changing bit rate only roughly, and then what is heard is not what the words say.
 */
const playableTypes: Record<string, string> = {
  '.wav': 'audio/wav',
  '.m4a': 'audio/mp4',
  '.mp4': 'video/mp4',
  '.ogg': 'audio/ogg',
  '.opus': 'audio/ogg',
  '.flac': 'audio/flac',
  '.webm': 'video/webm',
};
const largestRequest = 1_000_000;

export function makeReviewApp(parts: ReviewAppParts): Hono {
  const { session, guard } = parts;
  const app = new Hono();
  app.use(guard.checkRequest);
  app.use(async (context, next) => {
    await next();
    context.header('x-content-type-options', 'nosniff');
    context.header('referrer-policy', 'no-referrer');
    context.header('cross-origin-resource-policy', 'same-origin');
    context.header('cross-origin-opener-policy', 'same-origin');
    if (!context.res.headers.has('cache-control')) context.header('cache-control', 'no-store');
    if (!context.res.headers.has('content-security-policy')) {
      context.header('content-security-policy', contentSecurityPolicy(randomBytes(9).toString('base64')));
    }
  });
  app.post('/join', (context) => {
    const isKnown = context.req.header('x-lineword-secret') === parts.joinSecret();
    if (!isKnown || context.req.header('origin') !== undefined) return context.text('Not allowed.', 403);
    return context.json({ address: guard.newAddress() });
  });
  app.get('/', async (context) => {
    const entered = guard.useToken(context);
    if (entered) return entered;
    if (!guard.hasSession(context)) return usedUp(context);
    return sendPage(context, parts.pageFolder);
  });
  app.use(async (context, next) => {
    if (!guard.hasSession(context)) return context.text('Not allowed.', 403);
    return next();
  });
  app.get('/assets/:name', (context) => sendAsset(context, join(parts.pageFolder, 'assets')));
  addApi(app, parts);
  app.onError((error, context) => {
    if (error instanceof ReviewError) return context.json({ sentence: error.message }, 409);
    session.announce({ type: 'problem', sentence: `Something went wrong in lineword: ${error.message}` });
    return context.json({ sentence: `Something went wrong in lineword: ${error.message}` }, 500);
  });
  return app;
}

function addApi(app: Hono, parts: ReviewAppParts): void {
  const { session } = parts;
  app.get('/api/inspection', async (context) =>
    context.json({
      draft: session.inspection.draft,
      words: session.inspection.words,
      decisions: session.log.decisions,
      loss: session.log.loss,
      hasRecording: session.inspection.recordingFiles.length > 0,
      originalType: originalType(session.inspection.recordingFiles),
      isSoundReady: parts.sound() !== null,
      soundProblem: parts.soundProblem(),
      inspector: parts.inspector,
      ...(await extras(parts)),
    }),
  );
  app.get('/api/hints', async (context) => context.json(await session.hints()));
  app.get('/api/extras', async (context) => context.json(await extras(parts)));
  app.post('/api/decisions', async (context) => {
    const request = requestSchema.safeParse(await readBody(context));
    if (!request.success) return context.json({ sentence: 'That is no decision this review understands.' }, 400);
    return context.json({ decision: await session.decide(request.data) });
  });
  app.get('/api/events', (context) =>
    streamSSE(context, async (stream) => {
      const unsubscribe = session.subscribe((event) => {
        void stream.writeSSE({ data: JSON.stringify(event) }).catch(() => undefined);
      });
      stream.onAbort(unsubscribe);
      // Tells a page that was away, or has only just come, how things stand; and keeps the connection open.
      while (!stream.aborted && !stream.closed) {
        const alive = {
          type: 'alive',
          decisions: session.log.decisions.length,
          isSoundReady: parts.sound() !== null,
          soundProblem: parts.soundProblem(),
        };
        await stream.writeSSE({ data: JSON.stringify(alive) });
        await stream.sleep(10_000);
      }
      unsubscribe();
    }),
  );
  app.get('/api/sound.wav', (context) => {
    const sound = parts.sound();
    if (!sound) return context.text('The sound is not ready.', 404);
    return sendRange(context, soundBytes(sound.recording), 'audio/wav', (range) =>
      Readable.from(readSound(sound.recording, range)),
    );
  });
  app.get('/api/peaks', async (context) => {
    const sound = parts.sound();
    if (!sound) return context.text('The sound is not ready.', 404);
    context.header('x-peaks-per-second', String(peaksPerSecond));
    return context.body(Buffer.from(await sound.peaks) as Uint8Array<ArrayBuffer>, 200, {
      'content-type': 'application/octet-stream',
    });
  });
  app.get('/api/recording/:part', async (context) => {
    const file = session.inspection.recordingFiles[Number(context.req.param('part')) - 1];
    const size = file && (await stat(file).catch(() => null))?.size;
    if (!file || !size) return context.text('The recording is gone.', 404);
    context.header('content-disposition', `inline; filename*=UTF-8''${encodeURIComponent(basename(file))}`);
    return sendRange(
      context,
      size,
      playableTypes[extname(file).toLowerCase()] ?? 'application/octet-stream',
      ({ from, to }) => createReadStream(file, { start: from, end: to }),
    );
  });
  app.post('/api/sign', async (context) => {
    const asked = z
      .object({ name: z.string(), licence: z.string().nullable(), statement: z.string() })
      .safeParse(await readBody(context));
    if (!asked.success) return context.json({ sentence: 'Name and statement are needed to sign.' }, 400);
    const version = await session.alone(() =>
      signInspection(session.inspection, session.log.decisions, asked.data, parts.configFolder),
    );
    Object.assign(parts.inspector, { name: asked.data.name, licence: asked.data.licence });
    session.announce({ type: 'signed' });
    return context.json({ version });
  });
  app.post('/api/own-words', async (context) => {
    const asked = z
      .object({ heard: z.string(), said: z.string(), kind: z.string().nullable(), isAccepted: z.boolean() })
      .safeParse(await readBody(context));
    if (!asked.success) return context.json({ sentence: 'That is no word of your own.' }, 400);
    await acceptOwnWord(parts.configFolder, asked.data);
    session.announce({ type: 'own-words' });
    return context.json({ done: true });
  });
}

/** What may change from outside while the page is open. */
async function extras({ session, configFolder }: ReviewAppParts) {
  const { inspection, log } = session;
  return {
    versions: await signedVersions(inspection, log.decisions.length),
    ownWordOffers: await offersOfOwnWords(configFolder, inspection.draft, log.decisions),
  };
}

function originalType(files: readonly string[]): string | null {
  const [file, ...others] = files;
  return file && others.length === 0 ? (playableTypes[extname(file).toLowerCase()] ?? null) : null;
}

async function readBody(context: Context): Promise<unknown> {
  if (Number(context.req.header('content-length') ?? 0) > largestRequest) return null;
  return context.req.json().catch(() => null);
}

async function sendPage(context: Context, pageFolder: string): Promise<Response> {
  const nonce = randomBytes(16).toString('base64');
  const page = await readFile(join(pageFolder, 'index.html'), 'utf8');
  context.header('content-security-policy', contentSecurityPolicy(nonce));
  return context.html(page.replaceAll('{{nonce}}', nonce));
}

async function sendAsset(context: Context, folder: string): Promise<Response> {
  const name = basename(context.req.param('name') ?? '');
  const content = await readFile(join(folder, name)).catch(() => null);
  if (!content) return context.text('Not found.', 404);
  return context.body(new Uint8Array(content), 200, {
    'content-type': contentTypes[extname(name)] ?? 'application/octet-stream',
    'cache-control': 'no-cache',
  });
}

function usedUp(context: Context): Response {
  return context.html(
    '<!doctype html><html lang="en"><meta charset="utf-8"><title>lineword</title><main><h1>This address has been used</h1>' +
      '<p>It opens the review once. Run <code>lineword review</code> on the folder again for a new one: nothing is lost.</p></main></html>',
    403,
  );
}

function sendRange(
  context: Context,
  size: number,
  contentType: string,
  open: (range: { from: number; to: number }) => Readable,
): Response {
  const range = readRange(context.req.header('range'), size);
  context.header('accept-ranges', 'bytes');
  if (range === 'unsatisfiable') return context.body(null, 416, { 'content-range': `bytes */${size}` });
  const { from, to } = range ?? { from: 0, to: size - 1 };
  const headers: Record<string, string> = { 'content-type': contentType, 'content-length': String(to - from + 1) };
  if (range) headers['content-range'] = `bytes ${from}-${to}/${size}`;
  if (context.req.method === 'HEAD') return context.body(null, range ? 206 : 200, headers);
  return context.body(Readable.toWeb(open({ from, to })) as ReadableStream, range ? 206 : 200, headers);
}
