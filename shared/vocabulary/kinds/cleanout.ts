import type { Kind } from '../kind.ts';

export const cleanout = {
  name: 'cleanout',
  group: 'fitting',
  title: 'Cleanout',
  plural: 'cleanouts',
  takes: ['position', 'clock'],
  role: 'opening',
  mayEnd: 'cleanout',
  words: [
    'cleanout',
    'cleanout riser',
    'cleanout tee',
    'cleanout wye',
    'cleanout cap',
    'access riser',
    'riser',
    'cleanout plug',
    'access point',
    'access fitting',
    'access eye',
    'rodding eye',
    'inspection eye',
    'rodding point',
  ],
  notWords: ['cleanout price', 'riser clamp', 'cleanout side'],
  misheard: [{ heard: 'clean up|cleanup riser', said: 'cleanout', needs: 'distance' }],
  examples: {
    says: [
      { text: "There's a cleanout on the top at thirty one feet.", gives: { at: 31, position: 'top' } },
      { text: 'Forty four, cleanout riser.', gives: { at: 44 } },
      { text: 'Passing a cleanout at fifteen feet.', gives: { at: 15 } },
      { text: "Here's another clean out, 22.5, at twelve o'clock.", gives: { at: 22.5, clock: 12 } },
    ],
    never: [
      'The cleanout cap was hiding under the ivy, took me a while.',
      "I'd put a cleanout by the curb while they're digging.",
      'No cleanout on this side that I can see.',
      'Every house ought to have a cleanout you can find.',
    ],
    notYet: [{ text: "There's a clean up riser at thirty eight feet.", gives: { at: 38 }, flag: 'word-unsure' }],
  },
  report: {
    meaning: 'This is an opening through which the line can be cleaned and looked at again.',
    next: 'Keep it capped, uncovered and easy to reach.',
    glossary: 'Cleanout: a capped opening in a drain line, made for cleaning it and for putting a camera in.',
  },
} as const satisfies Kind;
