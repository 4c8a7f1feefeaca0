import type { Kind } from '../kind.ts';

export const patch = {
  name: 'patch',
  group: 'fitting',
  title: 'Earlier repair',
  plural: 'earlier repairs',
  takes: ['to', 'material', 'inches', 'position'],
  words: ['patch', 'repair', 'spot repair'],
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
