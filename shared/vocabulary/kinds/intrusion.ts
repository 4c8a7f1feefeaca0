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
    meaning: 'Something comes through the wall or a joint and stands in the way of what runs down.',
    next: 'Find out what it is before any cutting tool goes in; it may belong to another utility.',
    glossary: 'Intrusion: something that sticks through the pipe wall into the bore.',
  },
} as const satisfies Kind;
