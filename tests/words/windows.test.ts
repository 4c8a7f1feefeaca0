import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isLooping } from '../../src/2-words/check-window.ts';
import { cutWindows, LONGEST_SECONDS, toRecordingSeconds } from '../../src/2-words/cut-windows.ts';
import { findGaps } from '../../src/2-words/find-gaps.ts';
import { FRAME_SECONDS, findSpans } from '../../src/2-words/find-speech.ts';
import { bestTokens, logSumExp } from '../../src/2-words/logits.ts';

/** Stretches of talk and pauses, in seconds, as the detector would see them. */
const talk = fc.array(
  fc.record({
    speech: fc.double({ min: 0.3, max: 70, noNaN: true }),
    pause: fc.double({ min: 0.3, max: 40, noNaN: true }),
  }),
  {
    minLength: 1,
    maxLength: 12,
  },
);
function speechOf(parts: { speech: number; pause: number }[]) {
  const frames: number[] = [];
  for (const { speech, pause } of parts) {
    for (let i = 0; i < speech / FRAME_SECONDS; i++) frames.push(0.8 + 0.15 * Math.sin(i * 0.7));
    for (let i = 0; i < pause / FRAME_SECONDS; i++) frames.push(0.01);
  }
  const probabilities = Float32Array.from(frames);
  const seconds = frames.length * FRAME_SECONDS;
  return { seconds, speech: { probabilities, spans: findSpans(probabilities, seconds) } };
}

describe('windows', () => {
  test('hold every second of speech once, never overlap, and never exceed the limit', () => {
    fc.assert(
      fc.property(talk, (parts) => {
        const { seconds, speech } = speechOf(parts);
        const windows = cutWindows(speech, seconds);
        const pieces = windows.flatMap((window) => window.pieces);
        for (const [index, piece] of pieces.entries()) {
          expect(piece.endSeconds).toBeGreaterThan(piece.startSeconds);
          if (index > 0) expect(piece.startSeconds).toBeGreaterThanOrEqual(pieces[index - 1]!.endSeconds - 1e-6);
        }
        for (const window of windows) expect(window.seconds).toBeLessThanOrEqual(LONGEST_SECONDS + 1e-6);
        for (const span of speech.spans) {
          const covered = pieces.reduce(
            (sum, piece) =>
              sum +
              Math.max(
                0,
                Math.min(piece.endSeconds, span.endSeconds) - Math.max(piece.startSeconds, span.startSeconds),
              ),
            0,
          );
          expect(covered).toBeCloseTo(span.endSeconds - span.startSeconds, 4);
        }
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  test('end in a pause when there is one', () => {
    const { seconds, speech } = speechOf([
      { speech: 15, pause: 1 },
      { speech: 20, pause: 1 },
    ]);
    expect(cutWindows(speech, seconds).map((window) => [window.isCutAtStart, window.isCutAtEnd])).toEqual([
      [false, false],
      [false, false],
    ]);
  });

  test('talk without a pause is cut where speech is least likely, and says so', () => {
    const probabilities = new Float32Array(1200).fill(0.95);
    probabilities[600] = 0.5;
    const seconds = 1200 * FRAME_SECONDS;
    const windows = cutWindows({ probabilities, spans: [{ startSeconds: 0, endSeconds: seconds }] }, seconds);
    expect(windows[0]!.endSeconds).toBeCloseTo(600.5 * FRAME_SECONDS, 5);
    expect([windows[0]!.isCutAtEnd, windows[1]!.isCutAtStart]).toEqual([true, true]);
  });

  test('a long pause is shortened, and times still point into the recording', () => {
    const { seconds, speech } = speechOf([
      { speech: 3, pause: 9 },
      { speech: 3, pause: 1 },
    ]);
    const [window] = cutWindows(speech, seconds);
    expect(window!.pieces).toHaveLength(2);
    expect(window!.seconds).toBeLessThan(8.5);
    expect(toRecordingSeconds(window!, window!.seconds)).toBeCloseTo(window!.endSeconds, 5);
  });
});

describe('speech that no word covers', () => {
  const word = (startSeconds: number, endSeconds: number) => ({
    text: 'roots',
    startSeconds,
    endSeconds,
    probability: 0.9,
  });
  const window = { startSeconds: 0, endSeconds: 10 };
  test('is found after the last word and inside a word that lasts too long', () => {
    expect(findGaps([word(0, 0.5)], [{ startSeconds: 0, endSeconds: 6 }], window)).toEqual([
      { startSeconds: 0.5, endSeconds: 6 },
    ]);
    const [inside] = findGaps([word(0, 6), word(6, 6.5)], [{ startSeconds: 0, endSeconds: 6.5 }], window);
    expect(inside!.startSeconds).toBeLessThan(2);
    expect(inside!.endSeconds).toBe(6);
  });
  test('silence is no gap', () => {
    expect(
      findGaps(
        [word(0, 0.5), word(8, 8.5)],
        [
          { startSeconds: 0, endSeconds: 0.5 },
          { startSeconds: 8, endSeconds: 8.5 },
        ],
        window,
      ),
    ).toEqual([]);
  });
});

describe('loops', () => {
  test.each([
    ['one token', new Array(14).fill(7)],
    ['a phrase', [1, 2, ...new Array(4).fill([5, 6, 7, 8]).flat()]],
  ])('%s over and over is a loop', (_, tokens) => expect(isLooping(tokens)).toBe(true));
  test.each([
    ['"no, no, no, no"', [9, 4, 9, 4, 9, 4, 9, 4]],
    ['plain talk', Array.from({ length: 60 }, (_, index) => (index * 37) % 101)],
    ['two like sentences', [1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6]],
  ])('%s is not', (_, tokens) => expect(isLooping(tokens)).toBe(false));
});

test('the best tokens and the sum agree with a plain computation', () => {
  const logits = Float32Array.from({ length: 300 }, (_, index) => 10 * Math.sin(index * 1.7));
  const plain = [...logits.keys()].sort((a, b) => logits[b]! - logits[a]!).slice(0, 8);
  expect(bestTokens(logits, 300, 8)).toEqual(plain);
  expect(logSumExp(logits, 300)).toBeCloseTo(Math.log(logits.reduce((sum, value) => sum + Math.exp(value), 0)), 4);
});
