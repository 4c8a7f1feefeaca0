import { describe, expect, test } from 'vitest';
import type { Word } from '../../shared/schemas/word.ts';
import { joinNumbers } from '../../src/2-words/join-numbers.ts';

const say = (text: string): Word[] =>
  text.split(' ').map((word, index) => ({
    text: word,
    startSeconds: index * 0.4,
    endSeconds: index * 0.4 + 0.3,
    probability: 0.9,
  }));
const read = (text: string): string =>
  joinNumbers(say(text))
    .map((word) => word.text)
    .join(' ');

describe('numbers come in one form', () => {
  test.each([
    // Mixed forms that the recogniser was seen to print (research notes and narrations).
    ['11. And a half feet', '11 and a half feet'],
    ['Eleven and a half feet', '11 and a half feet'],
    ['11 point 5 feet', '11.5 feet'],
    ['eleven point five feet', '11.5 feet'],
    ['twelve point oh five feet', '12.05 feet'],
    ['50 to feet', '52 feet'],
    ['Forty-Won feet', '41 feet'],
    ['forty two and a half', '42 and a half'],
    ['twenty-three-and-a-half feet', '23 and a half feet'],
    ['a hundred and twelve feet', '112 feet'],
    ['one hundred six feet', '106 feet'],
    ['one oh six feet', '106 feet'],
    ['Sixteen, roots', '16, roots'],
    ['30 1 feet', '31 feet'],
    ['11-1/2 inches', '11.5 inches'],
  ])('%s', (printed, form) => {
    expect(read(printed)).toBe(form);
  });

  test.each([
    'from 50 to 60 feet',
    'this one is fine',
    'no one goes for it',
    '4 inch cast iron',
    'in 20. 4 roots',
    '12. And a wye',
    'at 40 for now',
  ])('leaves alone: %s', (text) => {
    expect(read(text)).toBe(text);
  });

  test('keeps what was printed, the times and the lowest probability', () => {
    const words = say('50 to feet');
    words[1]!.probability = 0.4;
    expect(joinNumbers(words)[0]).toEqual({
      text: '52',
      startSeconds: 0,
      endSeconds: 0.7,
      probability: 0.4,
      printed: '50 to',
    });
  });

  test('does not join over a pause', () => {
    const words = say('forty two');
    words[1] = { ...words[1]!, startSeconds: 2, endSeconds: 2.3 };
    expect(joinNumbers(words).map((word) => word.text)).toEqual(['40', 'two']);
  });
});
