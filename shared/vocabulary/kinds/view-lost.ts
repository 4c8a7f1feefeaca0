import type { Kind } from '../kind.ts';

export const viewLost = {
  name: 'view-lost',
  group: 'limit',
  title: 'View lost',
  plural: 'views lost',
  takes: ['to'],
  words: ['dirty lens', 'lost the view', "can't see anything", 'lens went under'],
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
