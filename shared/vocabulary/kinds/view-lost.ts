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
    meaning: 'The camera could not see here, so nothing can be said about this part.',
    next: 'Have this part looked at again after cleaning or with less water in the line.',
    glossary: 'View lost: a part where the camera could not see, for water, steam or dirt on the lens.',
  },
} as const satisfies Kind;
