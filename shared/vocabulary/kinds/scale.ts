import type { Kind } from '../kind.ts';

export const scale = {
  name: 'scale',
  group: 'defect',
  title: 'Scale',
  plural: 'scale',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['scale', 'scaling', 'scaled', 'tuberculation'],
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
