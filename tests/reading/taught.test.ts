import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { modelsFolder } from '../../src/2-words/model-files.ts';
import { readCues } from '../../src/2-words/read-transcript.ts';
import { findPhrases } from '../../src/3-phrases/find-phrases.ts';
import { plainWords, wordsBetween } from '../../src/4-observations/taught/features.ts';
import { makeReader, TAUGHT_FILE } from '../../src/4-observations/taught/read-taught.ts';
import { teach } from '../../src/4-observations/taught/teach.ts';
import { goldSchema } from '../../src/score/gold.ts';
import { draftSentence } from './read-sentence.ts';

const shippedFile = path.join(modelsFolder(), TAUGHT_FILE);

describe('teaching', () => {
  const said: [string, boolean][] = [
    ['roots at #', true],
    ['no roots here', false],
    ['fine roots in the joint', true],
    ['the pipe is clean', false],
    ['a root ball at #', true],
    ['joint at #', false],
    ['roots all around', true],
    ['no sign of roots', false],
  ];
  const lessons = said.map(([text, isFound]) => ({
    words: text.split(' '),
    finds: isFound ? ['roots'] : [],
    about: null,
  }));
  const chance = (text: string) =>
    makeReader(teach(lessons, ['roots']))
      .chances(text.split(' '))
      .get('roots')!;

  // Reference: scikit-learn 1.9.1, LogisticRegression(C=60, solver='liblinear', tol=1e-8) on the same counts over the root of their sum.
  it.each([
    ['roots at #', 0.9202],
    ['no roots here', 0.0807],
    ['a root ball at #', 0.944],
    ['roots here', 0.3644],
    ['clean joint', 0.0433],
    ['root in the pipe', 0.6757],
  ])('gives "%s" the chance a reference library gives it', (text, expected) => {
    // Weights are kept to a tenth, small ones not at all.
    expect(Math.abs(chance(text) - expected)).toBeLessThan(0.05);
  });

  it('gives the same weights from the same lessons', () => {
    expect(teach(lessons, ['roots'])).toEqual(teach(lessons, ['roots']));
  });

  it('learns nothing for a kind from a line that is labelled for another only', () => {
    const other = { words: ['stringy', 'stuff'], finds: ['crack'], about: ['crack'] };
    expect(teach([...lessons, other], ['roots'])).toEqual(teach(lessons, ['roots']));
  });
});

describe('the reader that is shipped', () => {
  it('is the file that was committed', () => {
    const sums = readFileSync(path.join(modelsFolder(), 'SHA256SUMS'), 'utf8');
    const sum = createHash('sha256').update(readFileSync(shippedFile)).digest('hex');
    expect(sums).toContain(`${sum}  ${TAUGHT_FILE}`);
  });

  // Fourteen narrations none of whose lines is among the lessons; measured 90 and 92 of a hundred.
  it('finds most of what is found in talk it was not taught on, and little else', () => {
    const reader = makeReader(JSON.parse(readFileSync(shippedFile, 'utf8')));
    const folder = 'tests/review/narrations';
    const counts = { right: 0, wrong: 0, missed: 0 };
    for (const name of readdirSync(folder).filter((one) => one.endsWith('.gold.json'))) {
      const { observations } = goldSchema.parse(JSON.parse(readFileSync(path.join(folder, name), 'utf8')));
      const cues = readCues(readFileSync(path.join(folder, name.replace('.gold.json', '.vtt')), 'utf8'));
      for (const { startSeconds, text } of cues) {
        const words = text
          .split(/\s+/)
          .map((one, at) => ({ text: one, startSeconds: at, endSeconds: at + 0.5, probability: null }));
        const phrases = findPhrases(words);
        const chances = reader.chances(wordsBetween(plainWords(phrases), 0, phrases.tokens.length));
        const gold = new Set<string>(
          observations.filter(({ heard }) => Math.abs(heard[0] - startSeconds) < 0.05).map(({ kind }) => kind),
        );
        for (const [kind, chance] of chances) {
          if (chance > 0.5 && gold.has(kind)) counts.right += 1;
          else if (chance > 0.5) counts.wrong += 1;
          else if (gold.has(kind)) counts.missed += 1;
        }
      }
    }
    expect(counts.right / (counts.right + counts.wrong)).toBeGreaterThan(0.85);
    expect(counts.right / (counts.right + counts.missed)).toBeGreaterThan(0.85);
  });
});

describe('where the rules and the taught reader differ', () => {
  const found = (talk: string) => {
    const { observations, unplaced } = draftSentence(talk);
    return {
      kinds: observations.filter(({ kind }) => kind !== 'pipe').map(({ kind }) => kind),
      unplaced: unplaced.map(({ why }) => why),
    };
  };

  it('what only the rules name is kept for the inspector and not listed', () => {
    const { kinds, unplaced } = found('Back then they put lead in every joint and the joints still opened up.');
    expect(kinds).toEqual([]);
    expect(unplaced).toEqual(['may name open joint, which a second reading of the talk does not find here']);
  });

  it('a denial, a doubt or a correction is left to the rules', () => {
    expect(found("There's no breaks in this section alright forty two feet offset joint.").kinds).toEqual([
      'offset-joint',
    ]);
    expect(found('Belly at 17. No, I mean a back pitch.').kinds).toEqual(['back-pitch']);
  });

  it('what only the taught reader finds is kept for the inspector', () => {
    const { kinds, unplaced } = found("It's holding soup from nine to fifteen.");
    expect(kinds).toEqual([]);
    expect(unplaced).toEqual(['may be belly, by its likeness to other talk']);
  });

  it('a statement in unknown words is named by its likeness, with its place, and flagged', () => {
    const { observations } = draftSentence('At nine I feel a little step.');
    const step = observations.find(({ kind }) => kind === 'offset-joint');
    expect(step?.at).toBe(9);
    expect(step?.review.map(({ reason }) => reason)).toContain('word-unsure');
  });

  it('bare readings of the counter are likened to nothing', () => {
    expect(found('Thirty one, thirty five, a long run of it.').kinds).toEqual([]);
  });
});
