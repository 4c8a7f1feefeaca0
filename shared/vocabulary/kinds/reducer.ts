import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const reducer = {
  name: 'reducer',
  group: 'fitting',
  title: 'Reducer',
  plural: 'reducers',
  takes: [],
  words: [
    'reducer',
    'reducing coupling',
    'reducing fitting',
    'bell reducer',
    'increaser',
    'bushing',
    'reduction',
    'reducing bushing',
  ],
  signs: spoken`
    reduces to|down; reduces from; reduced to; necks down; chokes down to; size change; change in size;
    change of size; size transition;
  `,
  misheard: [{ heard: 'red_user|re_ducer|reduce_her|producer|seducer', said: 'reducer', needs: 'nothing' }],
  examples: {
    says: [
      { text: "There's a reducer at twenty feet.", gives: { at: 20 } },
      { text: 'At thirty three it necks down.', gives: { at: 33 } },
      { text: 'Forty seven and a half, reducing fitting.', gives: { at: 47.5 } },
    ],
    unsure: [{ text: 'Maybe a reducer at fifteen.', gives: { at: 15, status: 'suspected' }, flag: 'suspected' }],
    never: [
      'Somebody always puts the reducer in upside down.',
      'No reducer that I can see.',
      "I'd reduce the price if I were them.",
    ],
    notYet: [{ text: "There's a red user at thirty feet.", gives: { at: 30 }, flag: 'word-unsure' }],
  },
  report: {
    meaning: 'The pipe changes size here.',
    next: 'Nothing to do.',
    glossary: 'Reducer: a fitting that joins a larger pipe to a smaller one.',
  },
} as const satisfies Kind;
