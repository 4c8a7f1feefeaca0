import type { Kind } from '../kind.ts';

export const tee = {
  name: 'tee',
  group: 'fitting',
  title: 'Tee',
  plural: 'tees',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  words: ['tee', 't fitting', 'sanitary tee', 'santee'],
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
