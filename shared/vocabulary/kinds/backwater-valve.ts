import type { Kind } from '../kind.ts';

export const backwaterValve = {
  name: 'backwater-valve',
  group: 'fitting',
  title: 'Backwater valve',
  plural: 'backwater valves',
  takes: ['position'],
  words: ['backwater valve', 'backwater', 'backwater preventer', 'backflow valve', 'backflow preventer', 'backflow', 'check valve', 'flapper valve', 'flap valve', 'sewage check valve'],
  misheard: [{ heard: 'back water belt|bell|belly', said: 'backwater valve', needs: 'nothing' }, { heard: 'backwater belt|bell|belly|value|ball|vow', said: 'backwater valve', needs: 'nothing' }],
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
