import type { Kind } from '../kind.ts';

export const materialChange = {
  name: 'material-change',
  group: 'fitting',
  title: 'Material change',
  plural: 'material changes',
  takes: ['fromMaterial', 'toMaterial', 'diameterIn'],
  words: ['transition', 'material change'],
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
