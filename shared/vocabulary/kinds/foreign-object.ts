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
    meaning: 'Something that does not belong there lies in the pipe and can catch paper and solids.',
    next: 'Have it taken out before it causes a blockage.',
    glossary: 'Foreign object: a thing lying loose in the pipe, such as a toy, a rag or a tool.',
  },
} as const satisfies Kind;
