import type { Kind } from '../kind.ts';

export const linerStart = {
  name: 'liner-start',
  group: 'fitting',
  title: 'Start of liner',
  plural: 'liner starts',
  takes: [],
  words: [],
  signs: ['liner|lining|sleeve starts|begins|start|begin|picks_up|kicks_in', 'liner|lining|sleeve * starts|begins', 'start|beginning of the|a|that * liner|lining', 'start of liner|lining', 'where the liner|lining starts|begins', 'starts the liner|lining', 'into the liner|lining', 'into lined pipe', 'into a liner|lining', "that 's a liner", 'start of cured', 'start of * in place liner', 'a liner , and it starts', 'edge of the liner where it starts', 'lined from here', 'front|leading edge of the liner', 'here the liner starts', 'pipe is lined from', 'been lined from', 'liner picks up', 'lining picks up', 'here is the liner', "here 's the liner", "there 's the liner start", 'we hit the liner', 'in the liner now', 'in liner now'],
  notWords: ['liner starts to', 'liner start to'],
  misheard: [{ heard: 'line are starts|begins|start', said: 'liner starts', needs: 'nothing' }, { heard: 'linear starts|begins', said: 'liner starts', needs: 'nothing' }, { heard: 'lighter starts|begins', said: 'liner starts', needs: 'nothing' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'From here on the old pipe has been lined on the inside.',
    next: 'Ask the seller for the papers of the lining work.',
    glossary: 'Start of liner: where a sleeve cured inside the old pipe begins.',
  },
} as const satisfies Kind;
