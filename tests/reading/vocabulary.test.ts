/** The vocabulary against itself: what it lists must be found, and in the sense it is listed for. */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../shared/vocabulary/kind.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { type Material, materials } from '../../shared/vocabulary/materials.ts';
import { services } from '../../shared/vocabulary/services.ts';
import { expandPattern } from '../../src/3-phrases/lexicon/pattern.ts';
import { findThings } from '../../src/3-phrases/thing/find-things.ts';
import { cutTokens } from '../../src/3-phrases/token/token.ts';
import { wordsOf } from './read-sentence.ts';

interface Listed {
  readonly name: string;
  readonly list: string;
  readonly pattern: string;
}

const listed: Listed[] = [
  ...(kinds as readonly Kind[]).flatMap((kind) => [
    ...kind.words.map((pattern) => ({ name: kind.name, list: 'words', pattern })),
    ...(kind.signs ?? []).map((pattern) => ({ name: kind.name, list: 'signs', pattern })),
    ...(kind.weakWords ?? []).map((pattern) => ({ name: kind.name, list: 'weakWords', pattern })),
  ]),
  ...(materials as readonly Material[]).flatMap((material) =>
    material.words.map((pattern) => ({ name: material.name as string, list: 'material words', pattern })),
  ),
  ...services.flatMap((service) =>
    service.words.map((pattern) => ({ name: service.name as string, list: 'service words', pattern })),
  ),
];

/** Some patterns stand for millions of forms: of those, a sample from all over. */
const MOST_FORMS = 300;

/** The forms of a pattern as they would be printed; those with a gap or a comma need talk round them and are left out. */
const printedForms = (pattern: string): string[] =>
  expandPattern(pattern.replaceAll('<service>', 'kitchen'), MOST_FORMS)
    .filter((words) => !words.some((word) => /^[*#,]$/.test(word)))
    // It stands alone, so both edges of a sentence are there.
    .map((words) => words.filter((word) => !/^[\^$]$/.test(word)))
    .map((words) => words.join(' ').replace(/ '(s|re|m|ve|ll|d)\b/g, "'$1"))
    .map((form) => form.replace(/^'(?=[sd])/, "it'").replace(/^'ve/, "we've"));

const namesFound = (text: string): string[] =>
  findThings(cutTokens(wordsOf(text).words), (need) => need === 'nothing').map((thing) =>
    thing.family === 'thing' ? thing.kind : thing.family === 'material' ? thing.material : thing.service,
  );

describe('the vocabulary', () => {
  // Forms that another entry takes by right where they stand alone.
  const taken: readonly string[] = [
    'stopped words: jammed in',
    'stopped signs: jammed',
    'main-connection signs: tied into the sewer',
    "collapse signs: pipe's come down",
    "collapse signs: line's come down",
    'collapse signs: pipe is come down',
    'collapse signs: line is come down',
    'foreign-object weakWords: broken tile',
    'no-access signs: not happening',
    "stopped signs: won't move",
    "stopped signs: wouldn't move",
    "stopped signs: wouldn't budge",
    "stopped signs: won't turn",
    "stopped signs: wouldn't turn",
    "open-joint signs: pipe's been slid out",
    ...['do not line up', "don't line up", 'do not meet up', "doesn't meet up", 'no longer match up'].map(
      (rest) => `offset-joint signs: two sides ${rest}`,
    ),
    'offset-joint signs: two sides do not match up',
    "offset-joint signs: two sides doesn't match",
  ];
  // Forms that are lost to another entry as yet, each a phrase that is really said.
  const notYet: readonly string[] = ["no-access signs: won't budge"];
  /** A kind may take back some of the forms its own patterns stand for. */
  const takenBack = new Map(
    (kinds as readonly Kind[]).map((kind) => [kind.name, new Set((kind.notWords ?? []).flatMap(printedForms))]),
  );
  const lost = listed.flatMap(({ name, list, pattern }) =>
    printedForms(pattern)
      .filter((form) => !takenBack.get(name)?.has(form) && !namesFound(form).includes(name))
      .map((form) => `${name} ${list}: ${form}`),
  );

  it('finds every form it lists, standing alone, in the sense it is listed for', () => {
    expect(lost.filter((entry) => !taken.includes(entry) && !notYet.includes(entry))).toEqual([]);
  });

  it('lists no more exceptions than it needs', () => {
    expect([...taken, ...notYet].filter((entry) => !lost.includes(entry))).toEqual([]);
  });

  it('says each word of a kind once', () => {
    const twice = (kinds as readonly Kind[]).flatMap((kind) => {
      const all = [...kind.words, ...(kind.signs ?? []), ...(kind.weakWords ?? [])];
      return all
        .filter((pattern, index) => all.indexOf(pattern) !== index)
        .map((pattern) => `${kind.name}: ${pattern}`);
    });
    expect(twice).toEqual([]);
  });

  it('spells misheard words as short stretches, so that no list of phrases is read as one long phrase', () => {
    // In the notation `a b|c d` is three words ("a", "b" or "c", "d"); alternatives of several words are entries of their own.
    const long = [
      ...(kinds as readonly Kind[]).flatMap(({ name, misheard }) =>
        (misheard ?? []).map(({ heard }) => ({ name, heard })),
      ),
      ...(materials as readonly Material[]).flatMap(({ name, misheard }) =>
        (misheard ?? []).map(({ heard }) => ({ name, heard })),
      ),
    ].filter(({ heard }) => heard.includes('|') && expandPattern(heard, MOST_FORMS).some((words) => words.length > 3));
    expect(long.map(({ name, heard }) => `${name}: ${heard}`)).toEqual([]);
  });
});
