import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const notReached = {
  name: 'not-reached',
  group: 'limit',
  title: 'Not reached',
  plural: 'parts not reached',
  takes: [],
  words: [
    'main not reached',
    'main was not reached',
    'not reached',
    'house not reached',
    'main never reached',
    'did not reach the main',
  ],
  signs: spoken`
    did_not|didn't|haven't|have_not|couldn't|could_not|never|can't|cannot|not|wasn't_able_to|unable_to|don't_get|hasn't|failed_to reach|reached|get_to|make_it_to|made_it_to|got_to|see|saw|find|make|made the main|city|street|house|tank|connection|tap|public|manhole|sewer|road|building|septic|rest|other_end|end|main|city_main|curb|stack|foundation|wall;
    didn't|did_not|couldn't|never|not|haven't|can't * reach|reached|make_it|made_it|get_to|got_to|get_out_to the main|city|street|house|tank|connection|tap|public|manhole|sewer|building;
    never|didn't|did_not make|made|get|got it|there|out|that_far;
    main|house|tank 's|is|was isn't|isn't_reached|not|never reached; main isn't|wasn't|not|never reached;
    house isn't|wasn't|not|never reached; short of the main|city|tank|house|street; city pipe * not see;
    pipe i did not see; didn't reach it; did not reach it; never reached it; haven't reached it;
    couldn't reach it; not reached the; main unreached; main|house|tank|city i|we never reached|saw;
    never reached at all; main * i|we never reached; i|we never reached the main|house|tank|city;
  `,
  notWords: spoken`
    feet short of the; never made it out of; couldn't see the; don't see the; can't see the main; never got it;
    never made it a; can't see the house; haven't seen the; never see the; can't find the; couldn't find the;
    didn't find the; never got out; lined to the main; not see the; never saw the; couldn't see the house;
    did not see the; didn't see the; never saw the main; never get it; can't see the street; can't see the city;
    can't see the end; cannot see the end; can't see the wall; can't see the tank; 15 feet short; feet short;
  `,
  examples: {
    says: [
      { text: 'We did not reach the main.', gives: { at: null } },
      { text: 'Stopped at 54, never made it to the main.', gives: [{ kind: 'stopped', at: 54 }, { at: 54 }] },
      { text: 'Main not reached, sixty six feet.', gives: { at: 66 } },
      { text: "Forty feet, didn't make it to the tank.", gives: { at: 40 } },
    ],
    never: ["I couldn't reach the owner.", 'We reached the main at sixty.'],
    notYet: [
      { text: 'He never made it to the closing.', gives: [] },
      { text: "If you can't reach the main you have to say so in the report.", gives: [] },
    ],
  },
  report: {
    meaning: 'This part of the line was not seen, and nothing in this report speaks of its condition.',
    next: 'Have the rest of the line looked at before relying on this report for it.',
    glossary: 'Not reached: a part of the line that the camera did not come to.',
  },
} as const satisfies Kind;
