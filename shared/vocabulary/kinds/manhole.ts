import type { Kind } from '../kind.ts';

export const manhole = {
  name: 'manhole',
  group: 'fitting',
  title: 'Manhole',
  plural: 'manholes',
  takes: [],
  words: ['manhole', 'man hole'],
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
