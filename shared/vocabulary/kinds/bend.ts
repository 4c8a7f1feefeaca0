import type { Kind } from '../kind.ts';

export const bend = {
  name: 'bend',
  group: 'fitting',
  title: 'Bend',
  plural: 'bends',
  takes: ['position', 'clock', 'angleDeg', 'serves'],
  words: ['bend', 'elbow', 'sweep', 'ell', 'turn'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The line changes direction here.',
    next: 'Nothing to do.',
    glossary: 'Bend: a fitting that turns the line, named by its angle.',
  },
} as const satisfies Kind;
