import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const notReached = {
  name: 'not-reached',
  group: 'limit',
  title: 'Not reached',
  plural: 'parts not reached',
  takes: [],
  liesAtEnd: true,
  implies: 'stopped',
  words: [
    ...spoken`
short of the main|tank|city|street|sewer|house|building|manhole|connection;
`,
    'main not reached',
    'main was not reached',
    'not reached',
    'house not reached',
    'main never reached',
    'did not reach the main',
  ],
  signs: spoken`
    rest|remainder of the|this way|line|run|pipe|lateral * is|'s unknown|unseen|anybody_'s_guess|not_known;
    rest|remainder|rest_of_it|rest_of_the_line|balance isn't|is_not|wasn't|was_not|not|hasn't_been|never_got|goes inspected|seen|covered|filmed|surveyed|done|looked_at|viewed|uninspected|unseen; no sewer|city|house|tank|street today|this_time|for_you|on_this_one|in_this_one;
    main|tank|house|city|sewer|street 's|is further|farther|still_further|somewhere_further|out|up on|along|ahead|out|past_that;
    city|public|street? main|tap|sewer|tank|house|connection|street i|we never laid_eyes_on|saw|got_to|reached|made|touched|found|got_near|laid_eyes;
    can't|cannot|couldn't|could_not|won't|not_able_to|unable_to say|tell|speak|vouch|comment|answer|report you|them|anyone|him|her? anything|a_thing|much|what_'s? about|to|for|on|of|regarding|past|beyond anything|what_'s|whatever_'s? past|beyond? the|your|our? main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main|rest|last|remainder|inside;
    rest|remainder|last|final bit|part|stretch|piece|leg|length|foot|feet|few_feet|section? to|before|into|toward|of the|your main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main|line|lateral|pipe * mystery|unknown|unseen|anyone_'s_guess|anybody_'s_guess|guess|question_mark|not_seen|uninspected|blank;
    never|didn't|did_not|couldn't|could_not|haven't|can't get|got|gotten|make_it|made_it|come|see|saw|seen all_the_way? in|inside|into|under the|your? main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main; main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main 's|is|are|lies|sits past|beyond that|it|there|here , and|so? i|we? didn't|couldn't|can't|never;
    can't|cannot|couldn't|could_not|won't say|tell|speak|vouch|report you|them|anyone|him|her? anything|a_thing|much|what_'s|whatever_'s? about|for|of|regarding? anything|what_'s|whatever_'s|everything|stuff|pipe? past|beyond|after|behind it|that|there|here|this;
    never|didn't|did_not|don't|haven't|no have|get|got|found|find|hit|made|make|laid|lay|had|located? eyes on? the|your|any main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main; never|didn't|did_not|couldn't found|find|made|make|hit|located|locate|reached|reach|saw|see|touched|touch the|your|any? main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main|house_end|kitchen_end|far_end|other_end;
    never saw|seen|reached|got_to the house|kitchen|far|other|upper|lower|city|street end|side|half; main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main 's|is still|somewhere out|ahead|beyond|further|past|down; feet|foot to|from the main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main i|we|that_i|that_we? haven't|didn't|couldn't|never see|seen|reach|reached|get|got|inspect|inspected;
    rest|remainder of the|that way|line|pipe|run|lateral * i|we couldn't|can't|didn't|haven't|could_not|did_not inspect|inspected|see|seen|look_at|get|reach|view; no main|tank|manhole|connection|city_main|tap in sight|yet|visible|to_be_seen;
    never|didn't did|get_to|ever|actually see|saw|seen|get_into|get_inside * inside|main|house|city|street|tank; house|street|city|main|kitchen|far|other end|side|part|half 's|is|was|were|has_been not|never|still|un covered|seen|inspected|looked_at|viewed|surveyed|done|unseen|uninspected; pull|pulled up|short short of;
    so|and the|your|our? main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection|city_sewer|public_main wasn't|was_not|isn't|is_not|never * reached|seen|located|found|inspected|viewed; what 's|is|lies past|beyond|after that|it|there|here|this i|we can't|couldn't|cannot|don't say|tell|know|see;
    whatever 's|is past|beyond|after that|it|there|here|this i|we? didn't|can't|couldn't|cannot|don't say|tell|know|see|saw;
    i|we 've|have not|never come|got|gotten|made_it|been to the house|main|tank|street|city|sewer|building; haven't|have_not|hadn't come|got|gotten|made_it to|into the house|main|tank|street|city|sewer|building;
    didn't|did_not|couldn't|could_not|never|haven't|have_not|wasn't_able_to|unable_to|not get_to|get_as_far_as|got_as_far_as|make_it_to|made_it_to|reach|reached|seen|make|located the|our|your main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection;
    main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection i|we have|haven't|'ve|has|hasn't|did|didn't|could|couldn't|never not_been|not|been? reached|seen|located|found|inspected|viewed|reach|see;
    main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection i|we never reached|saw|got_to|made; main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection i|we haven't|couldn't|didn't reach|reached|see|seen|get_to;
    main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection wasn't|was_not|isn't|is_not|hasn't_been|has_not_been|not|never reached|seen|located|found|inspected|viewed|visible;
    rest|remainder|last_bit|last_part|last_stretch of|to|out * street|main|it|line|pipe|way|tank|lateral i|we? unseen|uninspected|not_seen|not_inspected|not_viewed|couldn't_see|couldn't_inspect|didn't_see|did_not_see|could_not_see|could_not_inspect;
    never|didn't|did_not|couldn't got|get there; never|didn't|couldn't get|got|make_it|made_it that_far|all_the_way; fell short of the main|mane|maine|city|street|house|tank|connection|tap|public_sewer|sewer|manhole|septic|building|city_main|city_connection;
    to the main unseen; without having? reached|reaching|seeing|seen|getting_to|got_to|making_it_to|made_it_to|finding|hitting * main|house|tank|city|street|manhole|connection|sewer|building|stack; main|city_main|tank|house|manhole|connection|sewer not|never sighted|attained|achieved; so|and i|we didn't|never|couldn't|can't get|got|make_it|made_it|reach|reached to? it|there; tank|field|main|sewer|house|street|manhole|connection never reached|attained|made; never|not actually|quite|ever? made|got|reached|came it? to|as_far_as|out_to|up_to|into the|your|our|that? main|tank|field|sewer|house|street|city|manhole|stack|connection|building;
    no main|mane|city_main|city_sewer|sewer|street|house|building|tank|manhole|connection|city_connection|tap $; no main|mane|city_main|city_sewer|sewer|street|house|building|tank|manhole|connection|city_connection|tap today|tonight|for_today|this_time|on_this_one|on_this_run|this_trip|for_us|for_you|then|i'm_afraid|i_'m_afraid|,;
    did_not|didn't|haven't|have_not|couldn't|could_not|never|can't|cannot|not|wasn't_able_to|unable_to|don't_get|hasn't|failed_to reach|reached|get_to|make_it_to|made_it_to|got_to|see|saw|find|make|made the main|city|street|house|tank|connection|tap|public|manhole|sewer|road|building|septic|rest|other_end|end|main|city_main|curb|stack|foundation|wall;
    didn't|did_not|couldn't|never|not|haven't|can't * reach|reached|make_it|made_it|get_to|got_to|get_out_to the main|city|street|house|tank|connection|tap|public|manhole|sewer|building;
    never|didn't|did_not make|made|get|got it|there|out|that_far;
    main|house|tank 's|is|was isn't|isn't_reached|not|never reached; main isn't|wasn't|not|never reached;
    house isn't|wasn't|not|never reached; short of the main|city|tank|house|street; city pipe * not see;
    pipe i did not see; didn't reach it; did not reach it; never reached it; haven't reached it;
    couldn't reach it; not reached the; main unreached; main|house|tank|city i|we never reached|saw;
    never reached at all; main * i|we never reached; i|we never reached the main|house|tank|city;
    main|city|street|house|tank|connection|sewer|manhole 's not been? reached|seen|located|found|inspected|viewed;
  `,
  notWords: spoken`
    no main|mane|sewer|street|house|building|tank|manhole|connection|tap , but|just|yet|only; septic , so|and? no|there_'s_no main|sewer|city; septic so|and|, no|there_'s_no main|sewer|city;
    they|it|liner|lining|lining_crew|installers|somebody|someone|repair|patch|water|sewage|belly|roots stop|stops|stopped|quit|quits|end|ends|ended * short of the;
    see the end of; see the rest of;
    he|she|they|who never|didn't made|make|got|get it|there|to|out; inches short of the; he never made it to; she never made it to; they never made it to;
    feet short of the; never made it out of; couldn't see the; don't see the; can't see the main; never got it;
    never made it a; can't see the house; haven't seen the; never see the; can't find the; couldn't find the;
    didn't find the; never got out; lined to the main; not see the; never saw the; couldn't see the house;
    did not see the; didn't see the; never saw the main; never get it; can't see the street; can't see the city;
    can't see the end; cannot see the end; can't see the wall; can't see the tank; 15 feet short; feet short;
  `,
  examples: {
    says: [
      { text: 'Stopped at 44, and the sewer was not located.', gives: [{ kind: 'stopped', at: 44 }, { at: 44 }] },
      { text: 'Stuck at 31. The tank we have not seen.', gives: [{ kind: 'stopped', at: 31 }, { at: 31 }] },
      { text: 'We did not reach the main.', gives: { at: null } },
      { text: 'Stopped at 54, never made it to the main.', gives: [{ kind: 'stopped', at: 54 }, { at: 54 }] },
      { text: 'Main not reached, sixty six feet.', gives: { at: 66 } },
      { text: 'Stopped at fifty one. So no main today.', gives: [{ kind: 'stopped', at: 51 }, { at: 51 }] },
      { text: 'Dead stop at twenty seven, no house.', gives: [{ kind: 'stopped', at: 27 }, { at: 27 }] },
      { text: "Forty feet, didn't make it to the tank.", gives: { at: 40 } },
    ],
    never: [
      "If you can't reach the main you have to say so in the report.",
      'He never made it to the closing.',
      'No main yet, I keep pushing.',
      "It's septic, so no main.",
      "I couldn't reach the owner.",
      'We reached the main at sixty.',
    ],
  },
  report: {
    meaning: 'This part of the line was not seen, and nothing in this report speaks of its condition.',
    next: 'Have the rest of the line looked at before relying on this report for it.',
    glossary: 'Not reached: a part of the line that the camera did not come to.',
  },
} as const satisfies Kind;
