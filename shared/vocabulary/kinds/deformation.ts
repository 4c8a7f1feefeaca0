import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { is, roof } from '../word-groups.ts';

export const deformation = {
  name: 'deformation',
  group: 'defect',
  title: 'Deformation',
  plural: 'deformations',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: spoken`
    deformed; deformation; deforming; out of round; egged; egg shape; egg shaped; eggs; ovaled; oval; ovalized;
    oval shaped; ovality; squashed; squished; flattened; flattening; pinched; pinching; dented; dent; misshapen;
    deflected; deflection; deflecting; squeezed; ovaling; egging; mashed; out of shape; distorted; distortion;
    oblong; buckled; blistered; squatted; ovalled; warped; bulged; bulge; bulging; crimped; kinked; kink; dimple; dimpled;
    dished; cupped; ovalling; oval shape|shaped; compressed; crumpled; bent out of shape; out of true; heaved; squeezed in; not round; flat sided; flat topped;
  `,
  signs: spoken`
    circle isn't|is_not|'s_not|not a circle;
    wall|walls|side|sides|left_wall|right_wall|left_side|right_side|top|roof pushes|presses|bows|bulges|comes|leans|caves|pokes in|inward|inwards; circle|it 's|is|isn't not? a circle; dent|ding|crease|dimple in the? ceiling|roof|top|crown|side|wall|pipe|floor|bottom;
    bore|pipe|opening|diameter|height 's|is|has|been|come|squashed|down? down by * half|third|quarter|percent|%; come|came|comes|pushed|squeezed down|in from the? top|crown|side|sides|left|right by;
    going out of round; gone out of round; lost its shape; losing its shape; not round anymore; no longer round;
    height gone; shaped like an egg; shape of an egg; football shaped; shaped like a football;
    looks like a football; looks like an egg; wants to go egg; like an egg; more of an egg; isn't round;
    not|isn't|ain't|no_longer round anymore|any_more|at_all|now?; round any more; shape 's|is going|gone; losing shape;
    ${roof}|side|sides|wall|walls|it|haunch ${is} pushed|pressed|squeezed|bowed|bowing|bent|mashed|pinched|pushing|flattened|squashed in|down|inward;
    sides|side|haunches ${is} come|coming|came|moved|closing in; wall|walls|side|sides ${is} squeezing|pinching|bowing|pressing in; gone flat; flat on top; flat from the top; went oval; goes oval;
    d shaped; pear shaped; kidney shaped; heart shaped; blistering; blisters; bubbled up; been squeezed;
    lost|loses|losing|lose its|it_'s|the|all? round|roundness|shape; like somebody|someone|you|they|something stepped|stood|sat|drove|parked|leaned|ran|step|sit|stand on|over|against; bottom|floor|invert ${is} pushed|heaved|humped|bowed|bulged|lifted|bent up|upward|upwards; not|isn't|ain't|no_longer|hardly|more a|the|of_a|much_of_a? circle|circular anymore|any_more?; not|isn't|no_longer true anymore|any_more; more of an|a|than oval|egg|d|football|than_a_circle; height|diameter|bore 's|is|has|has_been been? reduced|squeezed|squashed|lost|down by; dent|dents in the|it|this; wall|walls|side|sides bulge|bulges|bulging|bow|bows|bent in|out|inward; lost about|maybe? # %|percent of its height|round|shape|diameter; pushed|squeezed|squashed|pressed|bent|mashed out of round|shape|circle;
    more of a|an oval|egg|smile|d|football|lemon|teardrop|triangle|square|slot|kidney|mouth? than a circle|pipe|round;
  `,
  doubtfulWords: spoken`
    flat spot; flat spotted; flat spots; flat on one side;
  `,
  notWords: spoken`
    crushed; pinched nerve; eggs for; egg salad; dozen eggs; fried egg; eggs and; chicken eggs; oval office;
    dent in my; feeling squeezed; squeeze by; egg on; egg carton; squashed flat; flat out; collect eggs;
    buckled up; warped sense; my pinched; liner bulge; dented my; bacon and eggs; seat belt buckled;
    wax|mortar|grout|rubber|gasket|seal|ring|mud|grease|sleeve|boot|putty * squeezed|squished|bulging|bulged|bulge; frost heaved; heaved a; not round the|here|there|yet|to; wood is warped; squeezed by|past|through|out_of|into; compressed air;
    glue|primer|cement|solder|caulk|silicone|putty * squeezed|squished|bulging|bulge;
  `,
  misheard: [
    { heard: 'out_a_round|outer_round|auto_round|out_the_round', said: 'out of round', needs: 'nothing' },
    { heard: 'out_around', said: 'out of round', needs: 'distance' },
    { heard: 'edged out of round', said: 'egged out of round', needs: 'nothing' },
    { heard: 'edged', said: 'egged', needs: 'distance' },
    { heard: 'aged out of round', said: 'egged out of round', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: "Somebody's parked on this one, it isn't a circle anymore at twenty six.", gives: { at: 26 } },
      { text: "Collapse at thirty. Collapse is too strong. It's out of round.", gives: { at: 30 } },
      { text: 'Pipe is out of round from twenty to twenty six feet.', gives: { at: 20, to: 26 } },
      { text: 'Egg shaped at thirty three, lost about ten percent.', gives: { at: 33, percent: 10 } },
      { text: "It's squashed at 41, moderate.", gives: { at: 41, degree: 'moderate' } },
      { text: "It's lost its shape here at eighteen.", gives: { at: 18 } },
      { text: 'The crown has been pushed down at twenty seven.', gives: { at: 27, position: 'top' } },
      {
        text: 'Both sides have come in at 31, about fifteen percent.',
        gives: { at: 31, position: 'side', percent: 15 },
      },
      { text: 'It has gone flat on top from nine to twelve feet.', gives: { at: 9, to: 12, position: 'top' } },
    ],
    unsure: [
      { text: "There's a flat spot at nineteen.", gives: { at: 19 }, flag: 'word-unsure' },
      {
        text: 'Maybe a little out of round at fifty.',
        gives: { at: 50, degree: 'light', status: 'suspected' },
        flag: 'suspected',
      },
      { text: 'Edged out of round at 28 feet.', gives: { at: 28 }, flag: 'word-unsure' },
    ],
    never: [
      'Some wax got squeezed out of the ring when they set it.',
      'Not out of round at all.',
      'My reel got dented in the truck.',
      'Plastic gets squashed if they backfill it with rock.',
    ],
    notYet: [{ text: 'Orangeburg goes egg shaped with age.', gives: [] }],
  },
  report: {
    meaning: 'The pipe is no longer round, which narrows it and shows that it is under more load than it can carry.',
    next: 'Have a licensed plumber measure how far it is out of round.',
    glossary: 'Deformation: a pipe pressed out of its round shape; also called egg-shaped or oval.',
  },
} as const satisfies Kind;
