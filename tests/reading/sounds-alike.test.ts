/** Fifteen heard as fifty is printed with a high probability: the recogniser's second look tells, and the place is flagged. */
import { describe, expect, test } from 'vitest';
import type { Observation } from '../../shared/schemas/draft.ts';
import { soundsLikeNumber } from '../../shared/vocabulary/sounds-like-number.ts';
import { draftWords } from '../../src/4-observations/draft-words.ts';
import { OPENING, wordsOf } from './read-sentence.ts';

function lastOf(text: string, alternatives: Record<string, { text: string; behindNats: number }>): Observation {
  const words = wordsOf(`${OPENING} ${text}`);
  const heard = words.words.map((word) => {
    const other = alternatives[word.text.replace(/[.,]$/, '')];
    return { ...word, probability: 0.97, ...(other ? { alternatives: [other] } : {}) };
  });
  return draftWords({ ...words, words: heard }).observations.at(-1)!;
}

test.each([
  ['13', '30'],
  ['30', '13'],
  ['15.5', '50.5'],
  ['90', '19'],
  ['12', null],
  ['20', null],
  ['50.', null],
  ['1950', null],
])('%s sounds like %s', (printed, other) => expect(soundsLikeNumber(printed)).toBe(other));

describe('a crack at 50', () => {
  test('that may be 15 is flagged, and both are offered', () => {
    const crack = lastOf('Crack on the top at 50.', { 50: { text: '15', behindNats: 3.7 } });
    expect(crack.review).toMatchObject([
      { reason: 'distance-unsure', about: 'at', offers: [{ value: 50 }, { value: 15 }] },
    ]);
  });

  test('that is far from 15 is not', () => {
    expect(lastOf('Crack on the top at 50.', { 50: { text: '15', behindNats: 8 } }).review).toEqual([]);
  });

  test('where 50 is said of something else is not', () => {
    const crack = lastOf('Crack on the top at 22. The house is 50 years old.', { 50: { text: '15', behindNats: 1 } });
    expect(crack.review).toEqual([]);
  });
});

test('the end of a stretch is looked at too, with its half', () => {
  const belly = lastOf('Belly from 12 to 30 and a half.', { 30: { text: '13', behindNats: 2 } });
  expect(belly.review).toContainEqual(
    expect.objectContaining({ about: 'to', offers: [expect.objectContaining({ value: 30.5 }), expect.anything()] }),
  );
});
