import type { Kind } from '../kind.ts';

export const manhole = {
  name: 'manhole',
  group: 'fitting',
  title: 'Manhole',
  plural: 'manholes',
  takes: [],
  words: ['manhole', 'man hole'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The line meets a manhole here.',
    next: 'Nothing to do; nobody should climb in without the equipment and training for confined spaces.',
    glossary: 'Manhole: a shaft from the surface down to a sewer.',
  },
} as const satisfies Kind;
