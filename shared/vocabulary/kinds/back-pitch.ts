import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const backPitch = {
  name: 'back-pitch',
  group: 'defect',
  title: 'Back pitch',
  plural: 'back pitches',
  takes: ['to', 'inches'],
  words: spoken`
    back pitch; back pitched; backpitch; backpitched; negative slope; negative grade; negative pitch;
    negative fall; reverse slope; reverse grade; reverse pitch; reverse fall; back grade; back graded;
    backgrade; backfall; back fall; adverse grade; adverse slope; back slope; back sloped; backslope;
    adverse fall; wrong slope; counter slope; contrary fall;
  `,
  signs: spoken`
    slopes|slope|sloping|sloped|pitched|pitches|pitching|falls|falling|graded|runs|running|tilts|tilted|leans|flows|flowing|going|goes the wrong way;
    slopes|sloping|pitched|pitches|falls|tilts|tilted|leans|runs|running|flowing|flows back|backward|backwards|uphill|away;
    laid uphill; running uphill; runs uphill; uphill; running back at me;
    running back toward|towards the house|me; water 's following me; water * coming back at me;
    pitched backwards; pitched back; climbs after; climbs; pipe climbs; rises going; slope is wrong;
    slope 's wrong; sloping back toward|towards; slopes back toward|towards; backwards section; graded wrong;
    pitched wrong; wrong pitch; wrong fall; wrong grade; tilted back; water wants to run back;
    falls toward|towards the house; falls back toward|towards;
  `,
  notWords: spoken`
    uphill to the house; uphill battle; uphill side; uphill neighbor; climbs out of; climbs over; up hill both;
    uphill from; the hill climbs; uphill both ways; uphill lot; uphill toward; climb;
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
      { text: 'Back pitch from twenty to thirty feet.', gives: { at: 20, to: 30 } },
      { text: "At 26 it's sloping the wrong way.", gives: { at: 26 } },
      { text: 'Negative slope here at fourteen.', gives: { at: 14 } },
    ],
    unsure: [
      { text: 'Back peach at thirty one feet.', gives: { at: 31 }, flag: 'word-unsure' },
      { text: "I think we've got back pitch at 35.", gives: { at: 35, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "It's an uphill battle with that seller.",
      'Back pitch will always leave paper behind.',
      'No back pitch.',
      'The driveway slopes back toward the house.',
    ],
    notYet: [{ text: 'Runs uphill from 40 to 44.', gives: { at: 40, to: 44 } }],
  },
  report: {
    meaning: 'The line slopes the wrong way here, so water stands and solids settle.',
    next: 'Have a licensed plumber check the slope and say whether the length must be laid again.',
    glossary: 'Back pitch: a length of pipe that slopes toward the house instead of away from it.',
  },
} as const satisfies Kind;
