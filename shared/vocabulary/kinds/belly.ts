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
    meaning: 'Part of the line lies lower than the pipe after it and holds water, where solids can settle.',
    next: 'Watch the place, and have the line cleaned if it runs slowly.',
    glossary: 'Belly: a low place in the line that holds water when nothing is running; also called a sag or a dip.',
  },
} as const satisfies Kind;
