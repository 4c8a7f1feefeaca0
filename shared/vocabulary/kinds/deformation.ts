import type { Kind } from '../kind.ts';

export const deformation = {
  name: 'deformation',
  group: 'defect',
  title: 'Deformation',
  plural: 'deformations',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['deformed', 'deformation', 'out of round', 'egged', 'oval', 'squashed', 'flattened', 'egg shaped'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The pipe is no longer round, which narrows it and shows that it is under more load than it can carry.',
    next: 'Have a licensed plumber measure how far it is out of round.',
    glossary: 'Deformation: a pipe pressed out of its round shape; also called egg-shaped or oval.',
  },
} as const satisfies Kind;
