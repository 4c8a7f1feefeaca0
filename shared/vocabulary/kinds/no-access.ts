import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const noAccess = {
  name: 'no-access',
  group: 'limit',
  title: 'No access',
  plural: 'openings without access',
  takes: [],
  isPlaceless: true,
  signsNeedOpening: true,
  words: spoken`
    no access; no way in; inaccessible; not accessible; inaccessible cleanout; could not be accessed;
    couldn't be accessed; can't be accessed; cannot be accessed; was not accessed; without access;
    no cleanout access;
    no usable cleanout|access; no good access; not usable; unusable; no go;
  `,
  signs: spoken`
    couldn't|could_not|can't|cannot|unable_to|not_able_to get|fit|put|push|feed|squeeze|work the|my|a? camera|head|lens|scope|cable|camera_head|push_rod in|into|inside|down the|that|it|there|this;
    camera|head|lens|scope|it won't|wouldn't|doesn't|does_not|didn't fit in|into|inside|down|through the|that|there;
    cap|plug|lid|cover to|on|of the|that * is|'s|was|are stripped|seized|rusted|frozen|ceased|buried|stuck;
    that|this|it|which|one can't|cannot|couldn't|could_not|won't be used|opened|reached|got_at|got_to|gotten_to|accessed|unscrewed|had; out of reach; padlocked; chained shut; no entry;
    so|which nope|no_good|no_dice|no_go|forget_that|forget_it|that_'s_out|it_'s_out|i_can't_use|we_can't_use|won't_do|is_out;
    there 's|is? no getting|reaching|opening|using|lifting|shifting in|into|at|to|inside? that|it|this|there|them|one;
    never got|get at|in|into|to|inside it|that|there|them|this; no getting in|inside|into|at $;
    couldn't|could_not|can't|cannot|unable_to|not_able_to|never get|got|go|look|see in|into|inside|down|at there|that|it|them|this;
    couldn't|could_not|can't|cannot|never be|was|been opened|reached|used|accessed|entered|lifted|removed|freed|shifted|undone|got_at|gotten_into;
    a * skip|car|truck|van|dumpster|boat|pallet|woodpile|shed|trailer|freezer|fridge parked|sitting|standing|stacked? on|over|on_top_of|in_front_of it|that|top|them;
    thread|threads 's|is|are|all? stripped|rounded|crossed; cap|lid|plug|cover|cleanout|hatch|riser , buried|seized|stuck|rusted|frozen|painted|stripped;
    standing|sitting|parked|stacked|piled on top of it|that|the_cap|the_lid; asphalt|concrete|dirt|patio|deck|slab|driveway|pavers|shed is|'s|was|sits|sitting|poured|laid|built on_top|over_it|on_it|over_the_top;
    can't|cannot|couldn't|could_not|never|didn't find|found|locate|located the|a|any|that|it|your * cleanout|riser|cap|opening|access; looked|looking|hunted|searched for the|a * cleanout|cap|riser * never|couldn't|didn't|no;
    cap|plug|lid|cover|threads 's|is|are|all|were? ceased|seize|seized_up|stripped|stripped_out|rounded_off; lid|cover|grate weighs a;
    grate|grating|strainer|cap|lid|cover|plug|cleanout|flange|it|that|one won't|will_not|wouldn't|doesn't_want_to|refuses_to come up|off|out|open|loose|free|undone; drywalled|boarded|bricked|tiled|cemented|plastered|panelled|paneled|decked|concreted|tarmacked|asphalted|paved|slabbed|planted|landscaped in|over|up|off;
    it is|'s|was not opening|turning|budging|coming_off|coming_out|moving;
    cap|plug|lid|cover|cleanout|hatch|riser|grate|rodding_eye|chamber|pit|vent_pit|opening|roof_vent 's|is|was|has_been|'s_been|are|were|looks buried|rusted|seized|frozen|froze|stuck|painted|nailed|screwed|welded|glued|paved|locked|stripped|damaged|cross_threaded|cemented|concreted|tiled|bricked|inaccessible|boarded shut|solid|in|over|tight|up|closed|off|under?;
    cap|plug|lid|cover|cleanout|hatch|riser|grate|rodding_eye|chamber|pit|vent_pit|opening|roof_vent * 's|is|was buried|rusted_shut|seized|frozen|froze|painted_shut|nailed_shut|screwed_shut|stripped|damaged|cross_threaded|inaccessible|locked;
    nailed|screwed|bolted|froze|frozen|boarded|bricked|concreted|soldered|tarred shut|solid|in_place;
    cap|plug|lid|cover|cleanout|hatch|riser|grate|rodding_eye|chamber|pit|vent_pit|opening|roof_vent * won't|wouldn't|would_not|will_not|not|refuses_to|couldn't_be|can't_be|could_not_be|cannot_be open|opening|opened|turn|turning|budge|come_out|come_off|coming_off|coming_out|move|reached|used|removed;
    i|we could_not|couldn't|can't|cannot use|open|reach|budge|loosen|unscrew it|that_one|this_one;
    i|we could_not|couldn't|can't|cannot get_to|get_at|get_into it|that_one|this_one;
    i|we could_not|couldn't|can't|cannot use|open|reach|budge|loosen|unscrew|get_to|get_at the * cap|plug|lid|cover|cleanout|hatch|riser|grate|rodding_eye|chamber|pit|vent_pit|opening|roof_vent;
    that|this|which one? i|we could_not|couldn't|can't use|open|get_to|get_at|get_into|reach|budge;
    cap|plug|lid|cover|cleanout|hatch|riser|grate|rodding_eye|chamber|pit|vent_pit|opening|roof_vent on_the_roof|out_back? i|we couldn't|could_not|can't use|open|get_to|get_at|reach; roof i|we couldn't|could_not|can't get_to|reach|use;
    no|not_any way to reach|get_to|get_at|open|use|get_into it|that|the|them; no|isn't_any getting in|into|at that|it; not breaking|forcing it|that|this; someone|somebody|they|owner|seller * cemented|concreted|glued|painted|nailed|tiled|bricked|paved|drywalled it|that|them over|in|shut|up;
    built|build|poured|laid|put|parked|stacked|piled|planted * over|on|on_top_of|across the|that|a|my? cleanout|cap|plug|lid|rodding_eye|opening|riser; built on top of it|that;
    cleanout|plug|cap|riser|opening|hatch|lid|one|manhole|trap|that|it 's|is|sits|was under|behind|beneath|underneath|below a|an|the|their|his|her|my|some * hot_tub|tub|deck|furnace|boiler|water_heater|washer|dryer|car|truck|shed|woodpile|freezer|fridge|refrigerator|bookcase|shelf|shelves|shelving|cabinet|cabinets|drywall|pallets|boxes|planter|bush|hedge|patio|driveway|slab|concrete|carpet|paving|stove|couch|dresser|workbench;
    no room to|for * work|wrench|swing|turn|get_in|camera|reel|me; can't|couldn't|cannot * get|move|shift * furnace|boiler|freezer|car|truck|shed|hot_tub|washer|dryer|shelves|boxes;
    has|had|'s_got a|an|the * deck|patio|shed|planter|porch|slab * over|on_top_of|on it|that; behind a|the finished|drywall|tiled|paneled|panelled|false wall;
    won't come out for;
    rusted|painted|seized|frozen|corroded|stuck|glued|welded shut|solid|in|on|closed|tight;
    cap|plug|lid|cover|cleanout 's|is|was|has_been buried|rusted|seized|frozen|cross_threaded|stripped|paved|covered|locked|cemented|painted|blocked;
    it 's|is|was rusted_shut|rusted_solid|seized|frozen|stripped|cross_threaded|painted_shut;
    can't|couldn't|cannot|could_not|won't get|open|budge|turn|break|remove|loosen it|that|the_cap|the_plug|the_lid|the_cover|them|this|the_cleanout|one open|off|loose|out|to_budge|free;
    can't|couldn't|cannot|could_not get it|that|the_cap|the_plug|the_lid|them open|off|loose|out|to_turn|to_budge;
    couldn't|can't|cannot|could_not open; couldn't|can't|cannot|could_not|not get at|to it|the|that|them;
    not getting that|it|this|those open|off|out;
    won't|wouldn't budge|turn|come_off|come_out|open|come_loose|give; can't get a wrench; walled in|off|over;
    paved over; poured a|concrete|the * over; cemented a|over|in|shut; was locked; locked and; locked up;
    sealed shut; sealed up; no way to get into|in|to; buried under the patio|deck|slab|concrete|driveway;
    covered by shelving|a; no way i 'm lifting; i couldn't use; couldn't use it|that; couldn't use; can't use;
    cap * rusted|seized|stripped|frozen; built|build a|the deck|porch|patio|shed over; under the pavers;
    rounded off; rounded it off; nobody 's|is getting in; packed with the seller; packed with; skip it;
    skipped it; roof * too steep|wet|icy|steep; ice on the; not safe to; can't reach; couldn't reach;
    could not reach; no ladder; somebody|they poured|paved|tiled|built|drywalled over; drywalled over;
    tiled over; threads are stripped; cap is stripped;
    cleanout|cap|plug|lid|cover|one|it|opening|access|riser|grate 's|is|was|sits|lives|stuck|trapped|buried under|underneath|behind|beneath|below|inside|blocked_by a|an|the|that|this|his|her|their|your|somebody's hot|big|parked|pile|stack|cord|finished|drywalled|new|whole|dead|old? tub|deck|furnace|boiler|heater|water_heater|washer|dryer|shed|car|truck|van|suv|boat|trailer|dumpster|freezer|fridge|refrigerator|shelf|shelves|shelving|workbench|cabinet|cabinets|patio|porch|slab|driveway|pavers|planter|hot_tub|safe|piano|tank|woodpile|wood|firewood|bricks|gravel|pallet|pool|tile|carpet|wall|drywall|panel|bookcase|couch|sofa|bed|dresser|bench|stairs|steps|tub|vanity|compressor|generator|oil_tank|coal_bin; ^ so|and? not happening $; not happening today|there|here; ain't|not gonna happen|moving_that|moving_it; not moving it|that|them|this; i_'m not|i_am_not|we_'re_not moving|digging|lifting|taking|breaking|unloading|shifting * it|that|chisel|hammer|house|car|stuff|today|up|out; can't|couldn't|cannot|no_room_to swing|get|fit a|my|the? wrench|bar|pipe_wrench|spanner|socket|tool on|onto|back|in|to|there?; hasn't|haven't been opened in|since; wouldn't|won't|would_not|not|isn't|never move|moving|budge|budging|shift|shifting|spin|let_go|crack_loose; already stripped|rounded; concreted|cemented|tiled|paved|asphalted|decked|bricked over|in|up;
  `,
  notWords: spoken`
    get|fit|put|push|feed|squeeze|work|go the|my|a? camera|head|lens|scope|cable|camera_head|push_rod? in|into|inside|down|up|through the main|city|street|tank|house|lateral|pipe|line|sewer|bend|turn|roots|root|trap|mud|belly|offset|hole|crack|hill;
    rusted thick|bad|out|through|away; hands|feet|fingers|toes frozen|froze; hands are frozen|froze; lid 's|is|was off|up|in|over|down; cap|plug|lid|cover|grate is|'s|was over|in|up|off|under;
    i|we couldn't|can't|cannot|could_not use the|my|your bathroom|upstairs|word|sink|phone|restroom; couldn't|can't reach|open him|her|them|the_owner|the_agent|the_door|the_gate;
    buried but i|we|it; was stuck|rusted|seized|frozen|buried but; stuck at first; couldn't|can't get it|that to go; couldn't|can't get it|that around|past|through|by; couldn't use more;
    locked in; locked on; can't reach the main; couldn't reach the main; could not reach the main;
    couldn't reach the house; lens is covered; lens covered; covered in mud; covered with; is buried; buried ,;
    cap came off; under the slab; under a foot; under the concrete; under the patio; under the deck;
    under the addition; under the driveway; wouldn't open up about; under a roof; can't open;
    couldn't get a reading; packed with roots|grease|mud|gravel|debris|paper|sand|dirt|it|solid;
    packed with solid; blocked by roots|the; skip it ahead; can't use the word; can't reach it with;
    couldn't reach him; could not reach the city; could not reach the tank; can't reach the city;
    couldn't reach the city; can't get at; stuck in; stuck on; under the deck ,; rusted in the bottom;
    seized on; will not reach; cover 's; built the deck;
    camera|head|cable|it|car|truck 's|is|was not moving|budging; nearly|almost|half|just_about|close_to|darn_near|practically|about rusted|scaled|closed shut|solid|over|closed; not moving , it|the water|mind|much|any; water|flow|mind|pieces|nothing * not|isn't moving|shifting; i_'m not|i_am_not taking|pulling it any|further|anything; no go zone; one|it|plug|stoppage is|'s|was under|behind|below|beneath the slab|driveway|house|porch|patio|deck and|at|so_that|now|here;
    car|truck|van|skip|he|she|they|dog won't|wouldn't|isn't|not move|moving|shift|budge;
    gate|door|shed|window|garage|fence|back_door|front_door|latch|hood|trunk * rusted|painted|locked|stuck|nailed|seized shut|solid|tight|up?; gate|door|shed|window|garage|latch 's|is|was rusted|painted|locked|stuck|seized shut|solid|tight|up?; in the shed|house|garage|gate * locked; cap|plug|lid 's|is|was * rusted|stuck|tight|seized on but|and|though; was rusted|stuck|tight on but|and|though; rusted on but|and|though;
    connection|branch|wye|tee|inlet|lateral|line|stub * capped|bricked|plugged|sealed|cemented up|off|over|shut;
  `,
  examples: {
    says: [
      { text: 'The side yard cleanout is under a hot tub.', gives: { at: null } },
      { text: "There's a cleanout in the closet. I couldn't fit the camera in there.", gives: {} },
      { text: "The other cleanout won't open, the cap is seized.", gives: {} },
      { text: "There's a cleanout in the closet, but it's drywalled in.", gives: {} },
      { text: "The other plug won't budge.", gives: { at: null } },
      { text: 'The lid by the garage is frozen shut.', gives: { at: null } },
      { text: 'They built a deck over that cleanout.', gives: { at: null } },
      { text: 'There is a hatch out back, nailed shut.', gives: { at: null } },
      { text: 'The rear cleanout I could not get to.', gives: { at: null } },
      { text: 'The back cleanout is buried, no way to open it.', gives: { at: null } },
      { text: "The cap out back is rusted shut, couldn't get in there.", gives: { at: null } },
      { text: 'No access at the side of the house.', gives: { at: null } },
      { text: 'The riser by the shed is tarmacked over, so there is no getting into that.', gives: { at: null } },
      { text: 'Bath plug, the thread is stripped, could not get in there.', gives: { at: null } },
      { text: 'The hatch behind the boiler could not be opened.', gives: { at: null } },
    ],
    never: [
      'My hands are frozen in this weather.',
      'The plug was stuck but it came loose.',
      "I can't open this water bottle.",
      'You always need access to both ends.',
      'Got the cap off, no problem.',
      "There's access on the other side too.",
    ],
  },
  report: {
    meaning: 'An opening could not be used, so the part it leads to was not seen from there.',
    next: 'Have the opening freed or a cleanout put in, and the part looked at then.',
    glossary: 'No access: an opening that could not be used to put the camera in.',
  },
} as const satisfies Kind;
