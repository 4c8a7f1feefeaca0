/** What the camera and its counter do, and what part of the talk begins: the frame every distance is read in. */

import type { Direction } from '../../../shared/vocabulary/attributes.ts';
import { spoken } from '../../../shared/vocabulary/spoken.ts';

export type CameraCue =
  /** The camera is being pulled back: things are being seen again. */
  | 'pull-back'
  /** The counter is set to nought here. */
  | 'zero'
  /** Another run is announced. */
  | 'next-run'
  /** The same opening again, for the other direction. */
  | 'same-access'
  /** An opening the camera goes in by. */
  | 'access'
  /** The camera goes in, or goes on. */
  | 'enter'
  /** A run is ended, by choice or because the camera comes out somewhere. */
  | 'finish'
  /** Everything is gone over once more. */
  | 'summary';

const counter =
  'counter|counters|footage|meter|reel|reading|distance|odometer|count|readout|number|numbers|display|encoder|station|tape';
const nought = 'zero|0|nought|naught|nothing|zeros|zeroes|triple_zero|zero_zero';
const cleared = 'zeroed|reset|cleared|rezeroed|re_zeroed|restarted|clear|zeroed_out|nulled|wiped';
const clear =
  'zero|zeroing|zeroed|reset|resetting|clear|clearing|cleared|rezero|rezeroing|re_zero|re_zeroing|restart|restarting|null';

/** How another look at the line is counted. */
const another = 'second|third|fourth|fifth|next|last|final|another|other|new|different|2nd|3rd|4th';
const lookWord =
  'run|look|pass|shot|push|survey|traverse|trip|inspection|leg|segment|direction|test|round|video|camera_run|exercise|part|attempt|stage|recording';
const turn = 'turn|turning|flip|flipping|spin|spinning|swing|swinging|swap|rotate|rotating|reverse|reversing|twist';

export const cameraCues: readonly { readonly cue: CameraCue; readonly words: readonly string[] }[] = [
  {
    cue: 'pull-back',
    words: spoken`
      pull|pulling|bring|bringing|reel|reeling|wind|winding|spool|spooling|haul|hauling|drag|dragging|draw|drawing|roll|rolling|crank|cranking|fetch|fetching|work|working|back|backing it|her|him|this|that|the_camera|the_cable|the_head|the_rod|camera|cable|everything|the_whole_thing on? back|home|out_of_there|out_of_here|in;
      pull|pulling|back|backing|haul|hauling|wind|winding|spool|spooling it|her|him|the_camera|the_cable|camera|cable on? out|up; take|taking it|her|him|the_camera on? back|home;
      let's|let_me|let_us|we_'ll|i_'ll|i_'m_gonna|i_'m_going_to|we_'re_going_to|gonna|now|so|time_to pull|reel|wind|retrieve|withdraw|retract|spool|haul|drag|dragging|winding|hauling|spooling it|her|up|out|back|in|home|the_camera|the_cable? $;
      let's|let_me|let_us|we_'ll|i_'ll|gonna|going_to|time_to|start|starting|starts|now|we|i|she head|heading|come|coming|go|going|work|working|move|moving|start|starting on|slowly|slow? back|home|backwards|backward $;
      let's|let_me|let_us|we_'ll|i_'ll|gonna|going_to|time_to|start|starting|now|we|i head|heading|come|coming|go|going|start|starting on? home; go|going|coming|moving|running backwards|backward $; in reverse $; now in reverse; in reverse now; coming|come|heading|head back to|toward|towards you|me|us|the_truck|the_cleanout|the_opening|where;
      ^ pulling|retrieving|reeling|winding|spooling|hauling|dragging slow|slowly|now|again|up|cable? $; on the|my|our pull|retrieve|haul|trip_back|ride_back|way_in; wind|winding|reel|reeling|spool|spooling up * cable|rod|line|camera; wind|winding|reel|reeling|spool|spooling|haul|hauling up|back $; start|starting|begin|beginning the|my|our retrieval|retrieve|pull_back|way_back;
      pulling back; pulling it back; pulling her back; pull back; pulling out; coming back; come back out;
      coming home; comin' home; coming back out; coming out; on the way back; on my way back; on the way out;
      on the way home; backing up; backing out; backing it out; backing her out; reversing; withdrawing;
      withdraw; reeling in; reeling it in; reel it in; reel her in; reeling back; during retrieval; retrieval;
      retrieving; retracting; retract; heading back; heading home; bringing it back; bringing her back;
      bringing it home; winding in; winding it in; winding back; wind her up; return trip; the return;
      returning; way back; pulling the camera back; pulling the camera out; taking it back;
      back toward the cleanout; back to the cleanout; spooling back; spooling in; spool it in; hauling back;
      hauling it back; hauling in; hauling her in; drawing back; on the pullback; pullback; on the pull back;
      pull|pulling|bring|bringing|reel|reeling all_the_way|it_all|everything|the_rest_of_the_way back|out|home|in; pulling up; coming in now; backing on out; pulling cable; on the return; on the retrieve;
      cranking it back; rolling it back; dragging it back; dragging her back; take her home; taking her home;
      on my way out; come on back; comes back; i come back; bring it back; bring her back; bring her home;
      coming on back; pulling her home; pulling her in; pulling it in; now pulling; reverse now;
      bring|bringing|pull|pulling|reel|reeling|wind|winding|draw|drawing|haul|hauling|drag|dragging|roll|rolling it|her|him|this|cable home|back|in; bring|reel|wind|pull it|her on home|back|in; back we come|go; and back out;
      i|we|i_'m|we_'re|i_'ll|we_'ll|let_me take|taking it|her|him|the_camera out; ^ okay|and|now|so|right|alright? home * we|i|she|he|it go|goes|come|comes; back she|he|it|we|i come|comes|go|goes; pull|bring|haul|fetch|reel|wind|drag me|us|her|him back|out|home|in; get me|us out|home; bring|fetch it home; pull|bring|haul|fetch|reel|wind it|her|him on home|back|in|out; as|while|let_'s|when we|i? back|pull out; ^ home $; ^ homeward $;
      once more past; going back now; heading back now; on withdrawal; during withdrawal; on the haul;
    `,
  },
  {
    cue: 'zero',
    words: [
      `${counter} 's|is|was|back|now|again|on|at|to|reads|says|reading|set|starts|goes|shows|been? back|set|now|again? at|to|on? ${nought}`,
      `${counter} 's|is|was|has|has_been|'s_been|'s_been_set|got|now|just|back? ${cleared}`,
      `${clear} the|this|that|my|our|it|her|me ${counter}|out|here|again|now|at|back`,
      `${clear} ${counter}`,
      `${nought} on|at|again|here|once|feet_to_start|at_the|it|that|the|out|me_out`,
      `back|set|reset|starting|start|starts|wound|down|counting|count|from|at|again|begin|beginning|reads|reading|says|go|goes|going to|at|on|from? ${nought}`,
      `zeroed|reset|rezeroed|re_zeroed|restarted|zeroed_out|nulled it|here|again|out|now|the|at|back|and|that`,
      ...spoken`
        zero|zeroed it|her|out|that; zeroed; zeroing; rezero; rezeroed; re zero; re zeroed; station zero|0; double zero;
        all zeros; fresh|new count|counter|zero; start|starting|starts the? count|counting|measuring over?; starts|start|started over at?; count|counting|measured|measuring from here|nought|zero|nothing|this;
        nothing on the; i zero; clock it at zero; resetting; camera to zero; reset it to zero; reset to|the; resetting to;
        wound|wind|rolled|roll|set|put the? counter|numbers|footage|it back; i 've reset; i reset; and reset; been reset; was reset; is reset; 's reset;
      `,
    ],
  },
  {
    cue: 'next-run',
    words: [
      `${another} ${lookWord}`,
      `${another} cleanout|opening|hole|access|entry|entry_point|line|one|1|unit|drain|vent|port|toilet|location|spot|up`,
      `${lookWord} number? two|three|four|five|2|3|4|5|second`,
      `other|opposite|reverse|second way|direction|side|half|leg|end|one`,
      `${turn} it|her|him|her_head|the_camera|the_head|this|that|ourselves|myself? around|round`,
      `spun|turned|flipped|swung|swapped|swapping|switched|reversed it|her|the_camera|the_head? around|ends|directions|sides`,
      `upstream|downstream|house|street|up|down|inside|outside|road|city|main|tank side|half|leg|end|direction|way now|next|then`,
      `now|next|then|and_now the|for_the|to_the|do_the|let's_do_the other|upstream|downstream|house|street|up|down|inside|outside|road|city|main|tank|garage|kitchen|laundry|back|front|basement|yard|roof|second|third|last`,
      `upstream|downstream half|leg|side|survey|run|pass|inspection|push|shot|segment|section|portion|traverse`,
      ...spoken`
        do the other; go again from; on|onto|on_to to? the next; next line|one|hole|opening up|is;
        opening|run|survey|line|access b|c|d; cleanout|unit|access|entry|opening number? two|three|four|2|3|4|b|c; one more and;
        one|a more|last|final run|look|pass|shot|push|one|time; another run|look|pass|push|shot|access|opening;
        now|next|then i|we|i_'m|we_'re|i_'ll|we_'ll going|go; now|next|then up|upstream|down|downstream|against|with;
        now i|we 'm|'re|'ll? in|at|on|up|pushing|heading|looking|running|dropping|sending|feeding|going|indoors|outside|outdoors|out;
        switching|switch|switched to|over|directions|sides|ends; swapping directions|ends|sides; reverse going;
        i|i_'ve|we|we_'ve|i_'m|we_'re moved|moving over|to|around|inside|outside|upstairs|downstairs; moved|moving over|on|to to? the;
        set|setting|setup up? again|at; let's|let_me|i_'ll|we_'ll|i|going_to do|try|get|look_at|run|shoot|see|check|push|take the other|upstream|house|downstream|street|yard|laundry|kitchen|roof|up|garage|back|front;
        and one more; one more up|down|from|out|in|to; number two; number three; and? third|second and|then last|final; last|third|second is|one_'s|one_is; part|round two|three|2|3; starting over|again|fresh;
        start|started over|fresh|again from|at|here|on; trying it from; try|come|go it|at_it from; try from; try the; trying the; for|on|to|do the other; now i turn|flip;
        the|my|our third|second|fourth|last way|place|point in|of; brings us to; now up; okay reverse; new access|run|opening|entry|line|hole|setup;
        different cleanout|access|opening|hole|line|entry; up|down from the? same; next up; different direction;
        climbing|climbed|going|up on|onto|to the roof; up on the roof; in through the; back in at; i|we measured|measuring from here;
      `,
    ],
  },
  {
    cue: 'same-access',
    words: spoken`
      access|opening|cleanout|hole one|two|a|b|1|2? again; same cleanout; same access; same opening; same hole; same cap; same riser; same spot going; from the same;
      same entry; same plug; same place going; same point; same stack; same port; same fitting going;
    `,
  },
  {
    cue: 'access',
    words: spoken`
      cleanout; cleanouts; roof vent; the vent; vent stack; the stack; main vent; plumbing vent; vent pipe;
      ^ city|street|alley|road|yard|back? manhole in|at|on|by|behind|out|off; big vent; pulled toilet; pulled the toilet;
      use|using|used|try|trying|take|taking|taken|took|choose|choosing|borrow|borrowing the|that|this|their|a one|1 by|in|at|off|under|out|behind|near|next|on|over|beside|outside|around|against|between|below|above;
      vent|stack on|over|above the|my|our|their|a roof|kitchen|bath|bathroom|laundry|garage|hall|north|south|east|west|back|front|rear|addition; another|that_one|this_one by|beside|near|behind|under|at|off|in the|a|my;
      toilet|commode|stool|wc|throne|loo 's|is|was|has_been? up|off|out|pulled|lifted|away|removed; taken|took|take|taking|lifted|lifting|picked|popped|got|have up|off|out the|a|my|our|their|that * toilet|commode|stool|wc|loo;
      stub|stub_out|stubout|stub_up in|under|by|at|behind the * crawl|crawlspace|basement|garage|wall|closet|cellar|laundry; crawlspace|crawl_space|basement|cellar|wall stub|stub_out; inch|a|the|roof vent over|above|of|on|for|by; sink|basin|tub|vanity|lavatory waste;
      yanked|pulled|lifted|removed|popped|took|take|pull|lift|remove|removing|pulling * toilet|commode|stool; toilet|commode off|out;
      shower drain; standpipe; laundry standpipe; yard drain; downspout boot; boot on the; opening a|b|c|d; the|a|that|this|other|another|brass|front|back|side|yard * plug|cap|lid|hatch|pit; rodding eye; rodding point; inspection eye; inspection chamber; area drain; gully;
      catch basin; trench drain; grate; grating; washer box; utility sink; laundry sink; kitchen sink drain; shower; bidet;
      two way fitting; a|the|that|this|our two_way; two_way by|in|at|out|behind|near|under|beside|off; double cleanout; test plug; plug 's|is|came off|out; cap 's|is|came off; lid 's|is|came off;
      unscrewed|removed|opened|popped|pulled|took|lifted|dug|uncovered the|a|this|that|up * cap|plug|lid|cover|grate|trap|manhole;
      armstrong|front|yard|garden|outside junction; tank lid|cover; kitchen|tub|bath|laundry|sink|outside|basement plug|cap; plug|cap|lid|hatch on|by|at|near|behind|beside|under the; crawl_space|crawlspace cleanout|plug|cap;
      access port; sink drain; tub drain; toilet pulled; toilet 's pulled; toilet 's off;
      toilet is off; take off the toilet; took off the toilet; took the toilet off; the toilet off;
      toilet flange; the flange; closet flange; flange; riser; the manhole; city manhole; access point;
      access port; house trap; the trap; floor drain; brass plug; the plug; cap by the; a cap; caps out front;
      the opening; basement stack; trap arm; unscrewed the trap; pulled the trap; fresh air inlet;
      fresh air vent; inspection port; inspection chamber; test tee; roof job; the roof; shower drain; hole in;
      access is; access ,; entry point; entering at; entering through; cellar; plug in the; lamp hole; the cap;
    `,
  },
  {
    cue: 'enter',
    words: spoken`
      i 'm in; we 're in at; we 're going in; i 'm going in; going in; going down; down i|we|she go|goes;
      down into the; down toward|towards the; down from the roof; down the main vent; in through; in at the;
      heading; headed; pushing; running; proceeding; shootin' her; shooting; shoot; launching; starting from;
      starting at; start at; started at; start from; dropping in; drop in; dropping the camera; feeding;
      sending; camera lowered; lowering; working; going out; going up; up i|we|she go|goes; going through;
      go up; go down; in by the; taking the; we go in; i go in; put camera; put the camera; inserting; insert;
      inserted; entered; entering; access by way of; accessed; ran it from; facing; pointed; aiming; aimed;
      looking up; looking down; came in; got in; poking; inching; bound for; pointing;
    `,
  },
  {
    cue: 'finish',
    words: spoken`
      ending|end|ended|finish|finishing|stopping|leaving|leave|calling|call this|it|that one|run|look|pass? there|here|at|right_there|right_here;
      where|here|there i|we 'll|'m_going_to|'m|will|am stop|end|finish|leave|quit|stopping|ending|quitting;
      no|not_any|isn't_any|little|not_much reason|sense|point|use to|in|for? go|going|push|pushing|feed|feeding|carry|carrying|me on|cable|further|farther|any_further|it|going_on;
      that 's|is the_end_of|it_for|all_for|the_last_of this|that|the one|run|line|look|pass|leg|side|survey|half;
      i|we 'm|'re|'ll|am|are|will? quit|quitting at #|here|there; far enough; seen enough; enough seen; out of cable|rod|reel|hose|line; ran out of cable|rod; give it up; giving it up; i|we 'll leave it there|at_that;
      see|seeing|saw the? sky|daylight|sunlight; into|to the|open? daylight|sunlight|sky; run finishes|ends|terminates|finished|ended; back in the big|main|same|first line;
      back where i|we started; where i|we started before|from; covered everything; i|we 'll|will|'m_going_to|am_going_to|'m_gonna|'m_just_going_to stop|end|quit|leave|finish here|there|it_here|it_there|it; too stiff|short to go|get|reach farther|further|any_farther|any_further; out in|into|at the|a|my|our * cleanout|riser|vent; daylight; that 's|and daylight; daylight ahead|again|up_ahead|from_the; end of this|that|the push|one|run there|here|at;
      i|we|camera|she|it|now|and|'m|'re|'s|am pop|popped|popping|pops|surface|surfaced|surfaces|emerge|emerged|emerges|come|came|comes|coming|slide|slid|sliding|fall|fell|falling|drop|dropped|spill|break|broke|am|end|ended|exit out|up|down|through|back? in|into|at|to|inside|through|of the|a|my|our|that|another|other * cleanout|riser|cap|big_line|main_line|main_drain|first_line|other_line|same_line|old_line|building_drain|house_drain|house_line|yard_line|line_we|line_i|pipe_we|pipe_i;
      in|into|to|at the line|pipe|run|drain|part|stretch|section we|i|we_'ve|i_'ve already|just|all|did|saw|looked|been|ran|shot|inspected|covered; it joins|ties_into|meets|runs_into|empties_into|dumps_into the|our|that building|house|yard|first|main|other|old|big|same drain|line|run|lateral; came|come|comes|coming out|up in|at|through|of the|another|other * vent|cleanout|riser|cap;
    `,
  },
  {
    cue: 'summary',
    words: spoken`
      to sum up; in sum; to sum it up; summing up; sum it up; in summary; summary; to summarize; summarizing; to recap;
      recap; recapping; in short; short version; long story short; bottom line; so for the record; all in all;
      all told; overall; in conclusion; conclusion; conclusions; that 's a wrap; two|three|four|five|several|a_few|a_couple_of|couple_of things|items|problems to fix|repair|address|report|deal_with; to wrap up; wrapping up; wrap it up; so the list is; that 's your list;
      so what do i tell; tally; for the report; go over it once more; goes over it; here 's the deal; so to sum;
      the upshot; my findings; to conclude; big picture; at the end of the day; what we 've got is;
      what it comes down to; that is the report; that 's your report; that 's the report; final tally;
      final count; run down the list; rundown; the highlights; the takeaways; takeaway; in a nutshell;
      the punch list; punch list; builder 's list; for the builder 's list; hit list; the headlines; to review;
      reviewing; so my list; the list; totals; once more for the; in total; so in total; count them up;
      adding it up; adding up; the short of it; so we have got; the verdict; verdict; final word; closing notes;
      closing statement; let me sum; quick summary; wrap up; the rundown; so you have; so they have;
      recapitulation; recapitulating; to finish; to close; to finish up; to finish off; in order of urgency; in order of priority;
      the long and short|the of it; the long and the short; what did we learn|find; what goes in the report; what goes in;
      the report will say; write up the; in closing; to round off; the gist; as a summary; in few words; in a few words;
      bottom of the page; in brief; to be brief; to recapitulate; action list; your issues; the issues; what you 're looking at is;
      boil it down; boils down; boiled down; for the file; main points; main takeaways; top of the list; here 's the list; short list;
      where does that leave; priorities; the priority; sum total; all up; on balance; taking stock; to take stock; parting thoughts; the report card; the damage report; damage report;
    `,
  },
];

/** Stretches that hold a cue of the camera and are none. */
export const notCameraCues: readonly string[] = spoken`
  just|right|over|on|from the other side; the other side there|is|'s|of; spot|bit|sliver|speck|ray|patch|circle|bits of daylight; daylight through|in|between|at_the|around|behind|above;
  nothing that|to|in|here|there|of|but|on_the|wrong|yet|new|else; now i|we 'm|'re pushing and|but|it|through|past;
  from|at|toward|on the other end|side; zero in on; zero defects|roots|cracks|problems|issues|offsets|leaks|fall|slope|pitch|doubt|chance|visibility|picture|view|reason|point|complaints;
  point zero; zero point; from zero|nought to|through|thru|out|up|until|till|clear; between zero|nought and; clear the|that|this|it line|drain|blockage|stoppage|roots|up|out|debris; reset the|that toilet|pipe;
  next one|up is|are? light|heavy|roots|fine|good|clean|open|same|joint; reading nothing; nothing on the bottom|top|left|right|wall|sides;
  number nothing; nothing to; run over; run one|two|three|four|1|2|3|4 over|done|finished|complete|completed|ended|ends;
  in through the joint|joints|wall|crown|top|bottom|hole|crack|side|bell|hub|break|gap; coming in through the;
  up on the left|right|top|side;
  coming|come|came|comes|pop|popping out the|on_the|at_the|on|into|in|at|from|under|of|underneath far|other|opposite|end|next|top|bottom|main|manhole|tank|street|city|road|chamber|sewer|side;
  water|tub|toilet|sink|sewage|basement|shower|drain|drains|line|it|floor|washer|bathroom 's|is|was|are|keeps|starts|started|been|were|not backing up; backing up in|into|from|at|behind|onto|through|on;
  pull|pulling|pulled|come|coming|go|going|back|move|moving|bring it|her|up? back|up a|one|two|an|another|just|about|some|half foot|feet|bit|hair|little|touch|inch|smidge|tad|few|more; not returning; returning calls|the|my|her|his|tenant|tenants; coming|comes|come|came|be|going back with|on|in|at|tomorrow|later|next|after|another|for|from|around|again|when|if|because|every|each|this;
  come back and; coming back to|for; come back to; comes back up; backing up on; backed up; back up on them;
  backs up; it comes back; coming out of it; coming out of the; coming out of that; comes out of; come out of;
  came out; coming out here; come back later; i will come back; i 'll come back; we 'll come back;
  let me pull|draw|bring it back; pull|draw|bring it back and|a|just|so|up; back a bit|foot|little|touch|hair; start to finish;
  come|comes|came|coming|pop|pops back out of it|that|the; come|comes|came|pop|pops back out at; come back out here; the picture comes back; water coming back; coming out of here; coming out of there;
  coming out right there; coming out of one; running water; water running; running toward; running along;
  crack running; running the water; running a bath; running trap; running good; running clear; running slow;
  running late; running out of; running the wrong; last one before; last one i; the last one was; other end of;
  from the other end , smooth; heading into; below zero; degrees; poking through; poking in; poking out;
  poking pipe; one more thing; working fine; next one is at; other way around; the other way ,; i had to switch;
  the list price; drop in the; a drop in;
`;

/** What lies down the line, and what lies up it: a way toward either says where the camera goes. */
const below =
  'street|road|curb|kerb|main|sewer|city|tank|septic|alley|sidewalk|manhole|lake|easement|lane|highway|avenue|right_of_way|property_line|back_fence';
const above =
  'house|building|home|kitchen|bath|bathroom|bathrooms|stack|foundation|addition|garage|unit|residence|dwelling|shop|store|slab|laundry|cottage|barn|apartment|apartments|structure|restaurant|church|clubhouse';
const going = 'go|going|goes|head|heading|headed|push|pushing|run|running|work|working|send|sending|shoot|shooting';
const looking = 'looking|look|facing|face|faces|faced|pointing|point|pointed|aiming|aim|aimed|turned|turn';
const sides = 'side|half|direction|end|leg|section|portion|ward|way';

/** Stretches that hold a way and say nothing of where the camera goes. */
export const notHeadings: readonly string[] = spoken`
  cleanout|access|opening|anything|nothing|one|none|outlet * inside|in|under|outside the house|home|building;
  moved|moving|switched|switching|walked|over|back to the * stack|garage|kitchen|laundry|bath|bathroom|addition|unit;
  up the ladder|stairs|steps; up on|to the roof; setting|set|setup|end|ended|ends|show|shows|sum|summing up; coming up on;
  toward|towards|to|into the? main stack|vent|drain|bath|floor|cleanout|level|house|building; up front;
  heading|go|going out of town; going|go|run|running out of|on; going|go up|down a bit|size; look out; looking up|down at me; point out;
  from|off the upstream|downstream|house|street|road|city|main|tank side|half|end|direction; on|at|of the upstream|downstream|house|street|road|city|main|tank|building side|half|end;
`;

/** Where the camera is going, said plainly or by what lies that way. */
export const headings: readonly {
  readonly direction: Direction;
  readonly isPlain: boolean;
  readonly words: readonly string[];
}[] = [
  {
    direction: 'downstream',
    isPlain: true,
    words: spoken`
      downstream; down stream; with|along_with the? flow|current; in? direction|way of|the flow|water_goes|water_flows;
      with gravity; outbound; outward bound;
    `,
  },
  {
    direction: 'upstream',
    isPlain: true,
    words: spoken`
      upstream; up stream; against the? flow|current; against gravity; inbound; counter flow; upstreaming;
    `,
  },
  {
    direction: 'downstream',
    isPlain: false,
    words: [
      `toward|towards the|our|your|that|this * ${below}`,
      `toward|towards city|public|town`,
      `to|into|for|out_to|down_to|on_to|onto|out_into the|our|your|that city|public|street|septic|city_'s|county|town? ${below}`,
      `${looking} at|to|toward|towards|down|out? the|our|your ${below}`,
      `${below} ${sides}`,
      `street|road|main|sewer|city first|next`,
      `${going} it|her|the_camera|the_head|this|him|on? down|out|downhill|away`,
      ...spoken`
        out the front; out under the * yard; direction|way of|to the street|road|main|sewer|tank; roadside;
        out toward * street; streetward; out front; down|out i|we|she|it go|goes; down and out;
        down the vent|roof|stack|flange|line|lateral|main_vent|standpipe; to the city; out to sea; downhill;
        down through the|that|this; down toward|towards; out into the yard; away from the house|building;
        out of the house; out of the building; into|feeding|feed|drop|dropping|lowering|lower * down;
        out through the wall; out the wall; outside side;
      `,
    ],
  },
  {
    direction: 'upstream',
    isPlain: false,
    words: [
      `toward|towards the|our|your|that|this * ${above}`,
      `to|into|under|beneath|up_to|up_into|up_under|inside|back_in|up_in|up_at the|our|your|that main|pool|guest|old|new|hall|left|right? ${above}`,
      `${looking} at|to|toward|towards|up|back|back_to|back_at|up_at|back_up_at|up_to? the|our|your ${above}`,
      `house|building|home|inside|unit|shop|uphill ${sides}`,
      `house|building first|next`,
      `sending|send|pushing|push|shooting|shoot it|her|him|the_camera|this? at|back_at|in_at|in_to the|our|your ${above}`,
      `${going} it|her|the_camera|the_head|this|him|on|back? up|uphill`,
      ...spoken`
        go|going|come|came|coming|push|pushing|work|working up from there|here|below|the_manhole|the_street|that_end; up i|we|she go|goes; up the line|lateral|pipe|drain; under the house|slab|building|floor; up under;
        up toward|towards the; uphill; look|looking up|back_up; houseward; homeward; in under the; back under;
        back into; back up toward|into|under|at|to; up inside; up from the same;
      `,
    ],
  },
];
