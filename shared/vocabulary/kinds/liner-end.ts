import type { Kind } from '../kind.ts';

export const linerEnd = {
  name: 'liner-end',
  group: 'fitting',
  title: 'End of liner',
  plural: 'liner ends',
  takes: [],
  words: ['liner ends', 'liner stops', 'end of the liner'],
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
