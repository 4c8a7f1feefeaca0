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
    meaning: 'Loose or settled material lies in the pipe and can hold back what comes down.',
    next: 'Have the line cleaned and looked at again.',
    glossary: 'Debris: material lying in the pipe that does not belong there, such as gravel, mortar or paper.',
  },
} as const satisfies Kind;
