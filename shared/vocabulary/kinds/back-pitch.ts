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
    meaning: 'The line slopes the wrong way here, so water stands and solids settle.',
    next: 'Have a licensed plumber check the slope and say whether the length must be laid again.',
    glossary: 'Back pitch: a length of pipe that slopes toward the house instead of away from it.',
  },
} as const satisfies Kind;
