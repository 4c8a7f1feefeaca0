import type { Kind } from '../kind.ts';

export const tank = {
  name: 'tank',
  group: 'fitting',
  title: 'Septic tank',
  plural: 'septic tanks',
  takes: [],
  words: ['septic tank', 'tank'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The line ends in a septic tank, not in a public sewer.',
    next: 'Have the tank and its field looked at by someone who does that work; they are no part of this inspection.',
    glossary: 'Septic tank: a buried tank that settles and partly treats the sewage of one property.',
  },
} as const satisfies Kind;
