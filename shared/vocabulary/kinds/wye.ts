import type { Kind } from '../kind.ts';

export const wye = {
  name: 'wye',
  group: 'fitting',
  title: 'Wye',
  plural: 'wyes',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  words: ['wye', 'y fitting', 'y connection'],
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
