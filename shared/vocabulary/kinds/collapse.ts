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
    meaning: '',
    next: '',
    glossary: '',
  },
} as const satisfies Kind;
