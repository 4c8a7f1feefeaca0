/** What becomes of sentences that nothing was made of: those that may hold a finding have to be looked at. */
import { describe, expect, test } from 'vitest';
import { draftWords } from '../../src/4-observations/draft-words.ts';
import { draftSentence, OPENING, wordsOf } from './read-sentence.ts';

describe('at a place, with what is only said of things', () => {
  test.each([
    "At fourteen there's a wipe on the left.",
    'A red at sixty one on the bottom.',
    "There's a zorgle at forty one.",
  ])('%s has to be looked at', (text) => {
    expect(draftSentence(text).unplaced.map(({ heard }) => heard.text)).toEqual([text]);
  });

  test.each(['Coming up on forty feet now.', "We're at thirty and it all looks good.", 'Twenty, twenty one.'])(
    '%s is set aside',
    (text) => {
      const draft = draftSentence(text);
      expect(draft.unplaced).toEqual([]);
      expect(draft.setAside.length).toBeGreaterThan(0);
    },
  );
});

test('a word heard weakly at a place has to be looked at, the same word heard well has not', () => {
  const said = (probability: number) => {
    const words = wordsOf(`${OPENING} Bunch of pet at thirty.`);
    return draftWords({ ...words, words: words.words.map((word) => ({ ...word, probability })) }).unplaced;
  };
  expect(said(0.5)).toMatchObject([{ why: 'heard weakly, at a place' }]);
  expect(said(0.95)).toEqual([]);
});

test('what is told in words that no rule knows is looked at when it is like what was taught', () => {
  const draft = draftSentence('Somebody has shoved a chunk of two by four down in here.');
  const found = [...draft.unplaced.map(({ why }) => why), ...draft.observations.map(({ kind }) => kind)];
  expect(found.some((one) => /foreign/.test(one))).toBe(true);
});
