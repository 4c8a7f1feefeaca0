import type { Kind } from '../kind.ts';

export const notReached = {
  name: 'not-reached',
  group: 'limit',
  title: 'Not reached',
  plural: 'parts not reached',
  takes: [],
  words: ["didn't reach the main", "couldn't reach the main", 'never reached'],
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
