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
    meaning: 'This valve closes by itself when sewage comes back from the main, and it works only if it is kept clean.',
    next: 'Have the valve opened, cleaned and tried once a year.',
    glossary: 'Backwater valve: a flap in the line that lets sewage out and closes when it comes back.',
  },
} as const satisfies Kind;
