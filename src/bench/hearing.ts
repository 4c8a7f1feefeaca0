/**
 * How fast hearing is and how much memory it takes, on ten minutes of talk, beside other ways on the same sound:
 * plain greedy decoding of the same model, and faster-whisper where it is installed. Every way runs in a process of its
 * own (memory can only be told apart so); the ways take turns, so that a busy machine slows all of them alike.
 *
 * npm run bench -- hearing [RECORDING TRANSCRIPT.vtt] [--minutes 10] [--rounds 2]
 *   BENCH_PYTHON=python3 BENCH_FASTER_WHISPER=FOLDER   adds faster-whisper with the CTranslate2 model in FOLDER (make-peer.py writes ours)
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Words } from '../../shared/schemas/word.ts';
import { readRecording } from '../1-recording/read-recording.ts';
import { hearWords } from '../2-words/hear-words.ts';
import { readCues } from '../2-words/read-transcript.ts';
import { describeScore } from './describe-hearing.ts';
import { type SaidLine, scoreHearing } from './score-hearing.ts';

interface Measured {
  readonly wallSeconds: number;
  readonly cpuSeconds: number;
  readonly peakMegabytes: number;
  readonly words: Words['words'];
}

type Way = 'lineword' | 'greedy' | 'faster-whisper greedy' | 'faster-whisper batched beam 5, hotwords';

const here = fileURLToPath(import.meta.url);
const args = process.argv.slice(2);
if (args[0] === '--hear') await hearOnce(args[1] as Way, args[2]!, args[3]!);
else await compare();

/** In the child: hears the file one way and writes what it took. */
async function hearOnce(way: Way, file: string, out: string): Promise<void> {
  const recording = await readRecording([file]);
  const started = performance.now();
  const plain = { beams: 1, phrases: [], languageWeight: 0, prompt: '', isSecondLookWanted: false };
  const { words } = await hearWords(recording, way === 'greedy' ? { settings: plain } : {});
  const wallSeconds = (performance.now() - started) / 1000;
  const { user, system } = process.cpuUsage();
  const peakMegabytes = process.resourceUsage().maxRSS / 1024;
  writeFileSync(out, JSON.stringify({ wallSeconds, cpuSeconds: (user + system) / 1e6, peakMegabytes, words }));
  await recording.close();
}

async function compare(): Promise<void> {
  const option = (name: string, fallback: number) => Number(args[args.indexOf(name) + 1] ?? fallback) || fallback;
  const minutes = args.includes('--minutes') ? option('--minutes', 10) : 10;
  const rounds = args.includes('--rounds') ? option('--rounds', 2) : 1;
  const [file, transcript] = args.filter((arg) => /\.\w+$/.test(arg));
  const sample = new URL('../../fixtures/sample/amber-hill-road', `file://${findRoot()}/src/bench/`).pathname;
  const folder = mkdtempSync(path.join(os.tmpdir(), 'lineword-bench-'));
  try {
    const { long, lines, seconds } = await makeLong(
      file ?? `${sample}.m4a`,
      transcript ?? `${sample}.vtt`,
      minutes * 60,
      folder,
    );
    console.log(
      `${(seconds / 60).toFixed(1)} minutes of sound, ${os.cpus().length} cores, load ${os.loadavg()[0]!.toFixed(1)}`,
    );
    const ways: Way[] = ['lineword', 'greedy'];
    if (process.env.BENCH_FASTER_WHISPER) ways.push('faster-whisper greedy', 'faster-whisper batched beam 5, hotwords');
    const runs = new Map<Way, Measured[]>(ways.map((way) => [way, []]));
    for (let round = 0; round < rounds; round++)
      for (const way of ways) runs.get(way)!.push(measure(way, long, folder));
    for (const [way, measured] of runs) report(way, measured, seconds, lines);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function measure(way: Way, file: string, folder: string): Measured {
  const out = path.join(folder, 'measured.json');
  const [program, ...given] = way.startsWith('faster-whisper')
    ? [
        process.env.BENCH_PYTHON ?? 'python3',
        path.join(findRoot(), 'src/bench/faster-whisper.py'),
        process.env.BENCH_FASTER_WHISPER!,
        way.includes('batched') ? 'batched' : 'greedy',
        file,
        out,
      ]
    : [process.execPath, ...process.execArgv, here, '--hear', way, file, out];
  const run = spawnSync(program!, given, { stdio: ['ignore', 'ignore', 'inherit'] });
  if (run.status !== 0) throw new Error(`${way} did not run`);
  return JSON.parse(readFileSync(out, 'utf8')) as Measured;
}

function report(way: Way, measured: readonly Measured[], seconds: number, lines: readonly SaidLine[]): void {
  const middle = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1]!;
  const wall = middle(measured.map((run) => run.wallSeconds)) / seconds;
  const cpu = middle(measured.map((run) => run.cpuSeconds)) / seconds;
  const peak = Math.max(...measured.map((run) => run.peakMegabytes));
  console.log(
    `${way}: ${wall.toFixed(3)} s wall, ${cpu.toFixed(3)} s CPU a second of sound, peak ${peak.toFixed(0)} MB`,
  );
  console.log(`  ${describeScore(scoreHearing(lines, measured[0]!.words))}`);
}

/** The talk over and over until it is long enough, as a 16 kHz wav, with its lines. */
async function makeLong(file: string, transcript: string, wantedSeconds: number, folder: string) {
  const recording = await readRecording([file]);
  const samples = await recording.samples(0, recording.seconds);
  const cues = readCues(readFileSync(transcript, 'utf8'));
  const times = Math.max(1, Math.round(wantedSeconds / recording.seconds));
  const once = Int16Array.from(samples, (sample) => Math.round(sample * 32767));
  const header = Buffer.alloc(44);
  const bytes = once.byteLength * times;
  header.write('RIFF', 0);
  header.writeUInt32LE(36 + bytes, 4);
  header.write('WAVEfmt ', 8);
  for (const [at, value] of [
    [16, 16],
    [24, 16000],
    [28, 32000],
    [40, bytes],
  ] as const)
    header.writeUInt32LE(value, at);
  for (const [at, value] of [
    [20, 1],
    [22, 1],
    [32, 2],
    [34, 16],
  ] as const)
    header.writeUInt16LE(value, at);
  header.write('data', 36);
  const long = path.join(folder, 'long.wav');
  const body = Buffer.from(once.buffer);
  writeFileSync(long, Buffer.concat([header, ...Array.from({ length: times }, () => body)]));
  const lines = Array.from({ length: times }, (_, index) =>
    cues.map((cue) => ({
      ...cue,
      startSeconds: cue.startSeconds + index * recording.seconds,
      endSeconds: cue.endSeconds + index * recording.seconds,
    })),
  ).flat();
  await recording.close();
  return { long, lines, seconds: recording.seconds * times };
}

/** The folder of the checkout, from the sources as well as from dist/. */
function findRoot(): string {
  const folder = path.dirname(here);
  const up = folder.includes(`${path.sep}dist${path.sep}`) ? '../../..' : '../..';
  return path.resolve(folder, up);
}
