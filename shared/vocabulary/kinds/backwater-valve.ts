import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const backwaterValve = {
  name: 'backwater-valve',
  group: 'fitting',
  title: 'Backwater valve',
  plural: 'backwater valves',
  takes: [],
  words: spoken`
    backwater valve; backwater; backwater preventer; backflow valve; backflow preventer; backflow; check valve;
    flapper valve; flap valve; sewage check valve; non return valve; nonreturn valve; anti flood valve; flood valve; backwater device; backflow device;
    backwater type; backwater gate; backwater flap; sewer popper valve;
    reflux valve; reflux; backflow flap; flap gate; nrv; anti flooding valve; sewer valve; storm valve; back flow valve|preventer|device; mainline valve; main line valve; ejector check;
  `,
  doubtfulWords: spoken`
    flapper; gate valve;
  `,
  notWords: spoken`
    flapper in|on the|your|that toilet; toilet flapper; water|gas|shutoff|shut_off|main|stop|ball|angle|washer|mixing|relief|fill|hose|irrigation valve; valve on the water|gas|toilet|heater|meter; flap of|about|your|that|in|on|over|hanging; liner flap; valve seat|stem|box|key|handle|on_the_wall;
  `,
  misheard: [
    { heard: 'back water belt|bell|belly', said: 'backwater valve', needs: 'nothing' },
    { heard: 'backwater belt|bell|belly|value|ball|vow', said: 'backwater valve', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'Reflux valve, six feet in.', gives: { at: 6 } },
      { text: 'Backwater valve at twelve feet.', gives: { at: 12 } },
      { text: "There's a backflow preventer at 20.5.", gives: { at: 20.5 } },
      { text: "At thirty I'm looking at a check valve.", gives: { at: 30 } },
    ],
    unsure: [{ text: 'Flapper at eleven feet.', gives: { at: 11 }, flag: 'word-unsure' }],
    never: [
      'The toilet flapper is leaking.',
      "I'd put in a backwater valve with the street that high.",
      'No backwater valve on this one.',
      'The seller says he had a backflow valve put in.',
    ],
    notYet: [
      { text: "There's a backwater belt at fourteen feet.", gives: { at: 14 }, flag: 'word-unsure' },
      { text: 'A backwater valve would have saved that basement.', gives: [] },
    ],
  },
  report: {
    meaning: 'This valve closes by itself when sewage comes back from the main, and it works only if it is kept clean.',
    next: 'Have the valve opened, cleaned and tried once a year.',
    glossary: 'Backwater valve: a flap in the line that lets sewage out and closes when it comes back.',
  },
} as const satisfies Kind;
