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
    meaning: '',
    next: '',
    glossary: '',
  },
} as const satisfies Kind;
