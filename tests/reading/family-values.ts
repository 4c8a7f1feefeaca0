/** What each family of phrases finds in a text, in the form its examples are written in. */
import { isDeepStrictEqual } from 'node:util';
import { type PhraseOf, phrasesOf } from '../../src/3-phrases/phrase.ts';
import { phrasesIn } from './read-sentence.ts';

const ofFamily = <Family extends Parameters<typeof phrasesOf>[1]>(text: string, family: Family): PhraseOf<Family>[] =>
  phrasesOf(phrasesIn(text).phrases, family);

const unique = <Value>(values: readonly Value[]): Value[] => [...new Set(values)];

/** By the name of the folder. */
export const familyValues: Readonly<Record<string, (text: string) => unknown[]>> = {
  number: (text) => phrasesIn(text).numbers.map((number) => number.value),
  distance: (text) => [
    ...ofFamily(text, 'distance').map(({ distance }) => ({
      feet: distance.feet,
      ...(distance.toFeet === null ? {} : { toFeet: distance.toFeet }),
      ...(distance.isEnd ? { isEnd: true } : {}),
    })),
    ...ofFamily(text, 'relative').map(({ relative }) => ({ further: relative.feet, shape: relative.shape })),
  ],
  clock: (text) => ofFamily(text, 'clock').map(({ hour, toHour }) => ({ hour, toHour })),
  size: (text) => [
    ...ofFamily(text, 'inches').map(({ inches }) => ({ inches })),
    ...ofFamily(text, 'diameter').map(({ inches }) => ({ diameterIn: inches })),
  ],
  share: (text) => ofFamily(text, 'share').map(({ percent }) => percent),
  angle: (text) =>
    ofFamily(text, 'angle')
      .map(({ degrees, count }) => ({ degrees, count }))
      .filter((value, index, all) => all.findIndex((other) => isDeepStrictEqual(other, value)) === index),
  position: (text) => unique(ofFamily(text, 'position').map(({ position }) => position)),
  degree: (text) => unique(ofFamily(text, 'degree').map(({ degree }) => degree)),
  camera: (text) =>
    unique([
      ...ofFamily(text, 'camera').map(({ cue }) => cue),
      ...ofFamily(text, 'heading').map(({ direction }) => direction),
    ]),
  count: (text) => [
    ...ofFamily(text, 'count').map(({ what }) => what),
    ...ofFamily(text, 'length').map(() => 'length'),
  ],
  material: (text) => unique(ofFamily(text, 'material').map(({ material }) => material)),
  service: (text) => unique(ofFamily(text, 'service').map(({ service }) => service)),
};
