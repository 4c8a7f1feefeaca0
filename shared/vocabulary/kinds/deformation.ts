import type { Kind } from '../kind.ts';

export const deformation = {
  name: 'deformation',
  group: 'defect',
  title: 'Deformation',
  plural: 'deformations',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['deformed', 'deformation', 'out of round', 'egged', 'oval', 'squashed', 'flattened', 'egg shaped'],
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
