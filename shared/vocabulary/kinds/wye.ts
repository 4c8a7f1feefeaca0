import type { Kind } from '../kind.ts';

export const wye = {
  name: 'wye',
  group: 'fitting',
  title: 'Wye',
  plural: 'wyes',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  words: ['wye', 'y fitting', 'y connection', 'wye fitting', 'wye connection', 'wye branch', 'combo', 'combo wye', 'double wye', 'y branch'],
  notWords: ['tell me why', 'why is', 'why do', 'why are', 'why did', 'why does', 'why not', 'why would', 'why that', 'that is why', "that 's why", 'which is why', 'know why', 'wonder why', 'see why', 'why i', 'why we', 'why you', 'why they', 'why he', 'why she', 'why on earth', 'why don', 'reason why', 'any way', 'no way', 'by the way', 'way out', 'a while', 'while i', 'while we', 'while you', 'the while', 'once in a while', 'quite a while'],
  misheard: [{ heard: 'why|y|whys', said: 'wye', needs: 'article' }, { heard: 'while on|off the', said: 'wye', needs: 'article' }, { heard: 'wise', said: 'wyes', needs: 'distance' }, { heard: 'wire', said: 'wye', needs: 'article' }],
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
