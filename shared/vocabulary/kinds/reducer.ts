import type { Kind } from '../kind.ts';

export const reducer = {
  name: 'reducer',
  group: 'fitting',
  title: 'Reducer',
  plural: 'reducers',
  takes: [],
  words: ['reducer', 'reducing coupling', 'reducing fitting', 'bell reducer', 'increaser', 'bushing', 'reduction', 'reducing bushing'],
  signs: ['reduces to|down', 'reduces from', 'reduced to', 'necks down', 'chokes down to', 'size change', 'change in size', 'change of size', 'size transition'],
  misheard: [{ heard: 'red user|re ducer|reduce her|producer|seducer', said: 'reducer', needs: 'nothing' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The pipe changes size here.',
    next: 'Nothing to do.',
    glossary: 'Reducer: a fitting that joins a larger pipe to a smaller one.',
  },
} as const satisfies Kind;
