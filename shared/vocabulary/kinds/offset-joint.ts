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
    meaning: 'The two ends at a joint do not line up, which makes a lip where paper and solids can catch.',
    next: 'Watch the place, and have it repaired if solids collect or soil shows.',
    glossary: 'Offset joint: a joint whose two pipe ends do not line up.',
  },
} as const satisfies Kind;
