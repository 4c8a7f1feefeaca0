/** What must hold for any talk whatever: random stretches of trade words, ordinary words, numbers and punctuation. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftSchema } from '../../shared/schemas/draft.ts';
import type { Word, Words } from '../../shared/schemas/word.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { materials } from '../../shared/vocabulary/materials.ts';
import { services } from '../../shared/vocabulary/services.ts';
import { assertionCues, pseudoCues } from '../../src/3-phrases/assertion/lexicon.ts';
import { cameraCues, headings } from '../../src/3-phrases/camera/lexicon.ts';
import { correctionCues } from '../../src/3-phrases/correction/lexicon.ts';
import { placeBefore, relativeAfter } from '../../src/3-phrases/distance/lexicon.ts';
import { samePlace } from '../../src/3-phrases/distance/word-places.ts';
import { findPhrases } from '../../src/3-phrases/find-phrases.ts';
import { expandPattern } from '../../src/3-phrases/lexicon/pattern.ts';
import { draftWords } from '../../src/4-observations/draft-words.ts';
import { wordsOf } from './read-sentence.ts';

/** One printed form of each pattern. */
const printed = (patterns: readonly string[]): string[] =>
  patterns.flatMap((pattern) => {
    const [words] = expandPattern(
      pattern.replaceAll('<service>', 'kitchen').replaceAll('*', 'old').replaceAll('#', '40'),
      2,
    );
    return words ? [words.filter((word) => word !== ',').join(' ')] : [];
  });

const tradeWords = printed([
  ...kinds.flatMap((kind) => [
    ...kind.words,
    ...('signs' in kind ? kind.signs : []),
    ...('weakWords' in kind ? kind.weakWords : []),
    ...('notWords' in kind ? kind.notWords : []),
    ...('misheard' in kind ? kind.misheard.map(({ heard }) => heard) : []),
  ]),
  ...[...materials, ...services].flatMap(({ words }) => words),
]);
const cueWords = printed([
  ...[...assertionCues, ...correctionCues, ...cameraCues, ...headings].flatMap(({ words }) => words),
  ...pseudoCues,
  ...placeBefore,
  ...samePlace,
  ...relativeAfter.flatMap(({ words }) => words),
]);
const ordinary =
  'the a an and or of to in on at it is was that this there here we I you he she they so okay well um uh yeah now then but if when dog truck lunch kitchen garden street Tuesday seller looks good fine nice going back up down out over about around like just really maybe'.split(
    ' ',
  );
const numberWords =
  "zero oh one two three four five six seven eight nine ten eleven fifteen nineteen twenty thirty forty fifty ninety hundred thousand point half quarter third couple and a feet foot inch inches percent % degrees o'clock 0 1 4 12 45 90 105 52.5 999 1e9 -3 3/4 0/0 ½ 42¼ 31-38 10'6\" $200 1+64 12:30".split(
    ' ',
  );
const oddities = [
  '—',
  '...',
  '?',
  '!',
  ',',
  "'",
  '"',
  '%',
  '🙂',
  'naïve',
  'ＦＥＥＴ',
  '\u200b',
  'a'.repeat(400),
  "'s",
  '()',
  '*',
  '|',
  '#',
];

const oneOf = (list: readonly string[]): fc.Arbitrary<string> => fc.constantFrom(...list);
const chunk = fc.oneof(
  { weight: 4, arbitrary: oneOf(tradeWords) },
  { weight: 3, arbitrary: oneOf(cueWords) },
  { weight: 4, arbitrary: oneOf(numberWords) },
  { weight: 4, arbitrary: oneOf(ordinary) },
  { weight: 1, arbitrary: oneOf(oddities) },
);
const marked = fc
  .tuple(
    chunk,
    fc.oneof({ weight: 8, arbitrary: fc.constant('') }, { weight: 3, arbitrary: oneOf([',', '.', '?', ' -', '...']) }),
  )
  .map(([text, mark]) => text + mark);
const talk = (maxLength: number): fc.Arbitrary<string> =>
  fc.array(marked, { minLength: 1, maxLength }).map((parts) => parts.join(' '));
/** Most talks start a run; those that do not have nothing to put findings in. */
const spoken = (maxLength: number): fc.Arbitrary<string> =>
  fc
    .tuple(
      oneOf([
        '',
        'Front cleanout, heading downstream. Four inch clay. ',
        'Through the roof vent, going upstream, counter at zero. ',
      ]),
      talk(maxLength),
    )
    .map(([opening, text]) => opening + text);

/** Uneven timing: pauses cut sentences, and words may be barely heard. */
const timed = (maxLength: number): fc.Arbitrary<Words> =>
  fc
    .tuple(
      spoken(maxLength),
      fc.array(
        fc.tuple(
          fc.integer({ min: 5, max: 90 }),
          fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 400 })),
          fc.option(fc.integer({ min: 0, max: 100 })),
        ),
      ),
    )
    .map(([text, timing]) => {
      const words = wordsOf(text);
      let at = 0;
      const spread = words.words.map((word, index): Word => {
        const [length, pause, probability] = timing[index % Math.max(1, timing.length)] ?? [30, 0, null];
        const startSeconds = (at + pause) / 100;
        at += pause + length;
        return {
          text: word.text,
          startSeconds,
          endSeconds: at / 100,
          probability: probability === null ? null : probability / 100,
        };
      });
      return { ...words, recording: { ...words.recording, seconds: at / 100 }, words: spread };
    });

const clean = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Failures must be repeatable: the same seeds every time. */
const settings = { seed: 20240229, endOnFailure: true } as const;

describe('any talk whatever', () => {
  it('gives a valid draft whose values make sense', () => {
    fc.assert(
      fc.property(timed(30), (words) => {
        const draft = draftWords(words);
        draftSchema.parse(draft);
        const runs = draft.runs.map((run) => run.n);
        expect(runs).toEqual(runs.map((_, index) => index + 1));
        expect(new Set(draft.observations.map((item) => item.id)).size).toBe(draft.observations.length);
        for (const item of draft.observations) {
          expect(item.at === null).toBe(item.atBasis === null);
          expect(item.at ?? 0).toBeGreaterThanOrEqual(0);
          expect(item.to ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(item.at ?? Number.POSITIVE_INFINITY);
          expect(runs).toContain(item.run);
        }
      }),
      { ...settings, numRuns: 500 },
    );
  });

  it('loses no word, and gives each to one account', () => {
    fc.assert(
      fc.property(timed(30), (words) => {
        const draft = draftWords(words);
        const spans = [
          ...draft.observations.flatMap((item) => [item.heard, ...item.again]),
          ...draft.absent.map((entry) => entry.heard),
          ...draft.runs.flatMap((run) => (run.heard ? [run.heard] : [])),
          ...Object.values(draft.site).map((field) => field.heard),
          ...[...draft.unplaced, ...draft.setAside].map((entry) => entry.heard),
        ];
        const tokens = findPhrases(words.words).tokens;
        const spoken = new Set(tokens.flatMap((token) => [token.firstWord, token.lastWord]));
        const lost = words.words.filter(
          (word, index) =>
            spoken.has(index) &&
            !spans.some((span) => span.start <= word.startSeconds + 0.011 && span.end >= word.endSeconds - 0.011),
        );
        expect(lost.map((word) => word.text)).toEqual([]);
      }),
      { ...settings, numRuns: 500 },
    );
  });

  it('quotes what was said: every span is a run of real words', () => {
    fc.assert(
      fc.property(timed(30), (words) => {
        const draft = draftWords(words);
        const all = ` ${clean(words.words.map((word) => word.text).join(' '))} `;
        const spans = [
          ...draft.observations.flatMap((item) => [item.heard, ...item.again]),
          ...[...draft.absent, ...draft.unplaced, ...draft.setAside].map((entry) => entry.heard),
          ...draft.runs.flatMap((run) => (run.heard ? [run.heard] : [])),
        ];
        const starts = new Set(words.words.map((word) => Math.round(word.startSeconds * 100)));
        const ends = new Set(words.words.map((word) => Math.round(word.endSeconds * 100)));
        for (const span of spans) {
          expect(all).toContain(` ${clean(span.text)} `);
          expect(starts.has(Math.round(span.start * 100)) && ends.has(Math.round(span.end * 100))).toBe(true);
        }
      }),
      { ...settings, numRuns: 500 },
    );
  });

  it('cuts phrases that lie inside the talk and lets no two measures claim one number', () => {
    const measures = new Set(['distance', 'clock', 'share', 'inches', 'diameter', 'angle', 'count', 'length']);
    fc.assert(
      fc.property(spoken(30), (text) => {
        const { tokens, numbers, phrases } = findPhrases(wordsOf(text).words);
        for (const phrase of [...phrases, ...numbers]) {
          expect(phrase.from).toBeGreaterThanOrEqual(0);
          expect(phrase.from).toBeLessThan(phrase.to);
          expect(phrase.to).toBeLessThanOrEqual(tokens.length);
        }
        for (const number of numbers) expect(Number.isFinite(number.value)).toBe(true);
        for (const number of numbers) {
          const families = phrases
            .filter((phrase) => measures.has(phrase.family) && phrase.from === number.from)
            .map((phrase) => phrase.family);
          expect(new Set(families).size).toBeLessThanOrEqual(1);
        }
      }),
      { ...settings, numRuns: 500 },
    );
  });

  // What random talk once broke, each in its shortest form.
  const observed = (text: string) => draftWords(wordsOf(text));
  it('puts nothing before the start of the count', () => {
    const { observations } = observed('Front cleanout, heading downstream. Three feet short of the wye, a crack.');
    for (const item of observations) expect(item.at ?? 0).toBeGreaterThanOrEqual(0);
  });
  it('ends nothing before it begins', () => {
    const { observations } = observed(
      "Front cleanout, heading downstream. From forty one on it's PVC. The bottom's rotted out at 24.",
    );
    for (const item of observations) expect(item.to ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(item.at ?? 0);
  });
  it('ends nothing that has no beginning', () => {
    const { observations } = observed(
      "Front cleanout, heading downstream. Four inch clay. The bottom's rotted out at 24.",
    );
    for (const item of observations) expect(item.at === null && item.to !== null).toBe(false);
  });
  it('lists the run of every observation', () => {
    const draft = observed("Couldn't get the cap off in back.");
    expect(draft.observations.length).toBeGreaterThan(0);
    const runs = draft.runs.map((run) => run.n);
    for (const item of [...draft.observations, ...draft.absent]) expect(runs).toContain(item.run);
  });

  // Words that every JavaScript object answers to.
  it('reads "constructor" like any other word', () => {
    for (const word of ['constructor', '__proto__', 'toString', 'valueOf']) {
      const text = `Front cleanout, heading downstream. Roots at twenty ${word}. The ${word} at fifteen feet, ${word} roots.`;
      expect(() => draftWords(wordsOf(text)), word).not.toThrow();
    }
  });

  it('reads the same words the same way', () => {
    fc.assert(
      fc.property(timed(30), (words) => {
        expect(draftWords(structuredClone(words))).toEqual(draftWords(words));
      }),
      { ...settings, numRuns: 300 },
    );
  });

  // A hundred thousand stretches in talks of two hundred and fifty: nothing throws, and nothing grows faster than the talk.
  it('reads a hundred thousand random stretches', () => {
    let stretches = 0;
    fc.assert(
      fc.property(fc.array(marked, { minLength: 250, maxLength: 250, size: 'max' }), (parts) => {
        const words = wordsOf(`Front cleanout, heading downstream. ${parts.join(' ')}`);
        const { tokens, phrases } = findPhrases(words.words);
        expect(phrases.length).toBeLessThan(3 * tokens.length);
        expect(draftWords(words).observations.length).toBeLessThan(tokens.length);
        stretches += parts.length;
      }),
      { ...settings, numRuns: 400 },
    );
    expect(stretches).toBe(100_000);
  }, 120_000);
});
