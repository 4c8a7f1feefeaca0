import type { Kind } from '../kind.ts';

export const hole = {
  name: 'hole',
  group: 'defect',
  title: 'Hole',
  plural: 'holes',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['hole', 'holes'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The wall is open to the ground here; sewage can leave the pipe and soil can enter.',
    next: 'Have a licensed plumber repair or replace this length.',
    glossary: 'Hole: an opening through the pipe wall.',
  },
} as const satisfies Kind;
