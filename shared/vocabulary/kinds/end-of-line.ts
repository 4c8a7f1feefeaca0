import type { Kind } from '../kind.ts';

export const endOfLine = {
  name: 'end-of-line',
  group: 'fitting',
  title: 'End of the line',
  plural: 'ends of the line',
  takes: ['serves'],
  words: ['end of the line', 'end of line'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'This is as far up the line as the camera can be pushed.',
    next: 'Nothing to do.',
    glossary: 'End of the line: the upper end, beyond which a camera cannot go.',
  },
} as const satisfies Kind;
