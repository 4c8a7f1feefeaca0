import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const linerStart = {
  name: 'liner-start',
  group: 'fitting',
  title: 'Start of liner',
  plural: 'liner starts',
  takes: [],
  words: [],
  signs: spoken`
    liner|lining|sleeve starts|begins|start|begin|picks_up|kicks_in; liner|lining|sleeve * starts|begins;
    start|beginning of the|a|that * liner|lining; start of liner|lining; where the liner|lining starts|begins;
    starts the liner|lining; into the liner|lining; into lined pipe; into a liner|lining; that 's a liner;
    start of cured; start of * in place liner; a liner , and it starts; edge of the liner where it starts;
    lined from here; front|leading edge of the liner; here the liner starts; pipe is lined from;
    been lined from; liner picks up; lining picks up; here is the liner; here 's the liner;
    there 's the liner start; we hit the liner; in the liner now; in liner now;
  `,
  notWords: ['liner starts to', 'liner start to'],
  misheard: [
    { heard: 'line are starts|begins|start', said: 'liner starts', needs: 'nothing' },
    { heard: 'linear starts|begins', said: 'liner starts', needs: 'nothing' },
    { heard: 'lighter starts|begins', said: 'liner starts', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'At eight feet the liner starts.', gives: { at: 8 } },
      { text: 'Into the liner at fifteen and a half.', gives: { at: 15.5 } },
      { text: "Twenty two, here's the start of the liner.", gives: { at: 22 } },
    ],
    never: [
      'A liner would be the way to go here.',
      'Nobody ever lined this one.',
      'The neighbor had his lined last spring.',
      'Before a liner starts to cure you have about an hour.',
    ],
    notYet: [
      { text: "It's lined from thirty on.", gives: { at: 30 } },
      { text: 'The linear starts at twelve feet.', gives: { at: 12 }, flag: 'word-unsure' },
    ],
  },
  report: {
    meaning: 'From here on the old pipe has been lined on the inside.',
    next: 'Ask the seller for the papers of the lining work.',
    glossary: 'Start of liner: where a sleeve cured inside the old pipe begins.',
  },
} as const satisfies Kind;
