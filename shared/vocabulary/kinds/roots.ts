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
    meaning: '',
    next: '',
    glossary: '',
  },
} as const satisfies Kind;
