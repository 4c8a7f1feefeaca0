import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const patch = {
  name: 'patch',
  group: 'fitting',
  title: 'Earlier repair',
  plural: 'earlier repairs',
  takes: ['to', 'material', 'inches', 'position'],
  words: spoken`
    patch; spot repair; repair; old repair; point repair; repair sleeve; repair section; splice; spliced in;
    sectional repair; repaired section; replaced section; replacement section; replacement piece;
  `,
  signs: spoken`
    been patched; been repaired; been fixed; has been worked on; been worked on before;
    cut in a new|short|fresh|newer piece; let in a; cut a new piece in; cut out the bad;
    section|piece has been replaced; new piece of pipe; somebody cut in; somebody patched; somebody replaced;
    somebody repaired; somebody did a repair; patched with; patched in;
  `,
  notWords: spoken`
    repair bill; repair guy; needs repair; need repair; needs a repair; to repair; repairs run; patch of;
    repair it; patch it; repair that; should repair; patch the; repair the; a patch of ice; cost of repair;
    repair price; price repairs; for repair; one repair; eye patch; road patch; asphalt patch;
  `,
  examples: {
    says: [
      { text: "There's a patch at twenty seven feet.", gives: { at: 27 } },
      { text: 'Thirty nine feet, this has been repaired.', gives: { at: 39 } },
      { text: 'Old repair on the bottom at forty six.', gives: { at: 46, position: 'bottom' } },
    ],
    unsure: [
      {
        text: 'Could be a repair at fifty five, the color changes.',
        gives: { at: 55, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: [
      'He said they patched the driveway, not the pipe.',
      "I'd get a price on a spot repair.",
      'No repairs that I can see.',
    ],
    notYet: [
      { text: 'Spot repair from thirty one to thirty four feet, PVC.', gives: { at: 31, to: 34, material: 'pvc' } },
      { text: 'Somebody cut in a new piece at 19, plastic.', gives: { at: 19, material: 'pvc' } },
      { text: "That'll need a repair before winter.", gives: [] },
      { text: 'Patches like that never last.', gives: [] },
    ],
  },
  report: {
    meaning: 'This piece was repaired before.',
    next: 'Ask the seller what was repaired, when, and by whom.',
    glossary: 'Earlier repair: a piece of the line that was replaced or mended at some time.',
  },
} as const satisfies Kind;
