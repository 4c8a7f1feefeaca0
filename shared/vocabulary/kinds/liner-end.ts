import type { Kind } from '../kind.ts';

export const linerEnd = {
  name: 'liner-end',
  group: 'fitting',
  title: 'End of liner',
  plural: 'liner ends',
  takes: [],
  words: [],
  signs: ['liner|lining|sleeve ends|stops|quits|finishes|terminates', "liner|lining|sleeve is|'s done|over", 'end of the|that|this|a liner|lining', 'end of liner|lining', 'end of cured', 'end of the cured', 'out of the liner|lining', 'where the liner|lining ends|stops|quits', 'liner|lining runs out', 'liner|lining * ends|stops|quits', 'back out of the liner|lining', 'out of liner|lining', 'back edge of the liner', 'tail end of the liner'],
  notWords: ['at the end of the liner', 'right at the end of the liner', 'the end of the liner ,'],
  misheard: [{ heard: 'line are stops|ends|quits', said: 'liner stops', needs: 'nothing' }, { heard: 'linear stops|ends|quits', said: 'liner ends', needs: 'nothing' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The lining of the old pipe ends here; what lies beyond is the older pipe or another one.',
    next: 'Nothing to do beyond what is noted at the edge.',
    glossary: 'End of liner: where a sleeve cured inside the old pipe stops.',
  },
} as const satisfies Kind;
