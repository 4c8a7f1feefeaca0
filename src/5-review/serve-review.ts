/**
 * Stage 5: the review. In: the folder of an inspection (draft.json, words.json, the recording in it or beside it).
 * Out: a page on 127.0.0.1 in which the inspector settles what is flagged, and `decisions.jsonl`, which the later
 * stages read through `applyDecisions`.
 *
 * Refuses, with one sentence and nothing changed: no draft, a draft of a newer version, a recording that is missing or
 * is another one, a decisions file damaged before its end, a folder that cannot be written, a port in use.
 * Method: the server holds the log and the keys, the page holds the hands. State is draft + decisions on both sides,
 * worked out by the same pure function; every decision is on the disk before the page says that it is kept.
 * A second review of the same folder gives the address of the first.
 */
import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serve } from '@hono/node-server';
import { type Recording, readRecording } from '../1-recording/read-recording.ts';
import { configFolder as usualConfigFolder } from '../disk/config-folder.ts';
import { type DecisionLog, openDecisionLog } from './decision-log.ts';
import { type Inspection, readInspection } from './inspection.ts';
import { knownInspector } from './inspector.ts';
import { computePeaks } from './peaks.ts';
import { makeReviewApp } from './review-app.ts';
import { ReviewError } from './review-error.ts';
import { claimFolder } from './review-lock.ts';
import { openSession, type ReviewSession } from './review-session.ts';
import { makeSessionGuard } from './session-guard.ts';

export interface ServeOptions {
  /** 0 or left out: any free port. */
  readonly port?: number;
  /** Where the recording is, when it is neither in the folder nor beside it. */
  readonly recording?: readonly string[];
  /** Who decides; by default who signed last. */
  readonly person?: string;
  readonly ffmpegPath?: string;
  readonly configFolder?: string;
  readonly pageFolder?: string;
}

export interface RunningReview {
  /** Opens the page, once. */
  readonly address: string;
  /** True when another process runs the review and this address joins it; `close` then has nothing to do. */
  readonly isJoined: boolean;
  /** What was lost when the decisions were read, in one sentence. */
  readonly loss: string | null;
  close(): Promise<void>;
}

/** Where the build puts the page, seen from the built file of this module. */
const builtPage = fileURLToPath(new URL('../../page', import.meta.url));

/** Starts the review of `folder`. @throws ReviewError, RecordingError with one sentence. */
export async function serveReview(folder: string, options: ServeOptions = {}): Promise<RunningReview> {
  const pageFolder = options.pageFolder ?? builtPage;
  if (!existsSync(join(pageFolder, 'index.html'))) {
    throw new ReviewError(`The page of the review is missing (${pageFolder}): run "npm run build".`);
  }
  const configFolder = options.configFolder ?? usualConfigFolder();
  const inspection = await readInspection(folder, options.recording);
  const inspector = await knownInspector(configFolder);

  // The lock names the port, so the port is taken first; until the folder is ours nothing is answered.
  let answer: (request: Request) => Response | Promise<Response> = () => new Response('Starting.', { status: 503 });
  const server = await listen((request) => answer(request), options.port ?? 0);
  const port = (server.address() as AddressInfo).port;
  const guard = makeSessionGuard(port);
  const closeServer = () =>
    new Promise<void>((done) => {
      server.close(() => done());
      if ('closeAllConnections' in server) server.closeAllConnections();
    });

  let log: DecisionLog | null = null;
  let release = async () => {};
  try {
    const claim = await claimFolder(folder, port);
    if ('joinAddress' in claim) {
      await closeServer();
      return { address: claim.joinAddress, isJoined: true, loss: null, close: async () => {} };
    }
    release = claim.held.release;
    log = await openDecisionLog(folder);
    const session = openSession(inspection, log, () => options.person ?? inspector.name);
    const sound = loadSound(inspection, session, options.ffmpegPath);
    const app = makeReviewApp({
      session,
      guard,
      pageFolder,
      configFolder,
      inspector,
      joinSecret: () => claim.held.secret,
      sound: sound.current,
      soundProblem: sound.problem,
    });
    answer = (request) => app.fetch(request);
    const openLog = log;
    return {
      address: guard.newAddress(),
      isJoined: false,
      loss: log.loss,
      async close() {
        await closeServer();
        await sound.close();
        await openLog.close();
        await release();
      },
    };
  } catch (error) {
    await log?.close();
    await release();
    await closeServer();
    throw error;
  }
}

function listen(fetch: (request: Request) => Response | Promise<Response>, port: number) {
  return new Promise<ReturnType<typeof serve>>((resolve, reject) => {
    const server = serve({ fetch, port, hostname: '127.0.0.1' }, () => resolve(server));
    server.on('error', (error: NodeJS.ErrnoException) => {
      reject(
        new ReviewError(
          error.code === 'EADDRINUSE'
            ? `Port ${port} is in use: leave --port out to take a free one, or name another.`
            : `The review could not start on port ${port} (${error.code}): leave --port out to take a free one.`,
          { cause: error },
        ),
      );
    });
  });
}

/** Decodes in the background: the page is there at once, the sound a moment later. */
function loadSound(inspection: Inspection, session: ReviewSession, ffmpegPath: string | undefined) {
  let current: { recording: Recording; peaks: Promise<Int8Array> } | null = null;
  let isClosed = false;
  let problem: string | null = null;
  const loading = (async () => {
    if (inspection.recordingFiles.length === 0) return;
    const recording = await readRecording([...inspection.recordingFiles], ffmpegPath ? { ffmpegPath } : {});
    if (isClosed) return recording.close();
    current = { recording, peaks: computePeaks(recording.blocks()) };
    session.announce({ type: 'sound-ready' });
    await current.peaks;
  })().catch((error: Error) => {
    problem = `There is no sound: ${error.message}`;
    session.announce({ type: 'problem', sentence: problem });
  });
  return {
    current: () => current,
    problem: () => problem,
    async close() {
      isClosed = true;
      await loading;
      await current?.recording.close();
    },
  };
}
