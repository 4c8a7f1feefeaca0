import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const linerEnd = {
  name: 'liner-end',
  group: 'fitting',
  title: 'End of liner',
  plural: 'liner ends',
  takes: [],
  isRemedy: true,
  words: [],
  signs: spoken`
    <liner>|lining|sleeve is ending|stopping|finishing|terminating;
    liner|lining|sleeve ends|stops|quits|finishes|terminates; liner|lining|sleeve is|'s done|over;
    end of the|that|this|a liner|lining; end of liner|lining; end of cured; end of the cured;
    out of the liner|lining; where the liner|lining ends|stops|quits; liner|lining runs out;
    liner|lining * ends|stops|quits; back out of the liner|lining; out of liner|lining; back edge of the liner;
    tail end of the liner;
    <liner>|sleeve * ends|stops|quits|finishes|finished|terminates|gives_out|runs_out|peters_out|dies|is_over|cut_off|is_cut_off|ended|stopped|is_done;
    end|ends|tail_end|back_edge|far_end|far_edge|downstream_end|downstream_edge|trailing_edge of the|that|this|a|our? <liner>|sleeve|lined_section;
    out|off of? the|that|this|our <liner>|sleeve|lined_section|lined_pipe;
    leave|leaving|left|exit|exiting|exited|clear_of the|that|this|our? liner|lining|sleeve;
    far as they|he|somebody|the_liner * lined|ran|goes;
    stopped|ended|quit|quits|ends|stops the|their <liner>|lining; they stop|stopped|quit|quits|end|ended lining;
    <liner>|lining goes|runs|extends|carries|lasts|'s_good|gets|comes|reaches as_far_as|to|out_to|till|until|up_to;
    no more <liner>; unlined from; <liner>|lining|sleeve|lining_'s is|'s done|over|finished|cut|ended|behind_us;
    termination|finish of a|the? liner|lining|sleeve|cured_in_place;
    liner|lining|sleeve is|'s ending|stopping|finishing; liner|lining|sleeve ending|stopping|finishing;
  `,
  notWords: spoken`
    cut|cuts|sticking|poking|hanging|coming_up|window|hole|opening * out of the|this <liner>;
    at the end of the <liner>;
    just|right|feet|foot|inches past|before|after|beyond|from|short_of the end of the <liner>;
    <liner> ends|stops|quits up; is|gets to; end of the <liner> yet; <liner> to end|stop;
    <liner> goes|runs|comes to the; end of a liner is;
    end of the <liner> looks|is_lifted|has_lifted|is_loose|is_ragged|is_frayed; left the liner in|at|on|out;
  `,
  misheard: [
    { heard: 'line are stops|ends|quits', said: 'liner stops', needs: 'nothing' },
    { heard: 'linear stops|ends|quits', said: 'liner ends', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'The liner is ending at thirty three.', gives: { at: 33 } },
      { text: 'We come out of the liner at fifty three.', gives: { at: 53 } },
      { text: 'That is as far as they lined it, forty four feet.', gives: { at: 44 } },
      { text: 'The lining gives out at 38.', gives: { at: 38 } },
      { text: 'Liner ends at sixty three.', gives: { at: 63 } },
      { text: 'End of the liner, fifty one feet.', gives: { at: 51 } },
      { text: 'At forty the lining stops.', gives: { at: 40 } },
      {
        text: "We're out of the liner at 48.5, back in clay.",
        gives: [{ at: 48.5 }, { kind: 'pipe', at: 48.5, material: 'clay' }],
      },
    ],
    unsure: [{ text: 'The linear ends at fifty feet.', gives: { at: 50 }, flag: 'word-unsure' }],
    never: [
      'The end of a liner is usually where it fails.',
      "I haven't found the end of the liner yet.",
      "I'd want the liner to end past the tree.",
    ],
  },
  report: {
    meaning: 'The lining of the old pipe ends here; what lies beyond is the older pipe or another one.',
    next: 'Nothing to do beyond what is noted at the edge.',
    glossary: 'End of liner: where a sleeve cured inside the old pipe stops.',
  },
} as const satisfies Kind;
