import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const linerStart = {
  name: 'liner-start',
  group: 'fitting',
  title: 'Start of liner',
  plural: 'liner starts',
  takes: [],
  isRemedy: true,
  endsAs: 'liner-end',
  words: [],
  signs: spoken`
    somebody|someone|they|we|city|contractor 's|'ve|has|had? slid|put|pulled|shot|installed|blown|cured|inserted|placed|run a|some|the? liner|lining|sleeve in|here|through|into; there|here 's the|a|our|your sleeve|lining|liner;
    somebody|someone|they|somebody_'s|they_'ve|it_'s_been|been|it_'s|was|pipe_'s lined|relined it|this|the? here|there|pipe; at|from # feet|foot? somebody|someone|they lined|relined it|this|the;
    liner|lining|sleeve starts|begins|start|begin|picks_up|kicks_in; liner|lining|sleeve * starts|begins;
    start|beginning of the|a|that * liner|lining; start of liner|lining; where the liner|lining starts|begins;
    starts the liner|lining; into the liner|lining; into lined pipe; into a liner|lining; that 's a liner;
    start of cured; start of * in place liner; a liner , and it starts; edge of the liner where it starts;
    lined from here; front|leading edge of the liner; here the liner starts; pipe is lined from; been lined from;
    liner picks up; lining picks up; here is the liner; here 's the liner; there 's the liner start;
    we hit the liner; in the liner now; in liner now;
    <liner>|sleeve * starts|begins|start|begin|picks_up|kicks_in|started|commences|takes_over;
    starts|begins|start|beginning|front|mouth|front_edge|leading_edge|upstream_edge|upstream_end|near_end of the|a|that|this? <liner>;
    into|entering|enter|entered|reach|reached|hit|hitting|meet|pick_up|picking_up|onto|come_to|get_into the|a|some|that|this liner|lining|sleeve|lined_pipe|lined_section;
    into|entering liner|lining|lined_pipe|epoxy|cipp; we|i 're|'m|are|am in|inside|into|on liner|lined_pipe|a_liner;
    now|that_'s|it_'s in|inside liner|lined_pipe|a_liner|the_liner;
    we 're|i 'm|i_am|we_are|that_puts_me|puts_us in the <liner>;
    lined|relined|sleeved from|starting|beginning|here_on|from_here|past|after|on_from|onward|onwards|between|for_the_next;
    <liner> from|between|runs_from|goes_from|is_from|'s_from|running_from; lining|sleeve|relining from;
    here comes|starts|begins|is|'s|'s_where a|the|our|that|your liner|lining|sleeve;
    there 's a|the|our|your liner|lining|sleeve here|in_here|starting|from|at|now|that_starts|beginning;
    transition|transitions|changes|goes|going|moving into|to|over_to a|the? liner|lining|lined_pipe;
    starts|begins being lined; first of the <liner>; where they started|start the|lining;
    where the <liner> starts|begins|takes_over|picks_up|kicks_in;
    start|starts|beginning|commencement|onset of a|the? liner|lining|sleeve|cured_in_place;
    liner|lining|sleeve|relining is|'s starting|beginning|commencing;
    liner|lining|sleeve starting|beginning|commencing;
    liner|lining|sleeve has_been|was|is|'s installed|put_in|pulled_in; this is where they lined|relined;
    where the lining|liner|sleeve starts|begins|kicks_in; shiny|cut edge of the liner|lining;
    lined|relined it|this|that|the_pipe|the_line|the_whole_thing from|starting|beginning;
  `,
  weakWords: spoken`
    it|this|pipe|line|section|that|she|bit|part|stretch|next|rest|here 's|is|was|has|'s_all|has_been|'s_been been? lined|relined|sleeved;
    been lined|relined|sleeved;
    somebody|someone|they|they_'ve|somebody_'s put|ran|shot|installed|run|pulled|inverted|stuck a liner|lining|sleeve;
    that 's|is|was a? liner;  here 's|is a|the|our liner; there 's|is a|the liner|lining;
  `,
  notWords: spoken`
    liner starts to; liner start to; feet|foot|ways into the|a|this <liner>; liner starts|start to;
    past|after|before|beyond the start of the <liner>; where the <liner> starts to;
    wrinkle|fold|crease|bulge|bubble|tear|roots|crack|hole|defect|lump|ridge * in the|a|this <liner>;
    price|quote|cost|papers|warranty|estimate * <liner>; hit the lining of;
    want|wants|recommend|recommends|suggest|need|needs|install|consider|candidate * liner|lining|lined|relined;
    lined up; isn't|ain't|never|not|wasn't|hasn't * lined; lined with trees|cement; cement|mortar lined|lining;
    glass lined; bin|truck_bed|bed|can|bag liner; into the lining of; brake lining; silver lining; lining company;
    before a <liner> starts;
  `,
  misheard: [
    { heard: 'line are starts|begins|start', said: 'liner starts', needs: 'nothing' },
    { heard: 'linear starts|begins', said: 'liner starts', needs: 'nothing' },
    { heard: 'lighter starts|begins', said: 'liner starts', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: "Somebody's slid a liner in here at sixteen.", gives: { at: 16 } },
      { text: 'The line her starts at eight.', gives: { at: 8 } },
      { text: 'Start of a cured in place liner, seven feet.', gives: { at: 7 } },
      { text: 'A liner has been installed from nineteen feet on.', gives: { at: 19 } },
      { text: "It's lined from thirty on.", gives: { at: 30 } },
      { text: 'At fourteen feet this has been lined.', gives: { at: 14 } },
      { text: 'Entering the liner at nine feet.', gives: { at: 9 } },
      { text: 'Liner from twelve to fifty feet.', gives: [{ at: 12 }, { kind: 'liner-end', at: 50 }] },
      { text: 'Epoxy lining begins at 21.', gives: { at: 21 } },
      { text: 'At eight feet the liner starts.', gives: { at: 8 } },
      { text: 'Into the liner at fifteen and a half.', gives: { at: 15.5 } },
      { text: "Twenty two, here's the start of the liner.", gives: { at: 22 } },
    ],
    unsure: [{ text: 'The linear starts at twelve feet.', gives: { at: 12 }, flag: 'word-unsure' }],
    never: [
      'You could put a liner in from ten to forty.',
      'Price a liner for them.',
      'A liner would be the way to go here.',
      'Nobody ever lined this one.',
      'The neighbor had his lined last spring.',
      'Before a liner starts to cure you have about an hour.',
    ],
  },
  report: {
    meaning: 'From here on the old pipe has been lined on the inside.',
    next: 'Ask the seller for the papers of the lining work.',
    glossary: 'Start of liner: where a sleeve cured inside the old pipe begins.',
  },
} as const satisfies Kind;
