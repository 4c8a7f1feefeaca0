import type { Kind } from '../kind.ts';

export const foreignObject = {
  name: 'foreign-object',
  group: 'defect',
  title: 'Foreign object',
  plural: 'foreign objects',
  takes: ['position', 'clock', 'inches'],
  words: ['toy', 'lumber', 'rag', 'foreign object'],
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
