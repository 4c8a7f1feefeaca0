import type { Kind } from '../kind.ts';

export const vent = {
  name: 'vent',
  group: 'fitting',
  title: 'Vent',
  plural: 'vents',
  takes: ['position', 'clock', 'serves'],
  words: ['vent', 'vent pipe', 'vent stack'],
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
