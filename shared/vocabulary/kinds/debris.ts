import type { Kind } from '../kind.ts';

export const debris = {
  name: 'debris',
  group: 'defect',
  title: 'Debris',
  plural: 'debris',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: [
    'debris',
    'gravel',
    'mortar',
    'grout',
    'paper',
    'toilet paper',
    'lint',
    'sand',
    'silt',
    'sediment',
    'wipes',
    'sludge',
  ],
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
