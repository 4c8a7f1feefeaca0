import type { Kind } from '../kind.ts';

export const cleanout = {
  name: 'cleanout',
  group: 'fitting',
  title: 'Cleanout',
  plural: 'cleanouts',
  takes: ['position', 'clock'],
  role: 'opening',
  words: ['cleanout', 'cleanout riser', 'cleanout tee', 'cleanout wye', 'cleanout cap', 'access riser', 'riser', 'cleanout plug'],
  notWords: ['cleanout price', 'riser clamp', 'cleanout side'],
  misheard: [{ heard: 'clean up|cleanup riser', said: 'cleanout', needs: 'distance' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'This is an opening through which the line can be cleaned and looked at again.',
    next: 'Keep it capped, uncovered and easy to reach.',
    glossary: 'Cleanout: a capped opening in a drain line, made for cleaning it and for putting a camera in.',
  },
} as const satisfies Kind;
