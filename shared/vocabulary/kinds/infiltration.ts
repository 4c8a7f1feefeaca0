import type { Kind } from '../kind.ts';

export const infiltration = {
  name: 'infiltration',
  group: 'defect',
  title: 'Infiltration',
  plural: 'infiltration',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['infiltration', 'groundwater', 'weeping', 'seeping', 'mud coming in', 'soil coming in', 'dirt coming in'],
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
