import type { Kind } from '../kind.ts';

export const scale = {
  name: 'scale',
  group: 'defect',
  title: 'Scale',
  plural: 'scale',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['scale', 'scaling', 'scaled', 'tuberculation'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Rust has built up on the wall of the pipe, which narrows it and gives paper something to catch on.',
    next: 'Have the line descaled if it runs slowly.',
    glossary: 'Scale: hard rust that builds up on the inside of iron pipe.',
  },
} as const satisfies Kind;
