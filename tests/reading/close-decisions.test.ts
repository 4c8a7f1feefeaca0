/** What is made of the close reader's word: a stand-in says what it finds, so that each decision shows by itself. */
import { describe, expect, it } from 'vitest';
import { findPhrases } from '../../src/3-phrases/find-phrases.ts';
import { COUNTED, ELSEWHERE, type FieldChances, type Likely } from '../../src/4-observations/close/heads.ts';
import type { CloseReading } from '../../src/4-observations/close/read-closely.ts';
import { readWords, writeDraft } from '../../src/4-observations/draft-words.ts';
import { OPENING, phrasesIn, wordsOf } from './read-sentence.ts';

const SURE = 0.999;
const kinds = ['pipe', 'roots', 'bend', 'wye', 'offset-joint'];

type Opinion = Readonly<
  Record<string, { chance: number; fields?: Readonly<Record<string, Likely['value']>>; sure?: number }>
>;

/**
 * Holds one opinion of all that is said after the opening; of fields it has no word on it holds that they were not told. A run begins
 * with the opening, and again with the word that stands so many words after it.
 */
const standIn =
  (opinion: Opinion, startsAfter: number | null = null) =>
  (opening: number): CloseReading => ({
    kinds,
    startChance: (from, to) =>
      from < opening || (startsAfter !== null && from <= opening + startsAfter && opening + startsAfter < to)
        ? SURE
        : 1 - SURE,
    startFields: () => new Map([['direction', [{ value: 'upstream', chance: SURE }]]]),
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
  COUNTED,
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

  it('has listed what was only asked and it is sure of, flagged', () => {
    const close = standIn({ roots: { chance: 0.95, fields: { at: 14 } } });
    const { observations } = draftOf('Fourteen, are those roots up there? Looks hairy to me.', close);
    expect(observations.map(({ kind, at }) => `${kind} ${at}`)).toEqual(['roots 14']);
    expect(observations[0]!.review).not.toEqual([]);
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

  it('has the distance taken that it counts from two others', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: ELSEWHERE, [COUNTED]: 21 } } });
    const talk = 'The parade went by fourteen. We have roots on the left, seven behind that parade.';
    const [roots] = draftOf(talk, close).observations;
    expect(roots).toMatchObject({ kind: 'roots', at: 21 });
    expect(roots!.review.map(({ about }) => about)).toContain('at');
  });

  it('leaves the distance where it is less sure, and asks', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: 30, place: '9' }, sure: 0.9 } });
    const [roots] = draftOf('At fourteen feet we have roots on the left.', close).observations;
    expect(roots).toMatchObject({ at: 14 });
    expect(roots!.review).toMatchObject([{ reason: 'readers-disagree', about: 'at' }]);
  });

  it('keeps off the list what it all but denies, and its words', () => {
    const close = standIn({ roots: { chance: 0.01 } });
    const { observations, unplaced } = draftOf('At fourteen there are roots.', close);
    expect(observations).toEqual([]);
    expect(unplaced.map(({ why }) => why)).toEqual([
      'may name roots at 14 ft, which a second reading of the talk does not find here',
    ]);
  });

  it('sets aside what it is as sure of as can be that it tells of nothing', () => {
    const close = standIn({ roots: { chance: 0.0001 } });
    const { observations, unplaced, setAside } = draftOf('At fourteen there are roots.', close);
    expect(observations).toEqual([]);
    expect(unplaced).toEqual([]);
    expect(setAside.map(({ why, heard }) => [why, heard.text])).toContainEqual([
      'names a thing and tells of none',
      'At fourteen there are roots.',
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

  it('begins a run that only it is sure of, the way it holds the camera goes', () => {
    const talk = 'At forty is the main. Come along, kitty. At three there are roots.';
    const startsAfter = phrasesIn('At forty is the main.').tokens.length;
    const opinion = {
      'main-connection': { chance: SURE, fields: { at: 40 } },
      roots: { chance: SURE, fields: { at: 3 } },
    };
    expect(draftOf(talk, standIn(opinion)).runs).toHaveLength(1);
    const { runs, observations } = draftOf(talk, standIn(opinion, startsAfter));
    expect(runs).toMatchObject([{ direction: 'downstream' }, { direction: 'upstream' }]);
    expect(observations.find(({ kind }) => kind === 'roots')).toMatchObject({ run: 2, at: 3 });
  });

  it('has a run begin that nobody announced where it finds a thing and holds that the start is past', () => {
    const words = wordsOf('Nice dog you have. Well would you look, roots on the left.');
    const runsWith = (close: CloseReading | null) =>
      writeDraft(readWords(words, findPhrases(words.words), close), words).observations.map(({ run, kind }) => [
        run,
        kind,
      ]);
    const close = standIn({ roots: { chance: SURE } })(0);
    expect(runsWith({ ...close, startChance: () => SURE })).toEqual([]);
    expect(runsWith(close)).toEqual([[1, 'roots']]);
  });

  it('lets a run end at what ends it, though only it finds that', () => {
    const close = standIn({ 'main-connection': { chance: SURE, fields: { at: 40 } } });
    const { runs } = draftOf('Forty, and the parade goes by.', close);
    expect(runs).toMatchObject([{ end: { at: 40, reason: 'main' } }]);
  });

  it('lifts no flag that rests on what was heard or left unsaid', () => {
    const close = standIn({ roots: { chance: SURE, fields: { at: null } } });
    const [roots] = draftOf('There are roots.', close).observations;
    expect(roots!.review.map(({ reason }) => reason)).toContain('distance-unsure');
  });
});
