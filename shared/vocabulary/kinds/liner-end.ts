import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const linerEnd = {
  name: 'liner-end',
  group: 'fitting',
  title: 'End of liner',
  plural: 'liner ends',
  takes: [],
  words: [],
  signs: spoken`
    liner|lining|sleeve ends|stops|quits|finishes|terminates; liner|lining|sleeve is|'s done|over;
    end of the|that|this|a liner|lining; end of liner|lining; end of cured; end of the cured;
    out of the liner|lining; where the liner|lining ends|stops|quits; liner|lining runs out;
    liner|lining * ends|stops|quits; back out of the liner|lining; out of liner|lining; back edge of the liner;
    tail end of the liner;
  `,
  notWords: ['at the end of the liner', 'right at the end of the liner', 'the end of the liner ,'],
  misheard: [
    { heard: 'line are stops|ends|quits', said: 'liner stops', needs: 'nothing' },
    { heard: 'linear stops|ends|quits', said: 'liner ends', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'Liner ends at sixty three.', gives: { at: 63 } },
      { text: 'End of the liner, fifty one feet.', gives: { at: 51 } },
      { text: 'At forty the lining stops.', gives: { at: 40 } },
      {
        text: "We're out of the liner at 48.5, back in clay.",
        gives: [{ at: 48.5 }, { kind: 'pipe', at: 48.5, material: 'clay' }],
      },
    ],
    never: [
      'The end of a liner is usually where it fails.',
      "I haven't found the end of the liner yet.",
      "I'd want the liner to end past the tree.",
    ],
    notYet: [{ text: 'The linear ends at fifty feet.', gives: { at: 50 }, flag: 'word-unsure' }],
  },
  report: {
    meaning: 'The lining of the old pipe ends here; what lies beyond is the older pipe or another one.',
    next: 'Nothing to do beyond what is noted at the edge.',
    glossary: 'End of liner: where a sleeve cured inside the old pipe stops.',
  },
} as const satisfies Kind;
