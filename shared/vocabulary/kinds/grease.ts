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
    meaning: '',
    next: '',
    glossary: '',
  },
} as const satisfies Kind;
