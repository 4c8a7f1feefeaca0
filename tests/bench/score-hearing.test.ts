import { describe, expect, test } from 'vitest';
import { canonicalTokens, scoreHearing } from '../../src/bench/score-hearing.ts';

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
    ['gray and back pitched', 'grey and backpitched'],
  ])('%s, %s', (said, heard) => {
    expect(form(said)).toBe(form(heard));
  });

  test('but not another number', () => {
    expect(form('two thousand nineteen')).not.toBe(form('2090'));
    expect(form('the ones on the left')).toBe('the ones on the left');
  });
});

/** Word errors that jiwer 4.0.0 (`jiwer.process_words`, an independent scorer) counts for the same pairs. */
describe('as many word errors as jiwer counts', () => {
  test.each([
    [3, 'roots at the joint light coming in from the top', 'roots at a joint light coming from the top side'],
    [
      3,
      'we are back in the front cleanout heading down to the street',
      'we are back in front clean heading to the street',
    ],
    [4, 'cast iron changes to clay right at the foundation', 'cast iron changes to play ride at foundation wall'],
    [4, 'no breaks no cracks no grease', 'no brakes cracks no greece no'],
    [4, 'a b c d e f g h', 'b c x d e f h h i'],
    [5, 'one tee two tees three tees', 'tee tee tee'],
    [0, 'pull back slowly and let it flush', 'pull back slowly and let it flush'],
  ])('%i: %s', (errors, said, heard) => {
    const words = heard
      .split(' ')
      .map((text, index) => ({ text, startSeconds: index, endSeconds: index + 1, probability: null }));
    const score = scoreHearing([{ startSeconds: 0, endSeconds: 30, text: said }], words);
    expect(score.substituted + score.deleted + score.inserted).toBe(errors);
  });
});
