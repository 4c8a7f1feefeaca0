import type { Kind } from '../kind.ts';

export const vent = {
  name: 'vent',
  group: 'fitting',
  title: 'Vent',
  plural: 'vents',
  takes: ['position'],
  role: 'opening',
  words: ['vent', 'vent pipe', 'vent stack', 'vent connection', 'vent line', 'vent tie in', 'dry vent', 'wet vent', 're vent', 'revent'],
  notWords: ['vent your', 'to vent', 'roof vent', 'dryer vent', 'vent the', 'through the vent', 'down the vent', 'in the vent', 'from the vent', 'main vent', 'vent cap', 'plumbing vent', 'the vent over', 'the big vent', 'the vent on the roof', 'off the vent', 'up the vent'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'This pipe lets air into the line so that the traps under the fixtures keep their water.',
    next: 'Nothing to do.',
    glossary: 'Vent: a pipe to the open air, usually through the roof, that keeps drains from being sucked dry.',
  },
} as const satisfies Kind;
