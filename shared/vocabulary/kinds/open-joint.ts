import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { earth, is, joints } from '../word-groups.ts';

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
    joint gaps; wide open joint; opened joint; parted joint; joint separation; open jointed;
  `,
  signs: spoken`
    two|both|pieces|pipes|ends|lengths have|'ve|has|are? pulled|drawn|moved|slid|come|drifted away|apart|back from? each_other|one_another?;
    ${joints} 's|is|are|has|might_be|may_be|could_be open; ${joints} * open|opened|apart|gapped|separated|parted|let_go;
    joint|joints|pipe|pipes|hub|bell|spigot * pulled|come|came|drawn|spread|opened|backed|worked|slid open|apart|out|up|loose|away;
    joint|joints|bell|hub|pipes|they|it 's|has|have|is parted|let_go|drawn|gapped; let go at the joint; pulled open;
    ${joints}|it|they|seam 's|has|have|is opened up; joint|pipe|pipes|it|coupling pulled out; come|came|coming apart at;
    it 's|has|have come|pulled apart; it 's|is open , a|an|half|about|maybe|by; it 's|is open a|an|half|about|maybe|by;
    open about; opened about; open up at; joint * open; could be open; not seated; not fully seated;
    not|isn't|wasn't|never|ain't|aren't|weren't * pushed|shoved|driven|seated|knocked|slid home|all_the_way_in|in_all_the_way|all_the_way_home|together;
    joint|spigot|pipe|bell * not home; never|didn't|did_not|not|wasn't|forgot_to * push|pushed|shove|shoved|drive|drove|seat|seated|slide|slid this|that|it|this_one|that_one|this_joint|that_joint|this_pipe|that_pipe|them|the_joint|the_pipe|the_spigot|the_bell home|all_the_way|in|together; never home; not all the way in|home; isn t seated; isn't seated; wide joint;
    joint is wide open; spigot|pipe|joint|end|it|slipped|slid|come|coming * out_of|out_from the|its hub|bell|socket; ${joints}|pipe backed|backing out; stick my pinky;
    open joints; joint pulled; wide gap; joint that 's open|pulled|come|apart;
    joint there is open; see|seeing|looking_at ${earth} between|in_the_joint|at_the_joint; daylight in the joint; daylight between the pipes|joints|two|ends; open seam;
    space between the pipes|joints|two|ends; ends don't touch;
    opening|space|slot|crevice at|in|between the|that|this|these|those|two? joint|joints|pipes|bells|hubs|ends|lengths; # inch opening|space at|in|between; isn't|not|wasn't|aren't|ain't|never all_the_way|fully|quite|really in|home|seated|together|closed; joint|joints|pipes|ends|lengths don't|doesn't|not|no_longer|aren't touch|touching|together|butted; ${joints}|pipe|spigot ${is} slid|worked|pulled|backed|drawn|come|crept|walked|pulling|backing|parting|coming back|out|apart|away|loose from|of|a? out_of? half|an|about|from|of|the? inch?; joint|pipes parted|separated|spread|opened; pull|pulls|pulling away from each_other|the_next|one_another;
  `,
  notWords: spoken`
    minding the gap; mind the gap; age gap; open house; keep it open; open the; opened the; the gap year;
    gap teeth; not in at|on|the; isn't in the|here|yet|there; gap year; space between the house|houses|walls|garage|trees; gap toothed; wage gap; front door open; cleanout is open; cleanout open; opened up fine;
    pulled out the; opened it up; door open; open it; open space; open up the; is open ,  and; got it open;
    gap in the fence; gap in the trees; pulled out of; wide open; stops the gap; cap is open; opened up the;
    opened up a; separated from my; came apart in my; cleanout is open ,; gap insurance; come apart in my;
    separated from her; separated from his;
  `,
  misheard: [{ heard: 'open_giant|open_join|open_joined|opened_joint|open_joy', said: 'open joint', needs: 'nothing' }],
  examples: {
    says: [
      { text: 'The joint at fourteen is open.', gives: { at: 14 } },
      { text: 'They never pushed that joint home, eighteen feet.', gives: { at: 18 } },
      { text: 'Open joint at twenty four feet.', gives: { at: 24 } },
      { text: 'Half inch gap at 33.', gives: { at: 33, inches: 0.5 } },
      { text: "Joint's pulled apart at forty seven, on the top.", gives: { at: 47, position: 'top' } },
      { text: 'Fifty eight, that bell is not fully seated.', gives: { at: 58 } },
      { text: 'The joint has let go at 30.', gives: { at: 30 } },
      { text: "The spigot isn't pushed home at 35.", gives: { at: 35 } },
      { text: 'You can see soil between the pipes at 18.', gives: { at: 18 } },
    ],
    unsure: [
      { text: "Maybe an open joint at 40, can't be sure.", gives: { at: 40, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'No gaps.',
      "Nobody's home, so the water is off.",
      'They opened up a second one on the right.',
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
