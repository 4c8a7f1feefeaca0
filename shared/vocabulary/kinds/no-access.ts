import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const noAccess = {
  name: 'no-access',
  group: 'limit',
  title: 'No access',
  plural: 'openings without access',
  takes: [],
  isPlaceless: true,
  words: spoken`
    no access; no way in; inaccessible; not accessible; inaccessible cleanout; could not be accessed;
    couldn't be accessed; can't be accessed; cannot be accessed; was not accessed; without access;
    no cleanout access;
  `,
  signs: spoken`
    rusted|painted|seized|frozen|corroded|stuck|glued|welded shut|solid|in|on|closed|tight;
    cap|plug|lid|cover|cleanout 's|is|was|has_been buried|rusted|seized|frozen|cross_threaded|stripped|paved|covered|locked|cemented|painted|blocked;
    it 's|is|was rusted|seized|frozen|stripped|cross_threaded|painted_shut;
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
  `,
  notWords: spoken`
    locked in; locked on; can't reach the main; couldn't reach the main; could not reach the main;
    couldn't reach the house; lens is covered; lens covered; covered in mud; covered with; is buried; buried ,;
    cap came off; under the slab; under a foot; under the concrete; under the patio; under the deck;
    under the addition; under the driveway; wouldn't open up about; under a roof; can't open;
    couldn't get a reading; packed with roots|grease|mud|gravel|debris|paper|sand|dirt|it|solid;
    packed with solid; blocked by roots|the; skip it ahead; can't use the word; can't reach it with;
    couldn't reach him; could not reach the city; could not reach the tank; can't reach the city;
    couldn't reach the city; can't get at; stuck in; stuck on; under the deck ,; rusted in the bottom;
    seized on; will not reach; cover 's; built the deck;
  `,
  examples: {
    says: [
      { text: 'The back cleanout is buried, no way to open it.', gives: { at: null } },
      { text: "The cap out back is rusted shut, couldn't get in there.", gives: { at: null } },
      { text: 'No access at the side of the house.', gives: { at: null } },
    ],
    never: [
      "I can't open this water bottle.",
      'You always need access to both ends.',
      'Got the cap off, no problem.',
      "There's access on the other side too.",
    ],
    notYet: [{ text: "The other plug won't budge.", gives: { at: null } }],
  },
  report: {
    meaning: 'An opening could not be used, so the part it leads to was not seen from there.',
    next: 'Have the opening freed or a cleanout put in, and the part looked at then.',
    glossary: 'No access: an opening that could not be used to put the camera in.',
  },
} as const satisfies Kind;
