import { describe, expect, test } from 'vitest';
import type { Word } from '../../shared/schemas/word.ts';
import { joinLetters } from '../../src/2-words/join-letters.ts';

const say = (text: string, gapSeconds = 0.1): Word[] =>
  text.split(' ').map((word, index) => ({
    text: word,
    startSeconds: index * (0.3 + gapSeconds),
    endSeconds: index * (0.3 + gapSeconds) + 0.3,
    probability: 0.9 - index / 100,
  }));
const read = (words: Word[]): string =>
  joinLetters(words)
    .map((word) => word.text)
    .join(' ');

describe('names said letter by letter', () => {
  test.each([
    ['so a BS, 3 inch', 'so ABS, 3 inch'],
    ['A BS pipe', 'ABS pipe'],
    ['old P V C here', 'old PVC here'],
    ['PV C.', 'PVC.'],
    ['H D P E', 'HDPE'],
  ])('%s', (printed, form) => {
    expect(read(say(printed))).toBe(form);
  });

  test.each(['a bs', 'a B and an S', 'A, BS', 'P. V. C.', 'it is a PVC pipe', 'A BST'])('leaves alone: %s', (text) => {
    expect(read(say(text))).toBe(text);
  });

  test('not over a pause', () => {
    expect(read(say('P V C', 0.6))).toBe('P V C');
  });

  test('keeps what was printed, the times and the lowest probability', () => {
    expect(joinLetters(say('a BS'))).toEqual([
      { text: 'ABS', startSeconds: 0, endSeconds: expect.closeTo(0.7), probability: 0.89, printed: 'a BS' },
    ]);
  });
});
