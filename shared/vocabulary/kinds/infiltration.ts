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
    meaning: 'Water or soil from outside comes into the pipe, so the wall or a joint is not tight.',
    next: 'Have a licensed plumber find and close the place where it comes in.',
    glossary: 'Infiltration: ground water or soil coming into the pipe from outside.',
  },
} as const satisfies Kind;
