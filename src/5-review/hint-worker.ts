/** The thread of `readHints`: words in, hints out. */
import { parentPort, workerData } from 'node:worker_threads';
import { hintTalk } from '../4-observations/hint-talk.ts';

parentPort?.postMessage(hintTalk(workerData));
