import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const linerDefect = {
  name: 'liner-defect',
  group: 'defect',
  title: 'Liner defect',
  plural: 'liner defects',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: spoken`
    wrinkle; wrinkled; wrinkling; liner defect; lifted liner; liner wrinkle; fin in the liner; delamination;
    blister; bubble in the liner; liner blister; liner bubble; lining defect;
  `,
  signs: spoken`
    liner|lining 's|is|has|looks|edge lifted|lifting|peeled|peeling|separated|separating|bubbled|bubbling|blistered|delaminated|delaminating|torn|tore|sagging|loose|flapping|hanging|folded|buckled|wrinkled|bunched|ripped|split|pulled;
    liner|lining * lifted|lifting|peeled|peeling|separated|bubbled|blistered|delaminated|torn|sagging|loose|flapping|folded|buckled|bunched|ripped|pulled_away|come_loose;
    peeled up off|from the pipe; peeled up; peeling off; lifted off; lifted at the edge; lifted edge;
    edge * lifted|peeled|curled|loose; fold in the liner; ripple in the liner; bubble in the lining;
    bulge in the liner; tear in the liner; rip in the liner; curled up; bunched up; crease in the liner;
    fold in the lining; ripples in the liner; liner came loose;
  `,
  notWords: spoken`
    wrinkle in time; new wrinkle; bubble gum; blister on my; paint is peeling; bubbles in the water;
    bubble in the; my wrinkles; blisters on; wrinkles on; blister on; wrinkled my;
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
      'Cheap liners usually wrinkle.',
      'No wrinkles in the liner.',
      'He said the old liner tore and they redid it.',
    ],
    notYet: [{ text: 'My shirt is all wrinkled.', gives: [] }],
  },
  report: {
    meaning: 'The lining of the pipe is not smooth or not tight here, which can catch solids or let water behind it.',
    next: 'Have the company that installs liners look at it.',
    glossary: 'Liner defect: a wrinkle, lift or tear in the lining of a pipe.',
  },
} as const satisfies Kind;
