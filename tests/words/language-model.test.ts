import { describe, expect, test } from 'vitest';
import { countTalk, plainWords } from '../../src/2-words/count-talk.ts';
import {
  AT_SENTENCE_START,
  endWord,
  isTradeTalk,
  type LanguageModel,
  loadLanguageModel,
  makeLanguageModel,
} from '../../src/2-words/language-model.ts';

const lines = [
  'the wye is on the left',
  'the wye is dry',
  'a wye on the right',
  'the pipe is dry',
  'the wye is on the right',
];
/** Twice, so that no triple is too rare to be kept. */
const small = makeLanguageModel(countTalk([...lines, ...lines]));

describe('gains', () => {
  // Reference: nltk 3.10.4, WittenBellInterpolated(3), fitted on the same ten sentences with "." at both ends;
  // logarithm of score(word, context) / score(word).
  test.each([
    ['wye', 'the', 1.1438688802562305],
    ['dry', 'wye is', 1.820508882514041],
    ['on', 'wye is', 1.9530276168241774],
    ['left', 'on the', 2.2801122371419873],
    ['pipe', 'on the', 0.02739897418811456],
    ['wye', 'a', 1.8191584434161694],
  ])('%s after "%s" is what nltk says', (word, before, nats) => {
    expect(small.gainOf(word, before.split(' '))).toBeCloseTo(nats, 10);
  });

  test('a word that was never counted gains and loses nothing, nor does one after words that were not', () => {
    expect(small.gainOf('flamingo', ['the'])).toBe(0);
    expect(small.gainOf('wye', ['pink', 'flamingo'])).toBe(0);
    expect(small.gainOf('constructor', ['the'])).toBe(0);
    expect(small.gainOf('wye', ['constructor'])).toBe(0);
  });
});

describe('words in one form', () => {
  test('numbers are one word however they are printed, sentence ends stand among the words', () => {
    expect(plainWords("At 11.5, that's Clay. Twenty-three feet?")).toEqual("at # that's clay . # feet .".split(' '));
  });

  test('letters said one by one are one name', () => {
    expect(Object.keys(countTalk(['four inch p v c here']).words)).toContain('pvc');
  });

  test('a beam goes from word to word, and a number in two words counts once', () => {
    const asked: string[] = [];
    const model: LanguageModel = {
      gainOf: (word, before) => {
        asked.push(`${before.join(' ')} > ${word}`);
        return 1;
      },
    };
    let before = AT_SENTENCE_START.before;
    let gain = 0;
    for (const letters of [' At', ' 50', ' two', ' feet.', ' Clay']) {
      const ended = endWord(model, { before, letters });
      before = ended.before;
      gain += ended.gain;
    }
    expect(asked).toEqual(['. > at', '. at > #', 'at # > feet', '. > clay']);
    expect(gain).toBe(4);
  });
});

test('the shipped model tells a wye from a way by what stands before it', async () => {
  const { model } = await loadLanguageModel();
  const gain = (word: string, before: string) => model.gainOf(word, before.split(' '));
  expect(gain('wye', "there's a")).toBeGreaterThan(gain('way', "there's a") + 0.5);
  expect(gain('way', 'all the')).toBeGreaterThan(gain('wye', 'all the') + 0.5);
});

test('talk of the trade is told from other talk', async () => {
  const { model } = await loadLanguageModel();
  expect(
    isTradeTalk(model, " Okay, at 23 feet there's a wye on the right, and then we've got roots at the joint."),
  ).toBe(true);
  // The first sentence of Pride and Prejudice, Jane Austen, 1813 (public domain).
  const novel =
    ' It is a truth universally acknowledged, that a single man in possession of a good fortune, must be in want of a wife.';
  expect(isTradeTalk(model, novel)).toBe(false);
});
