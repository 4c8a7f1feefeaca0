import type { Kind } from '../kind.ts';

export const backwaterValve = {
  name: 'backwater-valve',
  group: 'fitting',
  title: 'Backwater valve',
  plural: 'backwater valves',
  takes: ['position'],
  words: ['backwater valve', 'backflow valve', 'check valve', 'flapper valve', 'flap valve', 'backwater'],
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
