import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { is, joints } from '../word-groups.ts';

export const offsetJoint = {
  name: 'offset-joint',
  group: 'defect',
  title: 'Offset joint',
  plural: 'offset joints',
  takes: ['position', 'clock', 'degree', 'inches'],
  words: spoken`
    offset; offset joint; joint offset; offsetting; misaligned; misalignment; displaced joint; displaced;
    displacement; dropped joint; slipped joint; shifted joint; joint displacement; mismatch; mismatched;
    out of line; out of alignment; bad alignment; alignment issue; joint separation offset;
  `,
  signs: spoken`
    ${joints}|pipe|pipes|two|they|it isn't|ain't|aren't|not|is_not even|aligned|centered|lined; ${joints}|pipe|pipes 's|is|are off $; ${joints}|pipe|pipes 's|is|are off ,; that|it|this|joint 's|is # inch|inches off|out; inch|inches|quarter|half of? drop|step|lip|difference between|at_the_joint|at_this_joint|from; drop between the? two|pipes|pieces|lengths; bell|spigot|hub|pipe|joint 's|is|has ridden|rode|crept|risen|raised up; one|other|next side|end|pipe|piece|one 's|is|sits a_bit|a_little|slightly|way lower|higher;
    pipe|joint|section|piece|bell|spigot 's|is|has|was been|got? knocked|shoved|pushed|kicked|jumped|shunted|bumped sideways|over|out_of_line|to_one_side|off_line|down|up; jumped|jumps her|its|the track|tracks|seat|bell;
    don't line up; doesn't line up; didn't line up; do not line up; not lined up; not line up; not lining up;
    don't meet up; don't meet; sits|sitting|sat|set|sets low|lower|high|higher|proud;
    sits|sitting|set * low|lower|high|higher|proud|below than|than_its; sits|sitting|set * low|lower|high|higher|proud; aren't|isn't lined up;
    ${joints}|pipe|pipes|length ${is} dropped|slipped|shifted|stepped|kicked|jumped|slid|moved|crooked; ${joints} ${is} out of line|place|alignment|true;
    settled|sunk|sagged at the joint|hub|bell; ${joints}|next_pipe|next_length|other_pipe|downstream_pipe|upstream_pipe ${is} settled|sunk|sunken|sagged|gone_down;
    joint * dropped|slipped|shifted|stepped|kicked; one up , one down; bell|hub|joint went down;
    joint|pipe|pipes|they|it 's|is|are a_little|a_bit|a_little_bit|a_hair|a_touch|slightly|way|badly off;
    joint|pipe|pipes|they 's|is|are off by|about|maybe|half|an|a|quarter; ends|halves * miss each_other; not same level; not the same level;
    not level with; out of step; jumps down|up; steps down|up; stepped down; dropped at the joint; stands proud;
    slid down; downstream|next|upstream|other pipe|length|piece sits; shelf at; little shelf; kicked over; kicked out; off center;
    off line; not lined; lower than its; lower than the; lip|step|ledge|shelf at|in the joint; step at the;
    bumps|bump over|up_over|up|down a|the lip|ledge|step|shelf;
    's|is|are|was out by|of_line_by|about # inch|inches?; 's|is|are out by half|a|an|three|about|maybe; two|both ends|pieces|pipes|lengths|sections|edges|sides don't|doesn't|do_not|not|aren't|never|no_longer line|lined|match|meet|mate up? up?; ends|faces|pipes|lengths|joints don't|doesn't|do_not|not|aren't|never|no_longer line|lined|match|mate up?; isn't|not|aren't|never|ain't sitting? flush|concentric|square|level|true with|at|to|here?; climb|climbs|climbing|hop|hops|bump|bumps|bumping|jump|jumps|ride|rides|drop|drops|drops_off|fall|falls up|over|off|down|up_over a|the|this|that|an little|half_inch|small|bit_of_a? lip|edge|ledge|step|shelf; off to one side at; didn't|don't|never|not|isn't line|lined|lining it|them|these|that|those|the_pipes up; joint|pipe|pipes|section|length|bell|spigot|hub|next_one|it ${is} shifted|slipped|slid|moved|settled|kicked|jumped|dropped|stepped|knocked sideways|over|off|down|up|left|right|out; out of line by; ${joints} shifted|slipped|slid|moved|dropped|settled|stepped|jumped; one|pipe|piece|side|end 's|is|sits|sitting|rides lower|higher than the|its other|next|one;
  `,
  weakWords: [
    'lip',
    'step',
    'ledge',
    'half moon',
    'crescent',
    'hump',
    ...spoken`
  `,
  ],
  doubtfulWords: spoken`
    edge sticking up; misfit;
  `,
  notWords: spoken`
    offset the cost; to offset; offset by; watch your step; watch the step; step by; front step; front steps;
    by the steps; step back; next step; step down from; step up to; steps up; step on; stepped; steps up to a;
    steps down to; the steps; a step; mind the step; first step; step one; step two; one step; lip gloss;
    fat lip; my lip; chapped lips; ledge of; stepped in; step in; steps down to the; loose lips; on my lips;
    stepped away; step ladder; stepladder; step over; step away; steps to the; basement step; side step;
    step it up; back step; porch step; step outside; every step; lip service; zip your lip; stiff upper lip;
    step aside; concrete step; back steps; cellar step; cellar steps; baby step; steps; lip of it; lip of the liner|sleeve|lining|cleanout|tub|shower|basin|manhole;
    liner 's lip; diameter|size steps|step up|down; steps|stepping|stepped|step up|down in|for|to * inch|size|diameter;
    steps|stepped|step up|down to a|the|two|three|four|five|six|eight; mind your|the step; step by step; pour lip;
    over the hump; take it off; half moon cleanout;
    camera|head|i|we|it|you|reel|cable hop|bump|jump|ride over|up|down the curb|curb|wall|fence|step; it 's|has|is moved|settled|dropped off|down|over|up|out to|in|here|there|now|by; isn't square|level with|to me; house|slab|porch|foundation|ground|dirt|trench|street|yard ${is} settled|sunk|dropped|moved|shifted;
  `,
  misheard: [
    { heard: 'upset joint|joints', said: 'offset joint', needs: 'nothing' },
    { heard: 'dis_placed_joint|this_placed_joint', said: 'displaced joint', needs: 'nothing' },
    { heard: 'enough at joint', said: 'offset joint', needs: 'nothing' },
    {
      heard: 'nozzle_joint|offsite_joint|office_at_joint|off_side_joint|often_joint|upset',
      said: 'offset joint',
      needs: 'nothing',
    },
    { heard: 'off_site|of_set|outset|offside', said: 'offset', needs: 'distance' },
    { heard: 'officer|often|offsite|off sight', said: 'offset', needs: 'article' },
  ],
  examples: {
    says: [
      {
        text: "An offset at nine feet, half an inch. Now that I'm on it, three quarters.",
        gives: { at: 9, inches: 0.75 },
      },
      { text: 'At 21 the joint is two inches off.', gives: { at: 21, inches: 2 } },
      { text: 'Ten feet, tiny step.', gives: { at: 10, degree: 'light' } },
      { text: "It's out by half an inch at twenty three.", gives: { at: 23, inches: 0.5 } },
      { text: 'Offset at nine feet, half an inch, no, three quarters.', gives: { at: 9, inches: 0.75 } },
      { text: 'Offset joint at fourteen feet, about half an inch.', gives: { at: 14, inches: 0.5 } },
      { text: 'The joint has dropped at twenty two.', gives: { at: 22 } },
      { text: 'Slight offset at 36, to the left.', gives: { at: 36, degree: 'light', position: 'left' } },
      { text: "There's a lip at fifty one, a quarter inch.", gives: { at: 51, inches: 0.25 } },
      { text: "The pipes don't line up at nine and a half.", gives: { at: 9.5 } },
      { text: 'The joint has settled at 23, about half an inch.', gives: { at: 23, inches: 0.5 } },
      { text: "The joint's a little bit off at 23.", gives: { at: 23, degree: 'light' } },
      { text: 'A ledge at 61 on the bottom.', gives: { at: 61, position: 'bottom' } },
    ],
    unsure: [
      { text: "There's an upset joint at thirty feet.", gives: { at: 30 }, flag: 'word-unsure' },
      { text: "I believe that's an offset at 44.", gives: { at: 44, status: 'suspected' }, flag: 'suspected' },
      { text: 'The bell has ridden up at fourteen.', gives: { at: 14 }, flag: 'word-unsure' },
    ],
    never: [
      "If the ground moves you'll get an offset.",
      'An offset is when one pipe sits lower than the next.',
      'No offsets.',
      'Watch your step by the tank lid.',
      'The pipe steps down to three inch at sixteen.',
    ],
  },
  report: {
    meaning: 'The two ends at a joint do not line up, which makes a lip where paper and solids can catch.',
    next: 'Watch the place, and have it repaired if solids collect or soil shows.',
    glossary: 'Offset joint: a joint whose two pipe ends do not line up.',
  },
} as const satisfies Kind;
