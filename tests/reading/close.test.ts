/** The close reader: its windows lose no word, its heads multiply as a reference does, and what it says is written to nothing by itself. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { modelsFolder } from '../../src/2-words/model-files.ts';
import { findPhrases } from '../../src/3-phrases/find-phrases.ts';
import { COUNTED, countedWays, ELSEWHERE, type Heads, readHeads } from '../../src/4-observations/close/heads.ts';
import { type CloseReader, loadCloseReader } from '../../src/4-observations/close/load-close-reader.ts';
import { printedWords, readClosely } from '../../src/4-observations/close/read-closely.ts';
import { wordsOf } from './read-sentence.ts';

const phrasesIn = (text: string) => findPhrases(wordsOf(text).words);
const SURE = 8;

/** Speaks for roots wherever a piece is "roots", and for nothing else. */
const wordSpotter: CloseReader = {
  heads: { width: 1, kinds: ['roots', 'wye'], fields: () => new Map() } satisfies Heads,
  piecesOf: (word) => [...word].map((letter, at) => (at === 0 && word === 'roots' ? 1 : letter.charCodeAt(0))),
  read: async (pieces) => ({
    states: new Float32Array(pieces.length),
    kinds: Float32Array.from(pieces.flatMap((piece) => [piece === 1 ? SURE : -SURE, -SURE])),
    keys: new Float32Array(pieces.length),
  }),
};

describe('reading in windows', () => {
  it('sees every word of a long talk once, wherever it stands', async () => {
    const talk = Array.from({ length: 900 }, (_, at) => (at % 37 === 5 ? 'roots' : 'pipe')).join(' ');
    const phrases = phrasesIn(talk);
    const close = await readClosely(phrases, wordSpotter);
    for (const [at, { text }] of phrases.tokens.entries()) {
      expect(close.chance('roots', at, at + 1) > 0.9, `${text} ${at}`).toBe(text === 'roots');
      expect(close.chance('wye', at, at + 1)).toBeLessThan(0.1);
    }
  });

  it('reads talk of no words at all', async () => {
    const close = await readClosely(phrasesIn(''), wordSpotter);
    expect(close.kinds).toEqual(['roots', 'wye']);
  });

  it('sees a number in figures where it begins, and every mark', () => {
    const printed = printedWords(phrasesIn('Roots, at twenty three and a half. Okay?'));
    expect(printed.flatMap(({ words }) => words)).toEqual(['roots', ',', 'at', '23.5', '.', 'okay', '?']);
    expect(printed.filter(({ value }) => value !== null).map(({ value }) => value)).toEqual([23.5]);
  });
});

describe('the heads', () => {
  const WIDTH = 2;
  const parts: [string, number[], number[]][] = [
    ['kindEmbedding', [1, 2], [0.5, -0.5]],
    ['query', [2, 2], [1, 0, 0, 1]],
    ['queryBias', [2], [0, 0]],
    ['choices', [3, 2], [0, 0, 2, 0, 0, 2]],
    ['choicesBias', [3], [0, 0, 0]],
    ['pointers', [2, 2], [3, 0, 0, 3]],
    ['pointersBias', [2], [0, 0]],
    ['nothing', [2, 2], [0, 0, 0, 0]],
    ['nothingBias', [2], [0.1, -0.2]],
  ];
  let offset = 0;
  const index = {
    kinds: ['roots'],
    choices: [{ field: 'place', values: ['3', '9'], offset: 0 }],
    numbers: ['at'],
    parts: parts.map(([name, shape, values]) => {
      const part = { name, shape, offset };
      offset += values.length;
      return part;
    }),
  };
  const heads = readHeads(index, Buffer.from(Float32Array.from(parts.flatMap(([, , values]) => values)).buffer), WIDTH);

  // Reference: numpy 2.4 on the same matrices, softmax over [0, 2 tanh(1.5), 2 tanh(-0.5)] and [0.1, -0.2, p.k1/sqrt 2, p.k2/sqrt 2].
  it('give the chances a reference library gives', () => {
    const found = heads.fields('roots', Float32Array.from([1, 0]), Float32Array.from([1, 0, 0, 1]), [
      { value: 14, row: 0 },
      { value: 20, row: 1 },
    ]);
    expect(found.get('place')!.map(({ value }) => value)).toEqual(['3', null, '9']);
    const chance = (field: string, value: string | number | null) =>
      found.get(field)!.find((likely) => likely.value === value)!.chance;
    expect(chance('place', '3')).toBeCloseTo(0.814, 3);
    expect(chance('at', 14)).toBeCloseTo(0.7479, 3);
    expect(chance('at', 20)).toBeCloseTo(0.0411, 3);
    expect(chance('at', null) + chance('at', ELSEWHERE)).toBeCloseTo(0.2109, 3);
  });

  it('take equal numbers for one', () => {
    const found = heads.fields('roots', Float32Array.from([1, 0]), Float32Array.from([1, 0, 1, 0]), [
      { value: 14, row: 0 },
      { value: 14, row: 1 },
    ]);
    expect(found.get('at')!.filter(({ value }) => value === 14)).toHaveLength(1);
    expect(found.get('at')!.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 5);
  });
});

describe('places counted from others', () => {
  const parts: [string, number[], number[]][] = [
    ['kindEmbedding', [1, 2], [0, 0]],
    ['query', [2, 2], [1, 0, 0, 1]],
    ['queryBias', [2], [0, 0]],
    ['choices', [4, 2], [0, 0, 4, 0, 0, 4, 0, 0]],
    ['choicesBias', [4], [0, 0, 0, 0]],
    ['pointers', [3, 2], [0, 0, 5, 0, 0, 5]],
    ['pointersBias', [3], [0, 0, 0]],
    ['nothing', [6, 2], Array(12).fill(0)],
    ['nothingBias', [6], Array(6).fill(0)],
  ];
  let offset = 0;
  const index = {
    kinds: ['roots'],
    choices: [{ field: 'way', values: countedWays, offset: 0 }],
    numbers: ['at', 'from', 'step'],
    parts: parts.map(([name, shape, values]) => {
      const part = { name, shape, offset };
      offset += values.length;
      return part;
    }),
  };
  const heads = readHeads(index, Buffer.from(Float32Array.from(parts.flatMap(([, , values]) => values)).buffer), 2);

  // Worked by hand: with a = tanh 1, the ways "on" and "back" have exp(4a) of 2 exp(4a) + 2 each, either number exp(5a) of exp(5a) + 1.
  it('are one number on from another, as likely as all three are together', () => {
    const keys = Float32Array.from([0, 1, 0, 0, 0, 1]);
    const numbers = [
      { value: 14, row: 0 },
      { value: 7, row: 1 },
    ];
    const [best] = heads.fields('roots', Float32Array.from([1, 1]), keys, numbers).get(COUNTED)!;
    expect(best!.value).toBe(21);
    const power = Math.exp(4 * Math.tanh(1));
    const share = Math.exp(5 * Math.tanh(1)) / (Math.exp(5 * Math.tanh(1)) + 1);
    expect(best!.chance).toBeCloseTo((power / (2 * power + 2)) * share ** 2, 4);
  });
});

describe('the close reader that is shipped', () => {
  it('knows every kind, and the fields it was taught', async () => {
    const index = JSON.parse(readFileSync(path.join(modelsFolder(), 'close-reader', 'heads.json'), 'utf8'));
    const { heads } = await loadCloseReader();
    expect([...heads.kinds].sort()).toEqual([...index.kinds].sort());
  });

  it('finds what is there, and where, beside what is only spoken of', async () => {
    const phrases = phrasesIn(
      'Heading for the street now. At fourteen there are roots on the left. Thirty one, we have a wye on the right. My neighbor had roots too, years ago.',
    );
    const close = await readClosely(phrases, await loadCloseReader());
    const spanOf = (first: string, last: string): [number, number] => [
      phrases.tokens.findIndex(({ text }) => text === first),
      phrases.tokens.findIndex(({ text }) => text === last) + 1,
    ];
    const there = spanOf('at', 'left');
    const told = spanOf('neighbor', 'ago');
    expect(close.chance('roots', ...there)).toBeGreaterThan(0.5);
    expect(close.chance('roots', ...told)).toBeLessThan(0.2);
    const fields = close.fields('roots', ...there);
    expect(fields.get('at')![0]!.value).toBe(14);
    expect(fields.get('place')![0]!.value).toBe('9');
    expect(close.fields('wye', ...spanOf('thirty', 'right')).get('at')![0]!.value).toBe(31);
  });
});
