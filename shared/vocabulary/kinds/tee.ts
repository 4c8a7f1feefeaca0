import type { Kind } from '../kind.ts';

export const tee = {
  name: 'tee',
  group: 'fitting',
  title: 'Tee',
  plural: 'tees',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  words: ['tee', 't fitting', 'sanitary tee', 'santee'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Another drain or an opening joins the line here through a T-shaped fitting.',
    next: 'Nothing to do.',
    glossary: 'Tee: a T-shaped fitting that brings a second drain in at a right angle.',
  },
} as const satisfies Kind;
