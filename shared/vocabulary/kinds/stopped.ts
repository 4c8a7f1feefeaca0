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
    meaning: 'The camera could not go farther, so what lies beyond was not seen.',
    next: 'Have the rest looked at from another opening, or after the hindrance is removed.',
    glossary: 'Camera stopped: the place where the camera could not be pushed farther.',
  },
} as const satisfies Kind;
