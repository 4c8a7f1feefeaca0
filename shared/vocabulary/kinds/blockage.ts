import type { Kind } from '../kind.ts';

export const blockage = {
  name: 'blockage',
  group: 'defect',
  title: 'Blockage',
  plural: 'blockages',
  takes: ['to', 'position', 'degree', 'percent'],
  words: ['blockage', 'blocked', 'plugged', 'stopped up', 'clog', 'clogged', 'obstruction'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The line is blocked or nearly so; sewage can come back into the house.',
    next: 'Use no water until a licensed plumber has cleared the line, then have it looked at again.',
    glossary: 'Blockage: a place where nothing, or hardly anything, passes.',
  },
} as const satisfies Kind;
