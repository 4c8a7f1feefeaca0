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
    meaning: 'The two ends at a joint have come apart, which leaves a gap where sewage can leave and roots can enter.',
    next: 'Have a licensed plumber look at the gap and say whether it needs closing.',
    glossary: 'Open joint: a joint whose two pipe ends have pulled apart and left a gap.',
  },
} as const satisfies Kind;
