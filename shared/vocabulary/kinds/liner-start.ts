import type { Kind } from '../kind.ts';

export const linerStart = {
  name: 'liner-start',
  group: 'fitting',
  title: 'Start of liner',
  plural: 'liner starts',
  takes: [],
  words: ['liner starts', 'liner begins', 'start of the liner'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'From here on the old pipe has been lined on the inside.',
    next: 'Ask the seller for the papers of the lining work.',
    glossary: 'Start of liner: where a sleeve cured inside the old pipe begins.',
  },
} as const satisfies Kind;
