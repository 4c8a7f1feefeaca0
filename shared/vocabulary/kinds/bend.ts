import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const bend = {
  name: 'bend',
  group: 'fitting',
  title: 'Bend',
  plural: 'bends',
  takes: ['position', 'angleDeg'],
  isSideways: true,
  signsYield: true,
  words: spoken`
    bend; elbow; long sweep; sweep; ell; long turn; quarter bend; eighth bend; sixteenth bend; street elbow;
  `,
  signs: [
    'turns|turn|turning|swings|swing|jogs|veers|hooks|curves|bends|sweeps left|right',
    'turns|swings|jogs|veers|curves to the left|right',
    'makes|takes|does a turn',
    'hard left',
    'hard right',
    'it turns ,',
    'it turns',
  ],
  notWords: spoken`
    on the bend; clean sweep; elbow grease; bend over; my elbow; round the bend; sweep the; bend down;
    turns out; turns to; turns into; turns straight; turns down; turns vertical; turns up;
  `,
  examples: {
    says: [
      {
        text: 'Forty five degree bend at twelve feet, turning left.',
        gives: { at: 12, position: 'left', angleDeg: 45 },
      },
      { text: 'We go around a ninety at thirty one.', gives: { at: 31, angleDeg: 90 } },
      { text: 'Twenty four feet, it swings to the right.', gives: { at: 24, position: 'right' } },
      { text: "There's a twenty two and a half at 16 feet.", gives: { at: 16, angleDeg: 22.5 } },
      { text: 'Long sweep at fifty three, headed left.', gives: { at: 53, position: 'left' } },
    ],
    unsure: [
      {
        text: 'Might be a bend at forty, could just be the camera leaning.',
        gives: { at: 40, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: [
      'I banged my elbow on the meter box.',
      'A ninety is the last thing you want under a slab.',
      "It's ninety degrees out here already.",
      'No bends, straight as a gun barrel.',
    ],
    notYet: [
      {
        text: "There's a ninety at twelve, then forty five at fourteen.",
        gives: [
          { at: 12, angleDeg: 90 },
          { at: 14, angleDeg: 45 },
        ],
      },
      { text: 'Where the street bends left you come to the hardware store.', gives: [] },
    ],
  },
  report: {
    meaning: 'The line changes direction here.',
    next: 'Nothing to do.',
    glossary: 'Bend: a fitting that turns the line, named by its angle.',
  },
} as const satisfies Kind;
