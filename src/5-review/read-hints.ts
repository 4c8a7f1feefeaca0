/**
 * Reads what each sentence may hold in a thread of its own: loading the reader and reading two hours take seconds, and
 * meanwhile decisions are kept and sound is sent.
 */
import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import type { TalkHint } from '../../shared/schemas/hint.ts';
import type { Words } from '../../shared/schemas/word.ts';

const worker = new URL('./hint-worker.js', import.meta.url);

export async function readHints(words: Words): Promise<readonly TalkHint[]> {
  // Run from the sources, as the tests are, there is no file a thread could load.
  if (!existsSync(worker)) return (await import('../4-observations/hint-talk.ts')).hintTalk(words);
  const thread = new Worker(worker, { workerData: words });
  thread.unref();
  return new Promise((resolve, reject) => {
    thread.once('message', resolve);
    thread.once('error', reject);
  });
}
