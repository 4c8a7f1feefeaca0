import type { Kind } from '../kind.ts';

export const breakKind = {
  name: 'break',
  group: 'defect',
  title: 'Break',
  plural: 'breaks',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['break', 'breaks', 'broken', 'busted'],
  signs: ['piece missing', 'chunk missing', 'piece gone'],
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
