import type { Kind } from '../kind.ts';

export const roots = {
  name: 'roots',
  group: 'defect',
  title: 'Roots',
  plural: 'roots',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['root', 'roots', 'rootlet', 'rootlets', 'root ball', 'root mass'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning:
      'Roots get in where a joint or the wall is not tight, catch paper and grow back after cutting for as long as the way in stays open.',
    next: 'Have the roots cut out by a licensed plumber, and the place looked at again afterward.',
    glossary: 'Roots: tree or shrub roots that have grown into the pipe.',
  },
} as const satisfies Kind;
