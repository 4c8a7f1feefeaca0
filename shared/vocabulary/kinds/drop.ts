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
    meaning: '',
    next: '',
    glossary: '',
  },
} as const satisfies Kind;
