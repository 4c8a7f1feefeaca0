/** What is made of the close reader's word: a stand-in says what it finds, so that each decision shows by itself. */
import { describe, expect, it } from 'vitest';
import { findPhrases } from '../../src/3-phrases/find-phrases.ts';
import type { FieldChances, Likely } from '../../src/4-observations/close/heads.ts';
import type { CloseReading } from '../../src/4-observations/close/read-closely.ts';
import { readWords, writeDraft } from '../../src/4-observations/draft-words.ts';
import { OPENING, phrasesIn, wordsOf } from './read-sentence.ts';

const SURE = 0.999;
const kinds = ['pipe', 'roots', 'bend', 'wye', 'offset-joint'];

type Opinion = Readonly<
  Record<string, { chance: number; fields?: Readonly<Record<string, Likely['value']>>; sure?: number }>
>;

/** Holds one opinion of all that is said after the opening; of fields it has no word on it holds that they were not told. */
const standIn =
  (opinion: Opinion) =>
  (opening: number): CloseReading => ({
    kinds,
    chance: (kind, from) => (from < opening ? Number(kind === 'pipe') * SURE : (opinion[kind]?.chance ?? 0.001)),
    fields(kind, from): FieldChances {
      const { fields = {}, sure = SURE } = (from < opening ? openingOpinion : opinion)[kind] ?? {};
      return new Map(
        fieldNames.map((name) => {
          const told = fields[name];
          return [name, told === undefined ? [{ value: null, chance: SURE }] : [{ value: told, chance: sure }]];
        }),
      );
    },
  });
const openingOpinion: Opinion = { pipe: { chance: SURE, fields: { at: 0, material: 'clay', diameterIn: 4 } } };
const fieldNames = [
  'status',
  'place',
  'degree',
  'at',
  'to',
  'percent',
  'inches',
  'serves',
  'angleDeg',
  'diameterIn',
  'material',
];

function draftOf(talk: string, makeClose: (opening: number) => CloseReading) {
  const words = wordsOf(`${OPENING} ${talk}`);
  const close = makeClose(phrasesIn(OPENING).tokens.length);
  const draft = writeDraft(readWords(words, findPhrases(words.words), close), words);
  return { ...draft, observations: draft.observations.filter(({ kind }) => kind !== 'pipe') };
}

describe('the close reader', () => {
  it('has what only it finds listed at the place it points at, flagged', () => {
    const close = standIn({ wye: { chance: SURE, fields: { at: 14, place: '9' } } });
    const { observations } = draftOf('At fourteen on the left the parade went by.', close);
    expect(observations).toMatchObject([
      { kind: 'wye', at: 14, position: 'left', review: [{ reason: 'readers-disagree', about: 'kind' }] },
    ]);
  });

  it('has the words kept where it is less sure, and nothing listed', () => {
    const close = standIn({ wye: { chance: 0.55, fields: { at: 14 } } });
    const { observations, unplaced } = draftOf('At fourteen on the left the parade went by.', close);
    expect(observations).toEqual([]);
    expect(unplaced.map(({ why }) => why)).toContain(
      'may tell of wye, which only a second reading of the talk finds here',
    );
  });

  it('has the distance it is sure of taken, with both to choose from', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: 30 } } });
    const [roots] = draftOf('At fourteen there are roots. Thirty.', close).observations;
    expect(roots).toMatchObject({ kind: 'roots', at: 30 });
    const flag = roots!.review.find(({ about }) => about === 'at');
    expect(flag?.offers?.map(({ value }) => value)).toEqual([30, 14]);
  });

  it('leaves the distance where it is less sure, and asks', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: 30, place: '9' }, sure: 0.9 } });
    const [roots] = draftOf('At fourteen feet we have roots on the left.', close).observations;
    expect(roots).toMatchObject({ at: 14 });
    expect(roots!.review).toMatchObject([{ reason: 'readers-disagree', about: 'at' }]);
  });

  it('keeps off the list what it all but denies, and its words', () => {
    const close = standIn({ roots: { chance: 0.001 } });
    const { observations, unplaced } = draftOf('At fourteen there are roots.', close);
    expect(observations).toEqual([]);
    expect(unplaced.map(({ why }) => why)).toEqual([
      'may name roots at 14 ft, which a second reading of the talk does not find here',
    ]);
  });

  it('says nothing where it agrees', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: 14 } } });
    const [roots] = draftOf('At fourteen there are roots.', close).observations;
    expect(roots).toMatchObject({ kind: 'roots', at: 14, review: [] });
    expect(roots!.confidence).toBeGreaterThan(0.9);
  });

  it('fills a field that the rules left empty, flagged', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: 14, degree: 'heavy' } } });
    const [roots] = draftOf('At fourteen there are roots.', close).observations;
    expect(roots).toMatchObject({ degree: 'heavy', review: [{ reason: 'value-odd', about: 'degree' }] });
  });

  it('lifts no flag that rests on what was heard or left unsaid', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: null } } });
    const [roots] = draftOf('There are roots.', close).observations;
    expect(roots!.review.map(({ reason }) => reason)).toContain('distance-unsure');
  });
});
