import type { Kind } from '../kind.ts';

export const noAccess = {
  name: 'no-access',
  group: 'limit',
  title: 'No access',
  plural: 'openings without access',
  takes: [],
  words: ["couldn't get it open", 'rusted shut', 'no access'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'An opening could not be used, so the part it leads to was not seen from there.',
    next: 'Have the opening freed or a cleanout put in, and the part looked at then.',
    glossary: 'No access: an opening that could not be used to put the camera in.',
  },
} as const satisfies Kind;
