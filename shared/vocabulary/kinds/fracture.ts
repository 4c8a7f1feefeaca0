import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const fracture = {
  name: 'fracture',
  group: 'defect',
  title: 'Fracture',
  plural: 'fractures',
  takes: ['to', 'position', 'clock', 'inches'],
  words: ['fracture', 'fractured', 'fracturing'],
  signs: spoken`
    pieces|piece|wall has|have|'ve|'s shifted|moved; pieces shifted; pieces moved; pieces displaced;
    pieces out of place; broken but in place; broken but still there; broken , but all the pieces;
    pieces are still there; shifted out of line; wall looks stepped;
  `,
  notWords: ['fractured my', 'fracture clinic'],
  misheard: [{ heard: 'fracker|fractur|factor', said: 'fracture', needs: 'distance' }],
  examples: {
    says: [
      { text: 'Fracture at thirty two feet, on the left.', gives: { at: 32, position: 'left' } },
      { text: 'Pieces have shifted at forty one.', gives: { at: 41 } },
      { text: 'Fractured at the crown, 19 feet.', gives: { at: 19, position: 'top' } },
      { text: "Fifty four, it's broken but still there, nothing fallen out.", gives: { at: 54 } },
    ],
    unsure: [{ text: 'Might be a fracture at 23.', gives: { at: 23, status: 'suspected' }, flag: 'suspected' }],
    never: ['A fracture is worse than a crack.', 'No fractures.', 'My brother fractured his wrist on a ladder.'],
    notYet: [
      { text: "There's a fracker at thirty feet.", gives: { at: 30 }, flag: 'word-unsure' },
      { text: "I'd only call it a fracture if the pieces had moved.", gives: [] },
    ],
  },
  report: {
    meaning: 'The wall is split and the pieces have shifted, so the pipe has begun to lose its shape.',
    next: 'Have a licensed plumber price a repair of this length.',
    glossary: 'Fracture: a split in the pipe wall where the pieces have moved a little.',
  },
} as const satisfies Kind;
