import type { Kind } from '../kind.ts';

export const mainConnection = {
  name: 'main-connection',
  group: 'fitting',
  title: 'Connection to the public main',
  plural: 'connections to the public main',
  takes: ['position', 'clock'],
  words: ['city main', 'public sewer', 'city sewer', 'the main', 'main sewer', 'main line'],
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
