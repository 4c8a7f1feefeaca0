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
    meaning: 'The pipe is broken here; sewage can leave it and soil can enter.',
    next: 'Have a licensed plumber repair or replace this length.',
    glossary: 'Break: a place where the pipe wall is broken through, often with a piece missing.',
  },
} as const satisfies Kind;
