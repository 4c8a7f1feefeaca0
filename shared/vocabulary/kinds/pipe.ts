import type { Kind } from '../kind.ts';

export const pipe = {
  name: 'pipe',
  group: 'fitting',
  title: 'Pipe',
  plural: 'pipe',
  takes: ['to', 'material', 'diameterIn'],
  words: [],
  notWords: ['pipe up', 'pipe dream'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'What the pipe is made of decides how it joins, how it ages and how it can be repaired.',
    next: 'Nothing to do.',
    glossary: 'Pipe: the drain line itself, named by its material and its size across the inside.',
  },
} as const satisfies Kind;
