import type { Kind } from '../kind.ts';

export const voidKind = {
  name: 'void',
  group: 'defect',
  title: 'Void',
  plural: 'voids',
  takes: ['to', 'position', 'clock', 'inches'],
  words: ['void', 'voids', 'empty space'],
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
