import type { Kind } from '../kind.ts';

export const drop = {
  name: 'drop',
  group: 'fitting',
  title: 'Drop',
  plural: 'drops',
  takes: ['to'],
  words: ['drop', 'vertical drop'],
  signs: [
    'drops straight down',
    'turns straight down',
    'goes straight down',
    'turns vertical',
    'goes vertical',
    'drops vertical',
  ],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The line turns and falls steeply or straight down here.',
    next: 'Nothing to do.',
    glossary: 'Drop: a place where the line turns straight down to a lower level.',
  },
} as const satisfies Kind;
