import type { Kind } from '../kind.ts';

export const vent = {
  name: 'vent',
  group: 'fitting',
  title: 'Vent',
  plural: 'vents',
  takes: ['position', 'clock', 'serves'],
  words: ['vent', 'vent pipe', 'vent stack'],
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
