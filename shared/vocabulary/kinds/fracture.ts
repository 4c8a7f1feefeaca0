import type { Kind } from '../kind.ts';

export const fracture = {
  name: 'fracture',
  group: 'defect',
  title: 'Fracture',
  plural: 'fractures',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['fracture', 'fractures', 'fractured'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The wall is split and the pieces have shifted, so the pipe has begun to lose its shape.',
    next: 'Have a licensed plumber price a repair of this length.',
    glossary: 'Fracture: a split in the pipe wall where the pieces have moved a little.',
  },
} as const satisfies Kind;
