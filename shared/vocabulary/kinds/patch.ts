import type { Kind } from '../kind.ts';

export const patch = {
  name: 'patch',
  group: 'fitting',
  title: 'Earlier repair',
  plural: 'earlier repairs',
  takes: ['to', 'material', 'inches', 'position'],
  words: ['patch', 'spot repair', 'repair', 'old repair', 'point repair', 'repair sleeve', 'repair section', 'splice', 'spliced in', 'sectional repair', 'repaired section', 'replaced section', 'replacement section', 'replacement piece'],
  signs: ['been patched', 'been repaired', 'been fixed', 'has been worked on', 'been worked on before', 'cut in a new|short|fresh|newer piece', 'let in a', 'cut a new piece in', 'spliced in', 'cut out the bad', 'section|piece has been replaced', 'new piece of pipe', 'somebody cut in', 'somebody patched', 'somebody replaced', 'somebody repaired', 'somebody did a repair', 'patched with', 'patched in'],
  notWords: ['repair bill', 'repair guy', 'needs repair', 'need repair', 'needs a repair', 'to repair', 'repairs run', 'patch of', 'repair it', 'patch it', 'repair that', 'should repair', 'patch the', 'repair the', 'a patch of ice', 'cost of repair', 'repair price', 'price repairs', 'for repair', 'one repair', 'eye patch', 'road patch', 'asphalt patch'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'This piece was repaired before.',
    next: 'Ask the seller what was repaired, when, and by whom.',
    glossary: 'Earlier repair: a piece of the line that was replaced or mended at some time.',
  },
} as const satisfies Kind;
