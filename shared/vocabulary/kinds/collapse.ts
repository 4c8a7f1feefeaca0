import type { Kind } from '../kind.ts';

export const collapse = {
  name: 'collapse',
  group: 'defect',
  title: 'Collapse',
  plural: 'collapses',
  takes: ['to', 'position', 'clock', 'percent'],
  words: ['collapse', 'collapses', 'collapsed', 'caved in', 'cave in'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The pipe has lost its shape and no longer carries sewage as it should.',
    next: 'Have a licensed plumber replace this length without delay, and use as little water as possible until then.',
    glossary: 'Collapse: a place where the pipe has caved in.',
  },
} as const satisfies Kind;
