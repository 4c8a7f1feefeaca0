import type { Kind } from '../kind.ts';

export const noAccess = {
  name: 'no-access',
  group: 'limit',
  title: 'No access',
  plural: 'openings without access',
  takes: [],
  words: ["couldn't get it open", 'rusted shut', 'no access'],
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
