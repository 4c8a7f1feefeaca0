import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const linerDefect = {
  name: 'liner-defect',
  group: 'defect',
  title: 'Liner defect',
  plural: 'liner defects',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  weakNeeds: 'notice',
  words: spoken`
    liner defect; lifted liner; liner wrinkle; fin in the liner; delamination; bubble in the liner; liner blister; liner bubble; lining defect;
    fold|crease|ripple|wrinkle|wrinkles|bulge|fin|tear|rip|split|dimple|soft_spot|flap|lump|ridge|pucker|blister|bubble|buckle|crinkle in|on|of the|this|that liner|lining;
    puckered; crinkled; delaminating; debonded; unbonded; annular gap|space; wrinkly;
    torn|ripped|failed|failing|loose|lifted|wrinkled|bubbled|blistered|peeling|collapsed|buckled|delaminated|sagging|baggy|detached|split|uncured|bulging|folded <liner>;
    liner failure; lining failure; failed lining; longitudinal wrinkle; longitudinal fin;
  `,
  signs: spoken`
    flap|tongue|strip|tail|sheet|piece|bit|edge|end|corner|curtain of the? liner|lining|liner_material|sleeve|resin * hangs|hanging|hang|droops|drooping|loose|lifted|lifts|down|torn|dangling|dangles|peeling;
    liner|lining 's|is|has|looks|edge lifted|lifting|peeled|peeling|separated|separating|bubbled|bubbling|blistered|delaminated|delaminating|torn|tore|sagging|loose|flapping|hanging|folded|buckled|wrinkled|bunched|ripped|split|pulled;
    liner|lining * lifted|lifting|peeled|peeling|separated|bubbled|blistered|delaminated|torn|sagging|loose|flapping|folded|buckled|bunched|ripped|pulled_away|come_loose;
    peeled up off|from the pipe; peeled up; peeling off; lifted off; lifted at the edge; lifted edge;
    edge * lifted|peeled|curled|loose; fold in the liner; ripple in the liner; bubble in the lining;
    bulge in the liner; tear in the liner; rip in the liner; curled up; bunched up; crease in the liner;
    fold in the lining; ripples in the liner; liner came loose;
    liner|lining 's|is|has|was|edge lifted|lifting|peeled|peeling|separated|separating|bubbled|bubbling|blistered|delaminated|debonded|torn|sagging|sagged|loose|flapping|hanging|folded|buckled|buckling|wrinkled|wrinkling|bunched|ripped|split|failed|failing|collapsed|puckered|bulging|bulged|creased|rippled|curled|detached; liner|lining 's|is|has been|all|just|started|come|looking lifted|lifting|peeled|peeling|separated|separating|bubbled|bubbling|blistered|delaminated|debonded|torn|sagging|sagged|loose|flapping|hanging|folded|buckled|buckling|wrinkled|wrinkling|bunched|ripped|split|failed|failing|collapsed|puckered|bulging|bulged|creased|rippled|curled|detached; liner|lining 's|has|has_got|'s_got a rip|tear|fold|crease|wrinkle|bubble|bulge|blister|split;
    <liner> wrinkles|wrinkled|failed|collapsed|folded|folds|bulges|tore|split|sags|sagged|buckled|puckers|peels|bubbles|bubbled|came_loose|came_away|let_go|caved|caved_in|lifts|bunches|bunched;
    liner|lining pulled|pulling|coming|came|come|falling|fell|fallen|broke|broken|let|letting away|loose|off|down|free|go; liner|lining 's|is|has pulled|pulling|coming|came|come|falling|fallen|broken|let away|loose|off|down|free|go;
    <liner> pulled|pulling|coming|came|come|falling|fell|fallen away|off|loose|down;
    liner|lining didn't|did_not|never|hasn't|doesn't bond|stick|cure|adhere|set; liner|lining never|isn't|is_not|wasn't bonded|stuck|cured|adhered|tight|seated; liner 's|is not bonded|stuck|cured|tight;
    liner|lining * not bonded|stuck|cured; resin didn't|did_not|never|hasn't|not cure|cured|set|harden;
    dry spot in the <liner>; loose|lifted|raised|curled|frayed|ragged edge|end|lip of the <liner>;
    lifted|lifting|lifts|peeled|peeling|come|came|curling|bunched|puckered|pulled away|off|up from|off|at the wall|pipe|host;
    edge|end 's|is|has|of_it * lifted|lifting|peeled|peeling|curled|curling|loose|frayed;
    liner|lining|sleeve 's|is|has ballooned|ballooning|inflated|drooped|drooping|dropped|slumped|pulling|shrunk|twisted|stretched|crushed|squashed|pushed|caved in|down|up|out|off|away?; liner|lining|sleeve * hanging|drooping|dangling|flapping|across; flap|tongue|strip|piece of the? liner|lining left|sticking|hanging|across|remaining; cut|opened only|just? halfway|half_way|partway|partly|half|part_way; not|never|isn't|wasn't fully|all_the_way|properly cut|reinstated|opened out|up|open?; edge|lip of it|the_liner|liner * proud|up|loose|sticking;
    bit|piece|edge|corner|flap|strip of the? liner|lining|sleeve 's|is|has? come|came|coming|hanging|pulled|peeled|lifted|let away|loose|off|down|go|back|up;
  `,
  weakWords: spoken`
    wrinkle; wrinkled; wrinkling; fold; crease; pucker; blister;
  `,
  notWords: spoken`
    wrinkle in time; new wrinkle; bubble gum; blister on my; paint is peeling; bubbles in the water; bubble in the;
    my wrinkles; blisters on; wrinkles on; blister on; wrinkled my; my * wrinkled|wrinkle|wrinkles|blister|blisters;
    shirt|forehead|face|skin|map|paper|suit * wrinkled|wrinkles; fold it|up|in_half|the; folded up;
    liners can|will|tend|always|usually|often; can|may|might|could|would wrinkle|bubble|fold|lift|peel|blister|fail;
    wrinkle to; pants; line * crease; blister pack; can liner; bag liner; trash liner; truck bed liner; bed liner;
    rubber|gasket|boot|seal|material|paper|rag|rags|wipes|cable|hose|carpet 's|is|are|has * bunched|peeled|folded|wrinkled|curled up|off|away|back?; the material|paper bunched; without bunching|wrinkling|folding|bunching_up; paint|label|tape|sticker * peeled|peeling; cut only half;
  `,
  misheard: [
    { heard: 'linear lifted|wrinkled|peeled', said: 'liner lifted', needs: 'nothing' },
    { heard: 'wrinkler|rinkles|wrinkly', said: 'wrinkle', needs: 'nothing' },
    {
      heard: "linear|lineup 's|is|has lifted|peeled|wrinkled|torn|loose",
      said: 'liner lifted',
      needs: 'nothing',
    },
  ],
  examples: {
    says: [
      { text: "The liner's wrinkled at 10. It's bubbled at 23. Strike the bubble.", gives: { at: 10 } },
      { text: 'The liner has ballooned in at twenty four.', gives: { at: 24 } },
      { text: 'A flap of the liner hangs down at sixteen.', gives: { at: 16 } },
      { text: 'Fold at thirty two feet.', gives: { at: 32 } },
      { text: "The lining's coming away at eighteen, left side.", gives: { at: 18, position: 'left' } },
      { text: 'Bulge in the liner at 44.', gives: { at: 44 } },
      { text: "The liner didn't bond at 27.", gives: { at: 27 } },
      { text: 'Wrinkle in the liner at thirty one feet.', gives: { at: 31 } },
      { text: "The liner's lifted at 24, on the bottom.", gives: { at: 24, position: 'bottom' } },
      { text: 'Liner is bubbled from 40 to 42.', gives: { at: 40, to: 42 } },
      { text: 'Delamination at fifty five.', gives: { at: 55 } },
    ],
    unsure: [
      { text: 'The linear is lifted at 37 feet.', gives: { at: 37 }, flag: 'word-unsure' },
      { text: "I think the liner's peeling at 19.", gives: { at: 19, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'A bad liner looks like a wrinkled sleeve.',
      "The carpet's bunched up under the reel.",
      'My shirt is all wrinkled.',
      'A liner can wrinkle on a bend.',
      'Cheap liners usually wrinkle.',
      'No wrinkles in the liner.',
      'He said the old liner tore and they redid it.',
    ],
  },
  report: {
    meaning: 'The lining of the pipe is not smooth or not tight here, which can catch solids or let water behind it.',
    next: 'Have the company that installs liners look at it.',
    glossary: 'Liner defect: a wrinkle, lift or tear in the lining of a pipe.',
  },
} as const satisfies Kind;
