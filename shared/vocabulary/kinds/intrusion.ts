import type { Kind } from '../kind.ts';

export const intrusion = {
  name: 'intrusion',
  group: 'defect',
  title: 'Intrusion',
  plural: 'intrusions',
  takes: ['to', 'position', 'clock', 'inches', 'percent'],
  words: ['intrusion', 'protruding', 'sticking in', 'sticking through', 'poking through', 'protrudes'],
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
