import type { Kind } from '../kind.ts';

export const tee = {
  name: 'tee',
  group: 'fitting',
  title: 'Tee',
  plural: 'tees',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  words: ['tee', 't fitting', 'sanitary tee', 'santee', 'san tee', 'tee fitting', 't connection', 'test tee', 'inlet tee', 'baffle tee', 'tee connection'],
  notWords: ['cup of tea', 'iced tea', 'to a t', 't shirt', 'tee off', 'golf tee', 'sweet tea', 'tee time', 'tee shirt'],
  misheard: [{ heard: 't|tea|teas|ts', said: 'tee', needs: 'article' }],
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
