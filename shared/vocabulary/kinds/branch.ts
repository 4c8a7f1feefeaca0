import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const branch = {
  name: 'branch',
  group: 'fitting',
  title: 'Branch',
  plural: 'branches',
  takes: ['position', 'clock', 'serves'],
  signsYield: true,
  words: spoken`
    branch; branch line; branch drain; branch connection; branch arm; lateral connection;
    side connection; service connection; third connection; side branch; reopened connection; side inlet;
    reinstated connection|lateral|service|tap|branch|hole|opening|cut|window|cutout|drain|line|inlet; two|three|four|several|couple_of|few taps; tap from|for|on the? left|right|neighbor|neighbour|neighbors|neighbours|house|unit; robot|robo cut|cuts|opening|opened that|the|an|this? opening|window|hole; reopened lateral|service|tap|branch; reinstatement; tie in;
    incoming line; incoming pipe; incoming drain; incoming lateral; incoming branch; branch fitting; branch pipe;
    tap saddle; saddle tap; saddle connection; service tap; lateral tap; side tap; hard tap; break in connection;
    wye saddle; cut in connection; connection point; branch inlet; side drain; another connection;
  `,
  signs: spoken`
    something|somebody|someone|another|one|somebody_else|something_else empties|drains|dumps|spills|runs|drops|tees|teeing|pours|discharges in|into; somebody|someone comes|ties|came|tied in|into on|to us|me|ours|this|it at;
    pipe|line|drain|somebody|someone comes in at #; service|connection|lateral|junction at # o'clock; service # o'clock; # service # o'clock;
    something in|coming off|from|on the? left|right|top|side;
    here comes a|an|the|another * in; connection from|on|off the? right|left|side|top;
    connection|inlet|junction|hookup from|on|off|at|in the left|right|top|crown|side|right_side|left_side; from the? right|left side? comes|enters|joins|in_comes; here|one|another they|he|she|somebody cut|opened; service|connection|lateral has|'s|is been? cut|opened|reopened|reinstated; joins just|right? after|before|past|there|here|beyond|it; comes|coming a|an|the|another * line|drain|pipe|lateral in? from|on;
    we|i 've_got|have|got|see|find the * kitchen|laundry|bathroom|tub|shower|sink|washer|toilet|basement|garage line|drain|arm;
    drain|line|pipe|lateral|arm|gully|conduit is|'s? coming|comes|come|came|dropping|dumping|dumps|tying|entering|joining in|over|down|at|from|on|into|here;
    drain|line|pipe|lateral|arm|gully joins|join|joining|enters|entering|ties|tie|tying|teeing|tees|connects|connecting|feeds|empties|dumps|drops|hooks us|in|into|on|from|at|here?;
    drain|line|pipe|lateral|arm|gully * coming|comes|come|drops|dumps|ties|tying|hooks|feeds in;
    ties|tied|tying in; tees|teeing|feeds|feeding|empties|hooks|hooked|hooking in; feeds into; drops|dropping in|into from;
    something|another|one coming|comes|joins|ties|tying|tied in? on|from|at; something tying|tied|coming|comes in;
    dumps|dumping in|into; opening on|at; opening in the liner; opening they|he|she cut; saddle on|for|at|from|here;
    second|third|first|next opening; first|second|fourth|last|next connection; connection here|there;
    coming in on|from the left|right|top|side; come|comes one|a|another pipe|line|drain|branch from;
    one|old|another pipe|line is coming|comes from; coming from the left|right side; pipe is coming|comes from;
    comes in|on in? from|on the left|right|top; connection * from|on|at the left|right|top|crown|side|right_side|left_side;
    this|that|a|another connection at #; cut|cuts open a? connection; connection * cut back? open|out;
    cut|cuts|opened|reopened|reinstated it|them|that|this? out|open|back_open|in? at # for a|the|another connection|lateral|service|branch|drain|downpipe; cut|opened|reopened out|open|back_open|in for a|the|another connection|lateral|service|branch|drain|downpipe;
    cut a? window|hole|opening in|for; cut in? for a connection; connection that 's been; cut_out|cut of the liner;
    line|drain|pipe|inlet off|to|on|from|at the left|right|top|crown; inlet on|at|here; junction on|at|here|from|to|with|left|right; junction , left|right|at|#; # , junction left|right; ^ a? junction $;
    <service> is|'s? coming|comes|enters|entering|ties|tying|drains|draining|drops|dropping|dumps|dumping|joins|joining|connects|connecting|feeds|hooks|hooking|empties in|into|on|from|at|here|there|through|over|down|us;
    <service> drain|line|arm|group|waste|stack|branch|connection is|'s? coming|comes|enters|entering|ties|tying|drops|dropping|dumps|joins|joining|connects|feeds|hooks in|into|on|from|at|here|there|us;
    <service> drain|line|arm|connection|branch is|'s? on|at|from|off the? left|right|top;
    floor_drain|yard_drain|area_drain|roof_drain|downspout is|'s? on|from|at the left|right|top;
    enters|joins|comes|comes_in|in_comes|drops_in|here_comes the <service>; <service> picks up here|there|at|on;
    pick|picks|picking up the|your|our|a? <service>; someone tied|tapped into|in; where|that the <service> comes|ties|drops;
    reinstated at; has been reinstated; been reinstated; cut back open; opened back up; opened up on the left|right|top;
    here|there|this|that 's|is where the|your|their|our|my|a? <service> joins|join|ties|comes|enters|drops|drains|hooks|connects|empties|feeds|dumps|goes|picks_up|is; opening|hole|window|stub|inlet|pipe|line|connection|one|hub|port|cut|cutout * is|'s|that_'s|'d_be|must_be|would_be where|for|from|off|of the|your|their|our|a? <service>; opening|hole|window|stub|inlet|pipe|line|connection|one|hub|port|cut|cutout on|to|at|from|off|up the? left|right|top|side|overhead|high|above side? is|'s|that_'s|'d_be|must_be|would_be where|for|from|off|of the|your|their|our|a? <service>; that|this|it 's|is|'d_be|must_be|would_be for the|your? <service>; opening|window|hole they|he|she|you|somebody cut|left|made for the|a? <service>|connection|lateral|service|branch; window|opening|hole for the? <service> is|'s|at|on|here|there; drain|line|pipe|waste|outlet|arm for|from|off the|your|their? <service> joins|join|comes|enters|ties|drops|hooks|connects|empties|is|'s us|in|into|on|at|here|there; <service> drain|line|arm|waste|pipe|branch|outlet , from|on|off|at the? left|right|top|side; <service> on the left|right at|here|there; <service> , on|from|off the? left|right at; connection|junction|inlet|opening|tap|branch at|on # o'clock; twin|double|two connection|connections|inlets|junctions|branches; somebody|someone|they|neighbor|neighbour|he|next_door 's|has|have|'ve|had? tapped|hooked|broken|broke|plumbed|knocked|spliced|teed in|into|onto; pipe|line|drain|one|connection|branch from next_door|the_neighbor|the_neighbour|the_neighbors|the_garage|the_addition|upstairs|the_kitchen_side; open pipe|hub|fitting|end|inlet on|at|to the|our|your? left|right|top|side; something joins|enters|drops|drains|empties us|in|into|on|from|at; joins|join|meets us|me|ours|the_line|our_line on|from|at|off the? left|right|top|side; picks up the|your|a? <service>; there 's|is the|your <service> coming|joining|dropping|tying in|on|from;
    hooked|tied|plumbed|piped|teed|connected|run|running|spliced into this|here|us|it|ours|our_line|the_line|this_line|the_sewer;
    drop|line|pipe|drain|something|one in|coming|coming_in|comes|comes_in|dropping|dropping_in from above|overhead|upstairs|up_top|the_top|the_crown|the_roof;
  `,
  doubtfulWords: spoken`
    connection; opening on the left|right|side|top; side line; offshoot; arm off;
  `,
  notWords: spoken`
    somebody|someone comes|came|ties in on us|me every|all|when|while; somebody|someone in on the left|right;
    come|comes|came|coming in on itself|top|me|us;
    tie in|ins at|to|with|for the? city|public|main|sewer|street|mains;
    y|wye|t|tee|vent|main|main_line|city|banded|sewer connection; y|wye|t|tee junction|branch|piece on|in|off|at|coming|from|to? the?;
    tree branch; branch of the tree; branches of the; olive branch; city main ties; branch off; junction box;
    ties into the main|city; ties in to the main|city; ties into my; branch office; pick up the kitchen sink and;
    tied in to the old|clay|cast; tied into the; where they tied; connection * cut out on; internet connection;
    ties|tied|tying in to|with the main|city|street|sewer|public; connection to the main|city|street; feed line;
    electrical junction; saddle up; back in the saddle; ties in nicely; water line|pipe; gas line|pipe coming;
    cut in line; pipe dream; pick up the toilet|phone|tub; picks up the phone; drops in on; dumps in the;
    connection to|is|was|with|on_my|on_the_camera|problem|cable|box; loose|bad|good|internet|wifi|phone|cable|camera|usb|bluetooth|screen connection; in connection; stub toe|it|my|your; stub of|out|up; inlet tee|baffle|of|to|side|end; hole is for|where the bolt|screw|post|tree|gas; drops|goes|changes|steps|necks|pipe|line drops in size; that|this|it 's|is for the kitchen_remodel; pokes in; somebody|they|he broke in_to_the_house|into_the_house;
    run|running into this|it|us all_the_time|a_lot|again|before|every; hooked into it|the_truck|my|power;
  `,
  examples: {
    says: [
      { text: 'There are two taps. The first is on the right at 12.', gives: { at: 12, position: 'right' } },
      { text: 'Reinstated hole at thirty four, left.', gives: { at: 34, position: 'left' } },
      { text: 'Somebody comes in on us at five.', gives: { at: 5 } },
      { text: 'Thirty one, something empties in from the right.', gives: { at: 31, position: 'right' } },
      { text: "Eleven feet, there's a drop in from above.", gives: { at: 11, position: 'top' } },
      { text: "Here's where the shower joins, sixteen.", gives: { at: 16, serves: 'shower' } },
      {
        text: 'Nine feet, that opening on the right is for the dishwasher.',
        gives: { at: 9, position: 'right', serves: 'kitchen' },
      },
      {
        text: "Twelve, connection on the left, that's the downpipe.",
        gives: { at: 12, position: 'left', serves: 'downspout' },
      },
      { text: 'They cut it out at twenty eight for a connection.', gives: { at: 28 } },
      { text: 'Here comes a drain in from somewhere at nine.', gives: { at: 9 } },
      { text: 'Eleven, sink.', gives: { at: 11, serves: 'sink' } },
      { text: 'A branch comes in on the right at twenty two feet.', gives: { at: 22, position: 'right' } },
      {
        text: "Thirty five feet, drain coming in from the left, that'd be the bathroom.",
        gives: { at: 35, position: 'left', serves: 'bath' },
      },
      { text: 'The laundry ties in at 41.', gives: { at: 41, serves: 'laundry' } },
      { text: "Side connection at three o'clock, 28 feet.", gives: { at: 28, clock: 3 } },
      { text: "There's an old line joining us from the right at twenty nine.", gives: { at: 29, position: 'right' } },
      {
        text: 'Thirty six, we pick up the kitchen on the left.',
        gives: { at: 36, position: 'left', serves: 'kitchen' },
      },
      { text: 'The floor drain empties in at eleven feet.', gives: { at: 11, serves: 'floor-drain' } },
      { text: "Nineteen feet, reinstated lateral at ten o'clock.", gives: { at: 19, clock: 10 } },
      {
        text: "There's a two inch line coming in at the top at fourteen.",
        gives: { at: 14, position: 'top' },
      },
    ],
    unsure: [
      { text: 'Connection, thirteen feet, no telling whose.', gives: { at: 13 }, flag: 'word-unsure' },
      {
        text: 'Could be a branch at nineteen, all I get is a dark spot.',
        gives: { at: 19, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: [
      'Roots at nine. Coming in on the left.',
      'The hole in the vanity is where the faucet goes.',
      'A branch that ties in flat like that always runs slow.',
      'No branches in this stretch.',
    ],
    notYet: [
      { text: 'There was a big branch down across the driveway.', gives: [] },
      { text: 'His brother tied in a second kitchen without a permit, so he says.', gives: [] },
    ],
  },
  report: {
    meaning: 'Another drain joins the line here.',
    next: 'Nothing to do.',
    glossary: 'Branch: a smaller drain that joins the line being looked at.',
  },
} as const satisfies Kind;
