import type { Kind } from '../kind.ts';

export const openJoint = {
  name: 'open-joint',
  group: 'defect',
  title: 'Open joint',
  plural: 'open joints',
  takes: ['position', 'clock', 'degree', 'inches'],
  words: ['open joint', 'gap', 'separated joint', 'separation', 'separated', 'pulled apart'],
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
