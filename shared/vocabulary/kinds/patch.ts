import type { Kind } from '../kind.ts';

export const patch = {
  name: 'patch',
  group: 'fitting',
  title: 'Earlier repair',
  plural: 'earlier repairs',
  takes: ['to', 'material', 'inches', 'position'],
  words: ['patch', 'repair', 'spot repair'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'This piece was repaired before.',
    next: 'Ask the seller what was repaired, when, and by whom.',
    glossary: 'Earlier repair: a piece of the line that was replaced or mended at some time.',
  },
} as const satisfies Kind;
