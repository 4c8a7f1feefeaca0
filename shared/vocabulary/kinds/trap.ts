import type { Kind } from '../kind.ts';

export const trap = {
  name: 'trap',
  group: 'fitting',
  title: 'Trap',
  plural: 'traps',
  takes: ['position', 'serves'],
  role: 'opening',
  words: ['trap', 'house trap', 'building trap', 'running trap', 'p trap', 's trap', 'u trap', 'main trap', 'whole house trap'],
  notWords: ['trap door', 'speed trap', 'mouse trap', 'grease trap', 'trap arm', 'mousetrap', 'trap removed', 'the trap sucked', 'traps don t', "traps don't", 'pulled the trap', 'unscrewed the trap', 'trap primer', 'bear trap', 'tourist trap'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'This bend holds water on purpose, to keep sewer gas out of the building.',
    next: 'Nothing to do.',
    glossary: 'Trap: a U-shaped bend that holds water and so keeps sewer gas from coming back.',
  },
} as const satisfies Kind;
