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
    meaning: 'There is an empty space in the ground outside the pipe, where soil has been washed away.',
    next: 'Keep loads off the ground above it and have a licensed contractor open and repair it soon.',
    glossary: 'Void: an empty space in the soil outside the pipe.',
  },
} as const satisfies Kind;
