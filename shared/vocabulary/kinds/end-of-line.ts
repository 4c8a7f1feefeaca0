import type { Kind } from '../kind.ts';

export const endOfLine = {
  name: 'end-of-line',
  group: 'fitting',
  title: 'End of the line',
  plural: 'ends of the line',
  takes: ['serves'],
  words: ['end of the line', 'end of line'],
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
