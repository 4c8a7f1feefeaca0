import type { Kind } from '../kind.ts';

export const coupling = {
  name: 'coupling',
  group: 'fitting',
  title: 'Coupling',
  plural: 'couplings',
  takes: ['position', 'clock'],
  words: ['coupling', 'rubber coupling', 'no hub band', 'band clamp', 'rubber boot', 'rubber sleeve'],
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
