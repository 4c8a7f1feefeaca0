import type { Kind } from '../kind.ts';

export const corrosion = {
  name: 'corrosion',
  group: 'defect',
  title: 'Corrosion',
  plural: 'corrosion',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: [
    'corrosion',
    'corroded',
    'rotted',
    'rusted out',
    'channeled',
    'channelled',
    'channeling',
    'eaten out',
    'eaten away',
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
