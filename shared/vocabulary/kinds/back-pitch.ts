import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const backPitch = {
  name: 'back-pitch',
  group: 'defect',
  title: 'Back pitch',
  plural: 'back pitches',
  takes: ['to', 'inches'],
  words: spoken`
    back pitch; back pitched; backpitch; backpitched; negative slope; negative grade; negative pitch; negative fall;
    reverse slope; reverse grade; reverse pitch; reverse fall; back grade; back graded; backgrade; backfall;
    back fall; adverse grade; adverse slope; back slope; back sloped; backslope; adverse fall; wrong slope;
    counter slope; contrary fall; inverse|inverted|reversed|backwards|backward|opposite slope|grade|fall|pitch;
    adverse pitch|gradient; negative gradient; backfalling; back falling; back falls; backpitching; back pitching;
    back grading; wrong way slope|fall|pitch|grade; wrong direction slope|fall|pitch|grade;
    uphill section|run|grade|slope|length|stretch; back leaning; counter grade|fall|pitch;
    reverse graded|pitched|sloped;
  `,
  signs: spoken`
    gradient|grade|slope|fall|pitch|invert reverses|reversed|is_reversed|turns_adverse|is_adverse|goes_the_wrong_way|runs_backward|runs_backwards|goes_negative|is_negative|goes_uphill|turns_around; adverse gradient|grade|slope|fall;
    slopes|slope|sloping|sloped|pitched|pitches|falls|falling|graded|runs|running|tilted|tipped|flowing|draining|going|goes|laid|installed in? the? wrong|opposite way|direction;
    slopes|sloping|pitched|pitches|falls|tilts|tilted|leans|runs|running|flowing|flows back|backward|backwards|uphill;
    laid uphill; running uphill; runs uphill; running back at me; running back toward|towards the house|me;
    water 's following me; water * coming back at me; pitched backwards; pitched back; climbs after; climbs;
    pipe climbs; rises going; slope is wrong; slope 's wrong; sloping back toward|towards;
    slopes back toward|towards; backwards section; graded wrong; pitched wrong; wrong pitch; wrong fall;
    wrong grade; tilted back; water wants to run back; falls toward|towards the house; falls back toward|towards;
    slopes|slope|sloping|sloped|pitched|pitches|pitching|falls|falling|graded|grades|runs|running|tilts|tilted|leans|leaning|tips|tipped|tipping|flows|flowing|drains|draining|going|goes|heads|heading|laid|installed|built|set in? the? wrong|opposite|reverse way|direction;
    slopes|sloping|sloped|pitched|pitches|falls|falling|tilts|tilted|tilting|leans|tips|tipped|tipping|runs|running|graded|laid|installed|built|set|put_in|drains|draining|heads|heading back|backward|backwards|uphill;
    laid|set|put|built it|this|that|them|the_pipe|this_piece|this_length|this_section|this_joint in? backward|backwards|uphill|back_pitched;
    slope|fall|grade|pitch|pipe|line|section 's|is|goes|going|gone|runs|all? the_wrong_way|the_wrong_direction|backwards|backward|reversed|inverted|uphill;
    slope|fall|grade|pitch 's|is going|running|coming back|back_toward|back_towards;
    slope|fall|grade|pitch comes|goes|runs back toward|towards|to|at me|us|the_house|the_camera;
    falls|falling|slopes|sloping|sloped|pitched|pitches|graded|tilts|tilted|drains|leans the other way|direction;
    no fall , it 's|is going the other way;
    water 's|is|that_'s|just|wants_to? running|flowing|coming|rolling|draining|going|run|flow|roll|drain back|backward|backwards;
    water runs|flows|comes|rolls|drains|goes back|backward|backwards; water * toward|towards me|us instead;
    tips|tipping|tipped|tilts|tilted|leans back|backward|backwards;
    goes|going|heads|heading|go|went|climbing uphill; going|goes up instead of down; climbing; climbs from;
    climbs at;
    rises|climbs|goes|runs|slopes|rising|climbing|going|runs_up up? instead of|not falling|down|dropping|falling_away|fall|downhill; it|water 's|is actually|just|even|all? coming|running|flowing|rolling|heading back at|toward|towards us|me|the_camera|the_house|the_cleanout; flow_line|flowline|invert|floor|bottom|pipe rises|rising|climbs|climbing|is_rising|is_climbing|'s_rising|'s_climbing; tipped|tips|tilted|pitched|sloped|graded|angled|leans toward|towards the house|me|us|building|back;
    slope|fall|grade|pitch|it|pipe|line|section 's|has|have gone|going|laid|pitched|been_set|been_laid|set the? wrong|opposite way|direction|way_round;
  `,
  weakWords: spoken`
    uphill;
  `,
  notWords: spoken`
    uphill battle; uphill side; uphill neighbor; climbs out of; climbs over; up hill both; the hill climbs;
    uphill both ways; uphill lot; uphill toward; climb; uphill from the|here|us|him|her|you|your|my|our;
    street|road|lot|driveway|yard|lawn|land|hill|ground|drive|property|sidewalk|site|floor|slab|path|block * uphill|back|backward|backwards;
    street|road|lot|driveway|yard|lawn|land|ground|drive|property|floor|slab * the? wrong way|direction;
    lot|driveway|yard|lawn|patio slopes|sloped|pitches|pitched;
    walk|walked|walking|drive|drove|pushing|push|carry|carried * uphill; walked uphill; parked * wrong way;
    put|set|goes|going|run|running|running_it|set_it|went back to|in|on|over|up|down|again|out|through;
    climbing out|over|up|down|on|in;
    camera|i|we|i_'m|we_'re|cable|push 's|is? climbing|going|heading uphill|back|backward|backwards;
    i|we go|went|run|ran back; running back|backwards and;
    heading|head|headed|run|runs|drains back up|down|in|out|over|now|here; goes|going|heading back;
    line|pipe runs|goes|heads|going|run back;
  `,
  misheard: [
    {
      heard: 'back_beach|back_pit|back_peach|backpage|that_pitch|black_pitch|back_patch|bad_pitch',
      said: 'back pitch',
      needs: 'nothing',
    },
  ],
  examples: {
    says: [
      { text: 'The gradient reverses at thirty seven.', gives: { at: 37 } },
      { text: 'Runs uphill from 40 to 44.', gives: { at: 40, to: 44 } },
      { text: 'They laid this piece backwards, eighteen to twenty four.', gives: { at: 18, to: 24 } },
      { text: 'The fall goes the wrong direction at 31.', gives: { at: 31 } },
      { text: 'Uphill at fifteen feet.', gives: { at: 15 } },
      { text: "Water's running back at twelve feet.", gives: { at: 12 } },
      { text: 'Back pitch from twenty to thirty feet.', gives: { at: 20, to: 30 } },
      { text: "At 26 it's sloping the wrong way.", gives: { at: 26 } },
      { text: 'Negative slope here at fourteen.', gives: { at: 14 } },
    ],
    unsure: [
      { text: 'A bit uphill at nineteen, by the look of it.', gives: { at: 19 }, flag: 'word-unsure' },
      { text: 'Back peach at thirty one feet.', gives: { at: 31 }, flag: 'word-unsure' },
      { text: "I think we've got back pitch at 35.", gives: { at: 35, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'We walked uphill to get here.',
      'The lot runs uphill.',
      "I'll go back to the house.",
      "It's an uphill battle with that seller.",
      'Back pitch will always leave paper behind.',
      'No back pitch.',
      'The driveway slopes back toward the house.',
    ],
  },
  report: {
    meaning: 'The line slopes the wrong way here, so water stands and solids settle.',
    next: 'Have a licensed plumber check the slope and say whether the length must be laid again.',
    glossary: 'Back pitch: a length of pipe that slopes toward the house instead of away from it.',
  },
} as const satisfies Kind;
