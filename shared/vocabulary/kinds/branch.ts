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
    meaning: '',
    next: '',
    glossary: '',
  },
} as const satisfies Kind;
