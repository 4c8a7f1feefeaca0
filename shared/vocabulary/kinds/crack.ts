import type { Kind } from '../kind.ts';

export const crack = {
  name: 'crack',
  group: 'defect',
  title: 'Crack',
  plural: 'cracks',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['crack', 'cracks', 'cracked', 'cracking'],
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
