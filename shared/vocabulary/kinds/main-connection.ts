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
    meaning: 'The line meets the public main here, so it was seen to its lower end.',
    next: 'Nothing to do.',
    glossary: 'Main: the public sewer, usually under the street, into which the lateral runs.',
  },
} as const satisfies Kind;
