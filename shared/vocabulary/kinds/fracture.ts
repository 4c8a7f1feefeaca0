import type { Kind } from '../kind.ts';

export const fracture = {
  name: 'fracture',
  group: 'defect',
  title: 'Fracture',
  plural: 'fractures',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['fracture', 'fractures', 'fractured'],
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
