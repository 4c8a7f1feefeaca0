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
    meaning: 'This part of the line was not seen, and nothing in this report speaks of its condition.',
    next: 'Have the rest of the line looked at before relying on this report for it.',
    glossary: 'Not reached: a part of the line that the camera did not come to.',
  },
} as const satisfies Kind;
