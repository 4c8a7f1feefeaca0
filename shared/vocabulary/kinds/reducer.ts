import type { Kind } from '../kind.ts';

export const reducer = {
  name: 'reducer',
  group: 'fitting',
  title: 'Reducer',
  plural: 'reducers',
  takes: ['diameterIn'],
  words: ['reducer', 'reducing coupling', 'bushing', 'increaser'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The pipe changes size here.',
    next: 'Nothing to do.',
    glossary: 'Reducer: a fitting that joins a larger pipe to a smaller one.',
  },
} as const satisfies Kind;
