import { describe, expect, test } from 'vitest';
import { AT_START, makePhraseTrie } from '../../src/2-words/phrase-trie.ts';
import type { TokenTable } from '../../src/2-words/token-table.ts';

/** A tokenizer with two letters a token, so that phrases share beginnings. */
const names = ['<end>'];
const id = (piece: string): number => {
  if (!names.includes(piece)) names.push(piece);
  return names.indexOf(piece);
};
const encode = (text: string): number[] => (text.match(/ ?[^ ]{1,2}/g) ?? []).map(id);
const tokens = {
  end: 0,
  encode,
  beginsWord: (token: number) => token === 0 || /^[ ,.]/.test(names[token]!),
} as unknown as TokenTable;
const trie = makePhraseTrie(
  ['wye', 'cast iron', 'cast iron pipe', 'root'].map((text) => ({ text, bonus: 1 })),
  tokens,
);
/** The bonus that is left when a text has been walked to its end. */
function bonus(text: string): number {
  let walk = AT_START;
  let sum = 0;
  for (const token of [...encode(text), 0]) {
    const step = trie.step(walk, token);
    walk = step.walk;
    sum += step.gain;
  }
  return sum;
}

describe('the bonus', () => {
  test('stays for a whole phrase', () => {
    expect(bonus(' a wye on')).toBe(encode(' wye').length);
    expect(bonus(' cast iron')).toBe(encode(' cast iron').length);
  });
  test('is taken back when the phrase breaks off', () => {
    expect(bonus(' wyvern')).toBe(0);
    expect(bonus(' cast stone')).toBe(0);
  });
  test('is taken back when the word goes on', () => {
    expect(bonus(' roots')).toBe(0);
    expect(bonus(' rooted here')).toBe(0);
  });
  test('of the shorter phrase stays when the longer one breaks off', () => {
    expect(bonus(' cast iron pickle')).toBe(encode(' cast iron').length);
    expect(bonus(' cast iron pipe')).toBe(encode(' cast iron pipe').length);
  });
  test('does not begin inside a word', () => {
    expect(bonus(' xxwye')).toBe(0);
  });
  test('comes again for the next phrase', () => {
    expect(bonus(' wye wye')).toBe(2 * encode(' wye').length);
  });
});
