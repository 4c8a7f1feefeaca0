import type { Kind } from '../kind.ts';

export const cleanout = {
  name: 'cleanout',
  group: 'fitting',
  title: 'Cleanout',
  plural: 'cleanouts',
  takes: ['position', 'clock'],
  words: ['cleanout', 'clean out', 'access riser'],
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
