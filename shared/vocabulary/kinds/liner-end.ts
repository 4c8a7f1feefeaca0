import type { Kind } from '../kind.ts';

export const linerEnd = {
  name: 'liner-end',
  group: 'fitting',
  title: 'End of liner',
  plural: 'liner ends',
  takes: [],
  words: ['liner ends', 'liner stops', 'end of the liner'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The lining of the old pipe ends here; what lies beyond is the older pipe or another one.',
    next: 'Nothing to do beyond what is noted at the edge.',
    glossary: 'End of liner: where a sleeve cured inside the old pipe stops.',
  },
} as const satisfies Kind;
