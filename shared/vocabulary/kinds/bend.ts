import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const bend = {
  name: 'bend',
  group: 'fitting',
  title: 'Bend',
  plural: 'bends',
  takes: ['position', 'angleDeg'],
  isSideways: true,
  signsYield: true,
  words: spoken`
    change of|in direction|alignment; direction change; changes|change direction;
    bend; elbow; long sweep; sweep; ell; long turn; quarter bend; eighth bend; sixteenth bend; street elbow;
    swept bend; sweeping bend; dogleg; dog leg; knuckle bend; long radius; curve of; quarter turn;
  `,
  signs: spoken`
    kink|jog|dogleg|dog_leg|swing|turn in the|our|this run|line|pipe; line|pipe|it|she|run|we goes|go|heads|head|bears|bear|leans|lean|veers|veer|swings|swing|curves|curve|bends|turns|turn|hooks|jogs|cuts|angles|doglegs off|hard|back|over|gently|again|slightly? left|right , it_'s|a|soft|gentle|slow|long|sharp|hard; we|i lean|bear|veer|swing|curve|hook|jog|angle off|hard|back|over|gently? left|right; heel of the|your stack|riser;
    turns|turn|turning|swings|swing|swinging|jogs|jog|veers|veering|hooks|hooking|curves|curving|bends|bending|sweeps|sweeping|bears|bearing|cuts|kicks|dives|doglegs off|over|hard|sharp|sharply|slightly|gently? left|right;
    turns|turn|turning|swings|swinging|jogs|veers|veering|curves|curving|bends|bending|sweeps|bears|bearing|hooks|hooking|kicks|goes|heads off|over|hard|sharply|slightly|around|a_little|a_bit? to|toward the left|right;
    pipe|line turns|bends|curves|jogs here|there|at|again|a_little|slightly; makes|takes|does|make|takes_us a|another|its sharp|hard|slow|gentle|big? turn|bend|curve|jog|left|right;
    turn to|toward the left|right; hard left; hard right; it turns ,; it turns; goes|go|going around a|the corner; a turn at; curve to the left|right;
    hang|hangs|hanging a left|right; make|making|makes|take|taking|takes a|another|its|hard|sharp|slow|gentle left|right at|here|there|now|turn|hand; swings|takes|turns|sends|brings|puts|pushes|kicks|throws|carries|pulls me|us|it|the_camera|the_head|you around|off|over|hard|to|to_the|round? left|right; around|round the|a|this corner; goes|went|going|go|coming|come around|round a|the|another bend|corner|curve;
  `,
  notWords: spoken`
    on the bend; clean sweep; elbow grease; bend over; my elbow|elbows; round the bend; sweep the; bend down;
    turns out; turns to; turns into; turns straight; turns down; turns vertical; turns up; your elbow|elbows;
    camera|head|lens turns|turn|turning; turn the camera; turn to the left|right at the light; turn right|left on|at the;
    turn right around; turns right around; turn right back; kicks over; kicks off; bend in the road; elbows;
    learning curve; turn left on|onto; turning right around; hard right now; street bends|turns|curves|jogs left|right;
    road|driveway|sidewalk|hallway bends|turns|curves left|right; turn to the left|right and; bends the truth; wheel left|right;
    make a left|right on|at_the_light|onto|out|into; around the corner from|on|store|is|'s_a|there|we|i; hang a left|right on|at; just around the corner; turned around;
  `,
  examples: {
    says: [
      {
        text: 'A bend at five feet, a slow one, to the left, twenty two and a half.',
        gives: { at: 5, position: 'left', angleDeg: 22.5 },
      },
      { text: 'Bend at twelve, ninety.', gives: { at: 12, angleDeg: 90 } },
      { text: "There's a kink in the run at twenty two.", gives: { at: 22 } },
      { text: 'Then it swings me left at nine.', gives: { at: 9, position: 'left' } },
      { text: 'A bend at fourteen. Forty five, no, it keeps turning. Ninety.', gives: { at: 14, angleDeg: 90 } },
      { text: "There's a change of direction at thirteen.", gives: { at: 13 } },
      { text: 'Nine feet, an eighth bend, left.', gives: { at: 9, position: 'left', angleDeg: 45 } },
      {
        text: "There's a ninety at twelve, then forty five at fourteen.",
        gives: [
          { at: 12, angleDeg: 90 },
          { at: 14, angleDeg: 45 },
        ],
      },
      {
        text: 'Forty five degree bend at twelve feet, turning left.',
        gives: { at: 12, position: 'left', angleDeg: 45 },
      },
      { text: 'We go around a ninety at thirty one.', gives: { at: 31, angleDeg: 90 } },
      { text: 'Twenty four feet, it swings to the right.', gives: { at: 24, position: 'right' } },
      { text: "There's a twenty two and a half at 16 feet.", gives: { at: 16, angleDeg: 22.5 } },
      { text: 'The line jogs right at 44.', gives: { at: 44, position: 'right' } },
      { text: 'Nine feet, we bend off to the left.', gives: { at: 9, position: 'left' } },
      { text: 'Long sweep at fifty three, headed left.', gives: { at: 53, position: 'left' } },
    ],
    unsure: [
      {
        text: 'Might be a bend at forty, could just be the camera leaning.',
        gives: { at: 40, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: [
      "We're on Otter Bend, number sixty six.",
      'I banged my elbow on the meter box.',
      'A ninety is the last thing you want under a slab.',
      "It's ninety degrees out here already.",
      'Where the street bends left you come to the hardware store.',
      'Turn the camera to the left for me.',
      'No bends, straight as a gun barrel.',
    ],
  },
  report: {
    meaning: 'The line changes direction here.',
    next: 'Nothing to do.',
    glossary: 'Bend: a fitting that turns the line, named by its angle.',
  },
} as const satisfies Kind;
