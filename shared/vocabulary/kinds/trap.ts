import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const trap = {
  name: 'trap',
  group: 'fitting',
  title: 'Trap',
  plural: 'traps',
  takes: ['serves'],
  role: 'opening',
  words: spoken`
    trap; house trap; building trap; running trap; p trap; s trap; u trap; main trap; whole house trap; intercepting trap; interceptor trap; buchan trap; sewer trap; disconnecting trap; bottle trap;
  `,
  notWords: spoken`
    grease interceptor; oil interceptor;
    trap door; speed trap; mouse trap; grease trap; trap arm; mousetrap; trap removed; the trap sucked;
    traps don t; traps don't; pulled the trap; unscrewed the trap; trap primer; bear trap; tourist trap;
    it 's a trap , ; a trap , that;
  `,
  examples: {
    says: [
      { text: 'House trap at seven feet.', gives: { at: 7 } },
      { text: "We're going through a running trap at sixteen.", gives: { at: 16 } },
      { text: "At 52 there's a building trap, full of water like it should be.", gives: { at: 52 } },
    ],
    unsure: [
      { text: 'Looks like it could be a trap at nine feet.', gives: { at: 9, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'Getting a camera past a trap takes patience.',
      "A trap holds water, that's what keeps the gas out.",
      "There's no trap on this line.",
      'They pulled the trap years ago.',
    ],
    notYet: [{ text: 'He has mouse traps all over the basement.', gives: [] }],
  },
  report: {
    meaning: 'This bend holds water on purpose, to keep sewer gas out of the building.',
    next: 'Nothing to do.',
    glossary: 'Trap: a U-shaped bend that holds water and so keeps sewer gas from coming back.',
  },
} as const satisfies Kind;
