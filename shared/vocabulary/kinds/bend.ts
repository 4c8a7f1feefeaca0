import type { Kind } from '../kind.ts';

export const bend = {
  name: 'bend',
  group: 'fitting',
  title: 'Bend',
  plural: 'bends',
  takes: ['position', 'angleDeg'],
  isSideways: true,
  signsYield: true,
  words: ['bend', 'elbow', 'long sweep', 'sweep', 'ell', 'long turn', 'quarter bend', 'eighth bend', 'sixteenth bend', 'street elbow'],
  signs: ['turns|turn|turning|swings|swing|jogs|veers|hooks|curves|bends|sweeps left|right', 'turns|swings|jogs|veers|curves to the left|right', 'makes|takes|does a turn', 'hard left', 'hard right', 'it turns ,', 'it turns'],
  notWords: ['on the bend', 'clean sweep', 'elbow grease', 'bend over', 'my elbow', 'round the bend', 'sweep the', 'bend down', 'turns out', 'turns to', 'turns into', 'turns straight', 'turns down', 'turns vertical', 'turns up'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The line changes direction here.',
    next: 'Nothing to do.',
    glossary: 'Bend: a fitting that turns the line, named by its angle.',
  },
} as const satisfies Kind;
