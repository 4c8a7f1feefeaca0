import type { Kind } from '../kind.ts';

export const blockage = {
  name: 'blockage',
  group: 'defect',
  title: 'Blockage',
  plural: 'blockages',
  takes: ['to', 'position', 'degree', 'percent'],
  words: ['blockage', 'blocked', 'plugged', 'stopped up', 'clog', 'clogged', 'obstruction'],
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
