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
    meaning: 'Two pieces of pipe are joined by a sleeve here, as is usual where a piece was put in later.',
    next: 'Nothing to do.',
    glossary: 'Coupling: a sleeve, often rubber with metal bands, that joins two pipe ends.',
  },
} as const satisfies Kind;
