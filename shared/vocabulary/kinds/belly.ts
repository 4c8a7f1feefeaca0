import type { Kind } from '../kind.ts';

export const belly = {
  name: 'belly',
  group: 'defect',
  title: 'Belly',
  plural: 'bellies',
  takes: ['to', 'degree', 'percent', 'inches'],
  words: ['belly', 'bellies', 'sag', 'dip', 'low spot', 'standing water', 'ponding'],
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
