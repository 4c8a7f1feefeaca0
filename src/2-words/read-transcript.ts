/**
 * Words from a transcript instead of a recording: .vtt and .srt as other programs write them, or our own words.json.
 * A cue gives times for its lines only, so its words are spread over them by length; nothing is known of how surely they
 * were heard (`probability: null`).
 */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { type Word, type Words, wordsSchema } from '../../shared/schemas/word.ts';
import { readAs } from '../disk/read-as.ts';
import { HearingError } from './hearing-error.ts';

export interface Cue {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly text: string;
}

/** Whether a file name is one that `readTranscript` takes. */
export const isTranscript = (filePath: string): boolean => /\.(vtt|srt|json)$/i.test(filePath);

/** @throws HearingError when the file is missing, is no transcript, or holds no words; FileError for a words.json of no use. */
export async function readTranscript(filePath: string): Promise<Words> {
  let bytes: Buffer;
  try {
    bytes = await readFile(filePath);
  } catch (cause) {
    throw new HearingError(`There is no transcript ${filePath} that can be read: check the name and the folder.`, {
      cause,
    });
  }
  const text = decodeText(bytes);
  if (/^\s*\{/.test(text)) return (await readAs(filePath, wordsSchema, 'words'))!;
  const cues = readCues(text);
  if (cues.length === 0) {
    throw new HearingError(`${filePath} holds no lines with times: give a .vtt, an .srt or a words.json.`);
  }
  const words = cues.flatMap(spreadWords);
  if (words.length === 0)
    throw new HearingError(`${filePath} holds times but no words: give a transcript of the talk.`);
  return {
    schema: 'lineword/words@1',
    recording: {
      file: path.basename(filePath),
      sha256: createHash('sha256').update(bytes).digest('hex'),
      seconds: Math.max(...cues.map((cue) => cue.endSeconds)),
    },
    hearing: { model: 'transcript', sha256: null },
    words,
    lost: [],
  };
}

/** Cues of WebVTT (W3C) and SubRip: a line with an arrow gives the times, the lines up to the next empty one the words. */
export function readCues(text: string): Cue[] {
  const cues: Cue[] = [];
  for (const block of text.replace(/\r\n?/g, '\n').split(/\n[ \t]*\n/)) {
    const lines = block.split('\n');
    if (/^(NOTE|STYLE|REGION)\b/.test(lines[0]!.trim())) continue;
    const at = lines.findIndex((line) => line.includes('-->'));
    const times = at < 0 ? null : /^\s*([\d:.,]+)\s+-->\s+([\d:.,]+)/.exec(lines[at]!);
    if (!times) continue;
    const startSeconds = readTime(times[1]!);
    const endSeconds = readTime(times[2]!);
    if (startSeconds === null || endSeconds === null) continue;
    const words = lines
      .slice(at + 1)
      .join(' ')
      .replace(/<[^>]*>|\{\\[^}]*\}/g, '');
    cues.push({ startSeconds, endSeconds: Math.max(startSeconds, endSeconds), text: unescapeText(words).trim() });
  }
  return cues.sort((a, b) => a.startSeconds - b.startSeconds);
}

function readTime(text: string): number | null {
  const found = /^(?:(\d+):)?(\d{1,2}):(\d{1,2})[.,](\d{1,3})$/.exec(text);
  if (!found) return null;
  return Number(found[1] ?? 0) * 3600 + Number(found[2]) * 60 + Number(found[3]) + Number(`0.${found[4]}`);
}

/** Spreads the words of a cue over its time by their length; the pause after a word counts as one letter. */
export function spreadWords(cue: Cue): Word[] {
  const texts = cue.text.split(/\s+/).filter(Boolean);
  const letters = texts.reduce((sum, text) => sum + text.length + 1, 0);
  const perLetter = (cue.endSeconds - cue.startSeconds) / Math.max(1, letters);
  let before = 0;
  return texts.map((text) => {
    const startSeconds = round(cue.startSeconds + before * perLetter);
    before += text.length + 1;
    return { text, startSeconds, endSeconds: round(cue.startSeconds + before * perLetter), probability: null };
  });
}

const entities: Record<string, string> = {
  amp: '&',
  lt: '<',
  gt: '>',
  nbsp: ' ',
  lrm: '',
  rlm: '',
  quot: '"',
  apos: "'",
};
const unescapeText = (text: string): string =>
  text.replace(/&(\w+);/g, (whole, name: string) => entities[name] ?? whole);

function decodeText(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return bytes.toString('utf16le').replace(/^\uFEFF/, '');
  return bytes.toString('utf8').replace(/^\uFEFF/, '');
}

const round = (seconds: number): number => Math.round(seconds * 1000) / 1000;
