import type { Kind } from '../kind.ts';

export const pipe = {
  name: 'pipe',
  group: 'fitting',
  title: 'Pipe',
  plural: 'pipe',
  takes: ['to', 'material', 'diameterIn'],
  words: [],
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
