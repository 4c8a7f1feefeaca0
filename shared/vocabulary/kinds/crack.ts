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
    meaning: 'The wall is split but the pieces have not moved; water can pass out and roots can pass in.',
    next: 'Watch the place, and have it repaired if it opens or roots appear.',
    glossary: 'Crack: a split in the pipe wall with the pieces still in place.',
  },
} as const satisfies Kind;
