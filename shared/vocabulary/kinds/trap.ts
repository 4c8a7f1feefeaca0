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
    meaning: 'This bend holds water on purpose, to keep sewer gas out of the building.',
    next: 'Nothing to do.',
    glossary: 'Trap: a U-shaped bend that holds water and so keeps sewer gas from coming back.',
  },
} as const satisfies Kind;
