import type { Kind } from '../kind.ts';

export const linerDefect = {
  name: 'liner-defect',
  group: 'defect',
  title: 'Liner defect',
  plural: 'liner defects',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['wrinkle', 'wrinkled', 'wrinkles'],
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
