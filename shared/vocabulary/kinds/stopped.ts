import type { Kind } from '../kind.ts';

export const stopped = {
  name: 'stopped',
  group: 'limit',
  title: 'Camera stopped',
  plural: 'camera stops',
  takes: [],
  words: ["can't get past", "won't go past", 'stuck', 'stopped'],
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
