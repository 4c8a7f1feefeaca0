import type { Kind } from '../kind.ts';

export const hole = {
  name: 'hole',
  group: 'defect',
  title: 'Hole',
  plural: 'holes',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['hole', 'holes'],
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
