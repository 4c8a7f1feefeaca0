import type { Kind } from '../kind.ts';

export const grease = {
  name: 'grease',
  group: 'defect',
  title: 'Grease',
  plural: 'grease',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['grease', 'greasy', 'fat', 'soap scum'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Grease has hardened on the wall, which narrows the pipe and catches solids.',
    next: 'Have the line cleaned, and keep fat and oil out of the drains.',
    glossary: 'Grease: cooled kitchen fat that sticks to the wall of the pipe.',
  },
} as const satisfies Kind;
