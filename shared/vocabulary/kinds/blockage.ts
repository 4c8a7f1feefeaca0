import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const blockage = {
  name: 'blockage',
  group: 'defect',
  title: 'Blockage',
  plural: 'blockages',
  takes: ['to', 'position', 'percent'],
  isSpot: true,
  endsWhenLast: 'stopped',
  implies: 'stopped',
  tellsShare: true,
  words: spoken`
    blockage; blocked; blocked off; plugged; plugged up; plugged solid; stopped up; stopped up solid; clog; clogged;
    clogged up; obstruction; obstructed; stoppage; full stoppage; backup; jammed up; jammed; choked off;
    packed solid; dammed up; log jam; impassable; completely blocked; plug of; choked; choked up; choked solid;
    bunged; bunged up; bunged solid; occluded; occlusion; stuffed up|full|solid; packed full|tight; dam;
    log jammed; clog up solid; constipated; blocked up; blocked tight; solid blockage; plugged tight|off|full;
    clogging; plug up; dead plugged; plugged|choked|blocked|packed|stopped|jammed|clogged solid|up|full|tight? with it|that|this|the_stuff|the_same|stuff|junk|gunk|whatever|god_knows|everything;
    jammed|crammed|wedged|packed|stuffed full|solid|tight with?; stopped completely|solid|dead_solid|right_up|tight; completely|totally|fully|solid stopped; dead stoppage; bunged tight; clogged solid;
  `,
  signs: spoken`
    no|not|nothing * getting|going|get|go by|past|through it|that|this|there|here and|, no|nothing water|flow|is? moving|going;
    line 's|is stopped up; solid plug; packed off; shut off completely; closed off completely; nothing getting past;
    nothing gets past; nothing gets through; nothing getting through; water 's backed up; backed up behind;
    totally closed; sealed off; jammed solid;
    nothing 's|is|can getting|going|passing|moving|flowing|get|go|pass by|past|through|beyond|down;
    nothing gets|goes|passes|moves|flows|makes_it by|past|through|beyond|down; nothing passes;
    water can't|won't|cannot|doesn't|isn't|not get|getting|go|going|pass|passing|make|making it? by|past|through;
    water * not getting|going through|past|by;
    completely|totally|fully|solidly|near_enough|nearly|almost|entirely|absolutely|all closed|shut|closed_off|shut_off|closed_up|sealed|sealed_off;
    closed|sealed|shut right|clean|completely|almost|nearly off|up;
    line|pipe|drain|lateral 's|is * backed_up|stuffed|choked|shut; backed up to here;
    where it 's|is|was|keeps? backing|backed|backs up; full bore; cork in the bottle; corked;
    nothing moving|flowing|passing|draining; pipe|line|it|bore|drain stopped completely|solid|right_up|tight|up; got the pipe|line|drain|bore stopped|plugged|blocked|jammed|closed completely|solid|up|off?; can't get water through; nothing but a wall of;
  `,
  weakWords: spoken`
    a|big|solid|real|total|good|nice|another plug|jam|block; backed up; backing up; closed off; closed up; shut off; closed solid;
  `,
  notWords: spoken`
    round|around the? full|whole|entire bore;
    plugged in; plugged it; plugged into; plug it; around the block; block over; blocked me; blocked in;
    blocked the; backup camera; backup plan; a backup battery; had a backup; backup last; plugged the;
    my truck blocked; driveway blocked; blocked driveway; traffic jam; jammed my; paper jammed; blocked out;
    clog up; plugged solid with; backup generator; had backups; backed up twice; blocked my; blocked by;
    backup reel; backups; choked with|by|down|on|out; nothing goes|gets|got past|by me|him|her|you; stuffed with|animal|toy|in_my|bear|my;
    nose * plugged|stuffed|clogged; plugged nose; ears;
    plug in|on|back|out|of|from|for|for_the|to_the|cap|'s|is|here|there|threads|wrench;
    cleanout|clean_out|brass|test|the|my|rubber|expansion|that|old|iron|cap|pvc|plastic|threaded|access|their|this plug;
    the plug; my plug; spark plug; block of; block wall|foundation|house|party;
    cinder|engine|wood|the|a|my|your|this|city|next|one|two|cinderblock block; cinder|concrete blocks;
    traffic * backed_up|backing_up|jam;
    back|backed|backing it|him|me|her|us|this|that|the_camera|the_truck|a|one|two|up|right|out|in|off;
    i 'm|we_'re|i_'ve|am|'re|i|we|just|let_me back|backed|backing up; backed up against|to|into|on|the|my;
    i backed up; truck * backed|backing up; camera * backed|backing|back up;
    toilet|tub|sink|basement|shower|floor_drain * clogged|backed_up|backing_up|plugged|plugged_up|overflowed;
    packed solid|full|tight with; packed full of; jam on|sandwich|band|and; strawberry jam; toe jam; jam it|my;
    dam up; dam the; stuffed up nose; damn; shut off valve|the|water; water|valve|gas|power|main|stop * shut off;
    shut off the|your|his|her; road|street|lane|gate * closed|blocked off|up; closed off the|that|this;
    closed up the|that|shop; block off; call * blockage|clog|stoppage; history of; clog the;
    stopped solid at the; wedged in the|a|there; no flow in_the_creek|restrictions;
  `,
  examples: {
    says: [
      { text: "It's jammed full at nineteen.", gives: { at: 19 } },
      { text: "It's completely choked at forty.", gives: { at: 40 } },
      { text: "There's a plug at twenty nine.", gives: { at: 29 } },
      { text: 'Bunged up at thirty.', gives: { at: 30 } },
      { text: "Water can't get through at 45.", gives: { at: 45 } },
      { text: 'Blockage at forty six feet.', gives: { at: 46 } },
      { text: "It's plugged solid at 38.", gives: { at: 38 } },
      { text: "It's about ninety percent blocked at 20.", gives: { at: 20, percent: 90 } },
      { text: 'Nothing getting past at sixty one.', gives: { at: 61 } },
    ],
    unsure: [{ text: "I think there's a clog at 33.", gives: { at: 33, status: 'suspected' }, flag: 'suspected' }],
    never: [
      'Put the plug back in the cleanout.',
      'Traffic was backed up.',
      'I can back it up a foot.',
      'My truck is blocked in.',
      'They had a blockage last Christmas.',
      'No blockage.',
      'He plugged it into the wall.',
    ],
  },
  report: {
    meaning: 'The line is blocked or nearly so; sewage can come back into the house.',
    next: 'Use no water until a licensed plumber has cleared the line, then have it looked at again.',
    glossary: 'Blockage: a place where nothing, or hardly anything, passes.',
  },
} as const satisfies Kind;
