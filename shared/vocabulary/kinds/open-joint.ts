import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const openJoint = {
  name: 'open-joint',
  group: 'defect',
  title: 'Open joint',
  plural: 'open joints',
  takes: ['position', 'clock', 'degree', 'inches'],
  words: spoken`
    open joint; joint gap; gap; gapped; gapping; gaping; gaping joint; separated joint; separation; separated;
    separating; pulled apart; pulled joint; spread joint; joint opening; disconnected; disjointed; unseated;
    unseated joint;
  `,
  signs: spoken`
    joint|joints|hub|bell 's|is|are|has|might_be|may_be|could_be open;
    joint|joints|hub|bell * open|opened|apart|gapped|separated;
    joint * pulled|come|came|spread|opened open|apart|out|up; pulled open; pulled out; come apart; coming apart;
    came apart; opened up; it 's|is open , a|an|half|about|maybe|by; it 's|is open a|an|half|about|maybe|by;
    open about; opened about; open up at; joint * open; could be open; not seated; not fully seated;
    not pushed home; not home; never pushed home; not all the way in; isn t seated; isn't seated; wide joint;
    joint is wide open; wide open joint; backed out of the hub; out of the hub; backed out; stick my pinky;
    open joints; joint pulled; wide gap; spigot|pipe pulled|backed out; joint that 's open|pulled|come|apart;
    joint there is open; see dirt between; daylight in the joint; open seam;
  `,
  notWords: spoken`
    minding the gap; mind the gap; age gap; open house; keep it open; open the; opened the; the gap year;
    gap teeth; gap toothed; wage gap; front door open; cleanout is open; cleanout open; opened up fine;
    pulled out the; opened it up; door open; open it; open space; open up the; is open ,  and; got it open;
    gap in the fence; gap in the trees; pulled out of; wide open; stops the gap; cap is open; opened up the;
    opened up a; separated from my; came apart in my; cleanout is open ,; gap insurance; come apart in my;
    separated from her; separated from his;
  `,
  examples: {
    says: [
      { text: 'Open joint at twenty four feet.', gives: { at: 24 } },
      { text: 'Half inch gap at 33.', gives: { at: 33, inches: 0.5 } },
      { text: "Joint's pulled apart at forty seven, on the top.", gives: { at: 47, position: 'top' } },
      { text: 'Fifty eight, that bell is not fully seated.', gives: { at: 58 } },
    ],
    unsure: [
      { text: "Maybe an open joint at 40, can't be sure.", gives: { at: 40, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'No gaps.',
      'An open joint lets the roots in.',
      "The joint is tight, it's not open at all.",
      "There's a gap in the fence we can walk through.",
    ],
  },
  report: {
    meaning: 'The two ends at a joint have come apart, which leaves a gap where sewage can leave and roots can enter.',
    next: 'Have a licensed plumber look at the gap and say whether it needs closing.',
    glossary: 'Open joint: a joint whose two pipe ends have pulled apart and left a gap.',
  },
} as const satisfies Kind;
