import type { Kind } from '../kind.ts';

export const linerStart = {
  name: 'liner-start',
  group: 'fitting',
  title: 'Start of liner',
  plural: 'liner starts',
  takes: [],
  words: ['liner starts', 'liner begins', 'start of the liner'],
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
