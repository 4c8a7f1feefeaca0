import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const grease = {
  name: 'grease',
  group: 'defect',
  title: 'Grease',
  plural: 'grease',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: spoken`
    grease; greasy; greased; fat; fats; fat buildup; grease buildup; soap scum; lard; congealed; congealed fat;
    soap buildup; soap; cooking fat; cooking grease; buildup of grease; grease deposit;
  `,
  notWords: spoken`
    grease on the lens; elbow grease; grease pencil; grease trap; grease monkey; fat chance; fat lip;
    grease on my; big fat; fat cat; greasy spoon; greasy burger; greasy food; soap opera; dish soap;
    so much soap; no soap; soap and water; soap box; soap suds; fat hands; fat fingers; grease gun; fat dog;
    fat squirrel; fat on me; fat cable; too fat; bar of soap; laundry soap; chew the fat; lens is greasy;
  `,
  misheard: [
    {
      heard: "greece|grace|greases|greece's|crease|creases|grief|greis|greasing|greek",
      said: 'grease',
      needs: 'distance',
    },
    { heard: 'bruise|breeze', said: 'grease', needs: 'distance' },
  ],
  examples: {
    says: [
      { text: 'Grease at twenty one feet, about a third of the pipe.', gives: { at: 21, percent: 33 } },
      {
        text: 'Light grease along the top from 30 to 36.',
        gives: { at: 30, to: 36, degree: 'light', position: 'top' },
      },
      { text: 'Congealed fat at forty feet.', gives: { at: 40 } },
      { text: "Fourteen and a half, it's getting greasy.", gives: { at: 14.5 } },
    ],
    unsure: [
      { text: "There's greece on the top at 25 feet.", gives: { at: 25, position: 'top' }, flag: 'word-unsure' },
      { text: 'Could be grease at 50.', gives: { at: 50, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "Don't ever pour grease down the sink.",
      'No grease.',
      'I need to grease the reel.',
      "The restaurant's grease trap is out back.",
    ],
  },
  report: {
    meaning: 'Grease has hardened on the wall, which narrows the pipe and catches solids.',
    next: 'Have the line cleaned, and keep fat and oil out of the drains.',
    glossary: 'Grease: cooled kitchen fat that sticks to the wall of the pipe.',
  },
} as const satisfies Kind;
