import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { DecisionBody } from '../../shared/schemas/decision.ts';
import type { Draft } from '../../shared/schemas/draft.ts';
import { applyDecisions } from '../../src/5-review/apply-decisions.ts';
import { acceptOwnWord, offersOfOwnWords, readOwnWords } from '../../src/5-review/own-words.ts';
import { confirmation, stamped } from './make-decisions.ts';
import { emptyFolder, makeDraft, makeObservation } from './make-inspection.ts';

/** A draft in which "why" was twice taken for a wye, and doubted. */
function homophones(sha256: string): Draft {
  return makeDraft({
    recording: { file: 'a.wav', sha256, seconds: 60 },
    observations: [20, 40].map((at, index) =>
      makeObservation({
        id: `o${index + 1}`,
        kind: 'wye',
        at,
        text: `There is a Wi at ${at}.`,
        heard: { start: at, end: at + 2, text: `There is a Wi at ${at}.` },
        respelled: [{ heard: 'Wi', taken: 'wye' }],
        review: [{ reason: 'word-unsure', about: 'kind' }],
      }),
    ),
  });
}

const confirmBoth = (draft: Draft) => stamped(['o1', 'o2'].map((id) => confirmation(draft, id)));

describe('learning', () => {
  test('offers a heard word that was confirmed twice, not once', async () => {
    const folder = await emptyFolder();
    const draft = homophones('1'.repeat(64));
    const both = confirmBoth(draft);
    expect(await offersOfOwnWords(folder, draft, both.slice(0, 1))).toEqual([]);
    expect(await offersOfOwnWords(folder, draft, both)).toEqual([{ heard: 'wi', said: 'wye', kind: 'wye' }]);
  });
  test('counts over inspections, and none twice', async () => {
    const folder = await emptyFolder();
    const [first, second] = [homophones('1'.repeat(64)), homophones('2'.repeat(64))] as const;
    for (let again = 0; again < 3; again++) {
      expect(await offersOfOwnWords(folder, first, confirmBoth(first).slice(0, 1))).toEqual([]);
    }
    expect(await offersOfOwnWords(folder, second, confirmBoth(second).slice(0, 1))).toHaveLength(1);
  });
  test('keeps what is taken in a file a person can read, and what is declined is not offered again', async () => {
    const folder = await emptyFolder();
    const draft = homophones('1'.repeat(64));
    await acceptOwnWord(folder, { heard: 'wi', said: 'wye', kind: 'wye', isAccepted: true });
    expect(await offersOfOwnWords(folder, draft, confirmBoth(draft))).toEqual([]);
    expect(await readOwnWords(folder)).toMatchObject([{ heard: 'wi', said: 'wye', kind: 'wye' }]);
    expect(await readFile(join(folder, 'own-words.json'), 'utf8')).toContain('\n   "heard": "wi"');
    const other = await emptyFolder();
    await acceptOwnWord(other, { heard: 'wi', said: 'wye', kind: 'wye', isAccepted: false });
    expect(await offersOfOwnWords(other, draft, confirmBoth(draft))).toEqual([]);
    expect(await readOwnWords(other)).toEqual([]);
  });
  test('offers a habit of speech: the phrase two added findings share', async () => {
    const folder = await emptyFolder();
    const draft = makeDraft({
      unplaced: ['Big old bathtub here at 12.', 'And another bathtub there.'].map((text, index) => ({
        heard: { start: 10 * index, end: 10 * index + 3, text },
        why: 'names no kind',
      })),
    });
    const bodies = applyDecisions(draft, []).unplaced.map(({ subject, heard }): DecisionBody => {
      const { id, confidence, review, again, ...observation } = makeObservation({ kind: 'belly', at: 12, heard });
      return { action: 'add', from: subject, observation };
    });
    expect(await offersOfOwnWords(folder, draft, stamped(bodies))).toEqual([
      { heard: 'bathtub', said: 'belly', kind: 'belly' },
    ]);
    expect(await offersOfOwnWords(folder, draft, stamped(bodies.slice(0, 1)))).toEqual([]);
  });
  test('a damaged file of words is refused with a sentence and left alone', async () => {
    const folder = await emptyFolder();
    await writeFile(join(folder, 'own-words.json'), '{"schema":"lineword/own-words@1","words":[{"heard":1}]}');
    await expect(readOwnWords(folder)).rejects.toThrow(/own-words\.json cannot be used .*correct it, or move it away/);
  });
});
