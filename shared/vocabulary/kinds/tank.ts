import type { Kind } from '../kind.ts';

export const tank = {
  name: 'tank',
  group: 'fitting',
  title: 'Septic tank',
  plural: 'septic tanks',
  takes: [],
  words: ['septic tank', 'tank'],
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
