import type { Kind } from '../kind.ts';

export const corrosion = {
  name: 'corrosion',
  group: 'defect',
  title: 'Corrosion',
  plural: 'corrosion',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: [
    'corrosion',
    'corroded',
    'rotted',
    'rusted out',
    'channeled',
    'channelled',
    'channeling',
    'eaten out',
    'eaten away',
  ],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The wall of the pipe has been eaten away and is thinner than it was.',
    next: 'Have a licensed plumber judge how much wall is left.',
    glossary: 'Corrosion: pipe wall eaten away by rust or by what runs through it.',
  },
} as const satisfies Kind;
