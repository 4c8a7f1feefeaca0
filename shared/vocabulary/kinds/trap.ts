import type { Kind } from '../kind.ts';

export const trap = {
  name: 'trap',
  group: 'fitting',
  title: 'Trap',
  plural: 'traps',
  takes: ['position'],
  words: ['trap', 'house trap', 'running trap', 'p trap'],
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
