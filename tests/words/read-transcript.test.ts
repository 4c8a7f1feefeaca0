import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readCues, readTranscript } from '../../src/2-words/read-transcript.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'lineword-test-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const write = (name: string, text: string | Buffer): string => {
  writeFileSync(path.join(folder, name), text);
  return path.join(folder, name);
};

// The first example is in the form of the W3C WebVTT recommendation, section 1.1; the second is SubRip as players write it.
const vtt = `WEBVTT - a talk

NOTE nobody reads this
--> not even this

STYLE
::cue { color: lime }

intro
00:00.800 --> 00:04.800 align:start position:10%
<v Roger>Four inch <b>cast</b> iron &amp; clay.

01:00:05.000 --> 01:00:07.000
- Roots
at the joint
`;
const srt =
  '1\r\n00:00:01,000 --> 00:00:03,000\r\nRoots at the joint.\r\n\r\n2\r\n00:00:04,500 --> 00:00:05,000\r\n{\\an8}Heavy.\r\n';

describe('cues', () => {
  test('WebVTT: header, notes, styles, settings, tags and entities', () => {
    expect(readCues(vtt)).toEqual([
      { startSeconds: 0.8, endSeconds: 4.8, text: 'Four inch cast iron & clay.' },
      { startSeconds: 3605, endSeconds: 3607, text: '- Roots at the joint' },
    ]);
  });
  test('SubRip: commas, carriage returns, style marks', () => {
    expect(readCues(srt)).toEqual([
      { startSeconds: 1, endSeconds: 3, text: 'Roots at the joint.' },
      { startSeconds: 4.5, endSeconds: 5, text: 'Heavy.' },
    ]);
  });
});

describe('words', () => {
  test('are spread over the cue by their length, and nothing is claimed about hearing', async () => {
    const { words, hearing, lost } = await readTranscript(write('a.srt', srt));
    expect(hearing).toEqual({ model: 'transcript', sha256: null });
    expect(lost).toEqual([]);
    expect(words.map((word) => [word.text, word.startSeconds, word.endSeconds])).toEqual([
      ['Roots', 1, 1.6],
      ['at', 1.6, 1.9],
      ['the', 1.9, 2.3],
      ['joint.', 2.3, 3],
      ['Heavy.', 4.5, 5],
    ]);
    expect(words.every((word) => word.probability === null)).toBe(true);
  });
  test('our own words.json comes back as it was', async () => {
    const words = await readTranscript(write('a.vtt', vtt));
    expect(await readTranscript(write('words.json', JSON.stringify(words)))).toEqual(words);
  });
  test('UTF-16 with a byte order mark, as Windows editors save it', async () => {
    const { words } = await readTranscript(write('b.srt', Buffer.from(`\uFEFF${srt}`, 'utf16le')));
    expect(words).toHaveLength(5);
  });
});

describe('refuses in one sentence', () => {
  test.each([
    ['no such file', () => path.join(folder, 'none.vtt'), /There is no transcript/],
    ['no cues', () => write('c.vtt', 'WEBVTT\n\nhello'), /no lines with times/],
    ['times without words', () => write('d.vtt', 'WEBVTT\n\n00:01.000 --> 00:02.000\n'), /no words/],
    ['JSON cut short', () => write('e.json', '{"schema":"lineword/wo'), /damaged \(not JSON\)/],
    ['another JSON', () => write('f.json', '{"schema":"lineword/draft@1"}'), /does not hold lineword words/],
  ])('%s', async (_, file, message) => {
    const error = await readTranscript(file()).catch((reason: unknown) => reason);
    expect(error).toMatchObject({
      name: expect.stringMatching(/^(Hearing|File)Error$/),
      message: expect.stringMatching(message),
    });
  });
});
