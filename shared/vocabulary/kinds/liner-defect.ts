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
    meaning: 'The lining of the pipe is not smooth or not tight here, which can catch solids or let water behind it.',
    next: 'Have the company that installs liners look at it.',
    glossary: 'Liner defect: a wrinkle, lift or tear in the lining of a pipe.',
  },
} as const satisfies Kind;
