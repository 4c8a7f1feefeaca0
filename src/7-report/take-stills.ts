/**
 * A picture from the recording at each finding, when the recording is a video. One ffmpeg call a picture.
 * Seeking before the input is quick and exact for most files; MPEG program and transport streams land on another
 * frame that way, so those are decoded up to the moment instead. What cannot be taken is said, never left out.
 */
import { execFile } from 'node:child_process';
import { extname } from 'node:path';
import { promisify } from 'node:util';
import type { ReportStill } from '../../shared/schemas/report.ts';
import { shortTime } from '../../shared/wording/short.ts';
import type { NumberedFinding } from './compose-findings.ts';
import { titleWords } from './wording/descriptions.ts';
import type { Units } from './wording/lengths.ts';
import { atPlace } from './wording/places.ts';

const run = promisify(execFile);
const mpegStreams = new Set(['.mpg', '.mpeg', '.vob', '.ts', '.m2ts', '.mts', '.m2v']);
const patienceMs = 60_000;

/** A file of the recording with the second of the inspection at which it begins. */
export interface RecordingPart {
  readonly path: string;
  readonly startSeconds: number;
  readonly seconds: number;
}

/** Whether ffmpeg finds a moving picture in the file; cover art of a sound file does not count. */
export async function hasPicture(path: string, ffmpegPath: string): Promise<boolean> {
  const told = await run(ffmpegPath, ['-nostdin', '-hide_banner', '-protocol_whitelist', 'file,pipe', '-i', path], {
    timeout: patienceMs,
  }).catch((error: { stderr?: string }) => ({ stderr: error.stderr ?? '' }));
  return told.stderr.split('\n').some((line) => /Stream #.*Video:/.test(line) && !/attached pic/.test(line));
}

/** Stills at the findings, in their order; empty when no part of the recording has a picture. */
export async function takeStills(
  parts: readonly RecordingPart[],
  numbered: readonly NumberedFinding[],
  ffmpegPath: string,
  units: Units,
): Promise<ReportStill[]> {
  const withPicture = new Map<string, boolean>();
  for (const part of parts) withPicture.set(part.path, await hasPicture(part.path, ffmpegPath));
  if (![...withPicture.values()].some(Boolean)) return [];
  const stills: ReportStill[] = [];
  for (const { number, finding } of numbered) {
    const seconds = finding.heard.start;
    const caption = `No. ${number}, ${titleWords(finding)} ${atPlace(finding.at, finding.to, units)}, at ${shortTime(seconds)}.`;
    const part = parts.findLast((p) => p.startSeconds <= seconds);
    const isThere = part !== undefined && withPicture.get(part.path) === true;
    const jpeg = isThere ? await stillAt(part.path, seconds - part.startSeconds, ffmpegPath) : null;
    stills.push({
      number,
      caption,
      jpeg: jpeg?.toString('base64') ?? null,
      why: jpeg === null ? 'the recording gave no picture at this moment.' : null,
    });
  }
  return stills;
}

async function stillAt(path: string, seconds: number, ffmpegPath: string): Promise<Buffer | null> {
  const seek = ['-ss', seconds.toFixed(3)];
  const input = ['-protocol_whitelist', 'file,pipe', '-i', path];
  const isStream = mpegStreams.has(extname(path).toLowerCase());
  const args = [
    ...['-nostdin', '-v', 'error'],
    ...(isStream ? [...input, ...seek] : [...seek, ...input]),
    ...['-an', '-frames:v', '1', '-vf', "scale='min(960,iw)':-2", '-q:v', '4', '-map_metadata', '-1'],
    ...['-fflags', '+bitexact', '-flags:v', '+bitexact', '-f', 'image2pipe', '-c:v', 'mjpeg', 'pipe:1'],
  ];
  const taken = await run(ffmpegPath, args, {
    encoding: 'buffer',
    maxBuffer: 32 * 2 ** 20,
    timeout: patienceMs,
  }).catch(() => null);
  return taken !== null && taken.stdout.length > 0 ? taken.stdout : null;
}
