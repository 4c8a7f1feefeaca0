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
    meaning: '',
    next: '',
    glossary: '',
  },
} as const satisfies Kind;
