import type { Kind } from '../kind.ts';

export const branch = {
  name: 'branch',
  group: 'fitting',
  title: 'Branch',
  plural: 'branches',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  words: ['branch', 'branch line', 'tie in', 'side line', 'lateral coming in'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Another drain joins the line here.',
    next: 'Nothing to do.',
    glossary: 'Branch: a smaller drain that joins the line being looked at.',
  },
} as const satisfies Kind;
