import type { Kind } from '../kind.ts';

export const offsetJoint = {
  name: 'offset-joint',
  group: 'defect',
  title: 'Offset joint',
  plural: 'offset joints',
  takes: ['position', 'clock', 'degree', 'inches'],
  words: ['offset', 'offset joint', 'offsets', 'misaligned', 'displaced joint'],
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
