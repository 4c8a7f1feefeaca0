import type { Kind } from '../kind.ts';

export const wye = {
  name: 'wye',
  group: 'fitting',
  title: 'Wye',
  plural: 'wyes',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  words: ['wye', 'y fitting', 'y connection'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Another drain joins the line here through a Y-shaped fitting.',
    next: 'Nothing to do.',
    glossary: 'Wye: a Y-shaped fitting that brings a second drain in at an angle, in the direction of flow.',
  },
} as const satisfies Kind;
