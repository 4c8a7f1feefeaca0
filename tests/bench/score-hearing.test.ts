import { describe, expect, test } from 'vitest';
import { canonicalTokens } from '../../src/bench/score-hearing.ts';

const form = (text: string): string =>
  canonicalTokens(text.split(' '))
    .map((token) => token.text)
    .join(' ');

describe('the same hearing in two spellings counts as the same', () => {
  test.each([
    ['two thousand nineteen', '2019'],
    ['two thousand and twenty six', '2026'],
    ['nine thousand for it', '9000 for it'],
    ['two forty fives in a row', '2 45s in a row'],
    ['back in the nineties', 'back in the 90s'],
    ['a hundred and twelve', '112'],
  ])('%s, %s', (said, heard) => {
    expect(form(said)).toBe(form(heard));
  });

  test('but not another number', () => {
    expect(form('two thousand nineteen')).not.toBe(form('2090'));
    expect(form('the ones on the left')).toBe('the ones on the left');
  });
});
