import type { Kind } from '../kind.ts';

export const backPitch = {
  name: 'back-pitch',
  group: 'defect',
  title: 'Back pitch',
  plural: 'back pitches',
  takes: ['to', 'degree', 'inches'],
  words: ['back pitch', 'back pitched', 'negative slope', 'reverse grade', 'back grade', 'backfall'],
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
