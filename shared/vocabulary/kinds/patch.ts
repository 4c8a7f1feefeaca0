import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const patch = {
  name: 'patch',
  group: 'fitting',
  title: 'Earlier repair',
  plural: 'earlier repairs',
  takes: ['to', 'material', 'position'],
  isRemedy: true,
  words: spoken`
    new length|stretch|section|piece|bit|stick there|here|in|from|let|put;
    patch; spot repair; repair; old repair; point repair; repair sleeve; repair section; splice; spliced in;
    sectional repair; repaired section; replaced section; replacement section; replacement piece;
    previous|prior|past|earlier|recent|new|newer|newish|plumber's|old repair|patch|fix|mend;
    spot|point|sectional|section|local|band|sleeve|patch repair|liner|fix|lining;
    repair patch|spot|piece|job|sleeve|collar; patch liner; patch job; patched; mended; spliced;
    spliced piece|section; splice in;
    new|newer|newish|replaced|replacement|different|fresh|short section|piece|length|stretch|bit|stick|joint of * pipe|clay|plastic|pvc|iron|abs;
  `,
  signs: spoken`
    crew|somebody|someone|they|plumber|city fixed|repaired|patched|relaid the # to # section|part|stretch|piece|feet|foot;
    somebody|someone|they|crew|plumber|he|previous_owner|city 's|has|have|had? fixed|repaired|patched|mended this|that|the|a * part|section|bit|piece|stretch|spot|length|pipe|joint;
    been patched; been repaired; been fixed; has been worked on; been worked on before;
    cut in a new|short|fresh|newer piece; let in a; cut a new piece in; cut out the bad;
    section|piece has been replaced; new piece of pipe; somebody cut in; somebody patched; somebody replaced;
    somebody repaired; somebody did a repair; patched with; patched in;
    somebody|someone|they|they_'ve|somebody_'s cut_out the bad; patched over|up;
    somebody|someone|they|they_'ve|crew|plumber|builder 's|has|have|'ve|had? dug|opened|been|cut|put|let|set|laid|dropped|stuck|fitted|spliced down|up|it|in|this|here|out? here|and|a|an|new|the put|length|new|piece|section|stick|let; length|stick|piece|bit of new|newer|replacement|different pipe|plastic|clay|pvc|clay|iron; new|newer|replacement sleeve|collar|length|piece|section|pipe in|from|at|after|here|let;
    # 's|has|have been replaced|renewed|redone|repaired|relaid;
  `,
  weakWords: spoken`
    repaired;
    it|this|that|here|pipe|line|joint|piece|one|they? was|been|has_been|'s_been|were|got|gotten|is repaired|fixed|patched|replaced|redone|renewed|mended|dug_up;
    dug up and repaired|replaced|fixed;
    somebody|someone|they|they_'ve|somebody_'s|someone_'s|plumber patched|repaired|replaced|fixed|mended|spliced|redid|worked_on|cut_in|cut_out|let_in|dug_up|put_in a|an|the|this|that|it|some|something;
    section|piece|length|part|bit|stretch|joint 's|has|has_been|was|is|'s_been|all been? replaced|renewed|redone|changed;
    some|a|little|previous|earlier work here|there|done|in_here; let into the|this|that;
    somebody * been in|at|after here|this|it; done some work;
  `,
  notWords: spoken`
    repair bill; repair guy; needs repair; need repair; needs a repair; to repair; repairs run; patch of; repair it;
    patch it; repair that; should repair; patch the; repair the; a patch of ice; cost of repair; repair price;
    price repairs; for repair; eye patch; road patch; asphalt patch;
    needs|need|needing|recommend|recommending|do|doing|price|quote|for|want|get|getting|about|require|requires|call_for|calls_for|suggest|due|future|urgent|immediate|candidate * spot|point|sectional? repair|patch;
    dig * repair; and repair it|that|this; repair will|would|could|should|can|is_going;
    repair work|cost|costs|crew|company|man|guys|shop|order|estimate|quote; patch on his|her|my|the_roof|the_wall;
    strawberry|pumpkin|rough|bad|bald|wet|dry|garden|vegetable|flower|damp patch;
    patch of grass|dirt|ice|lawn|shade|road|sky|light|scale|rust|corrosion|roots|grease|mud;
    roof|driveway|street|road|ceiling|wall|fence|sidewalk|truck|reel|camera|furnace|gutter|window|porch * repaired|patched|replaced|fixed|redone;
    patched|repaired|replaced|fixed the roof|driveway|street|ceiling|wall|fence|sidewalk|furnace|water|camera|reel|main|toilet|tub|sink|floor|house;
    get|have|gets|getting * repaired|fixed|replaced|patched;
    needs|need|ought|should|must|could|can|will|would|to|gonna * be|been repaired|fixed|replaced|patched;
    hasn't|haven't|not|never|isn't * repaired|fixed|patched|replaced; fixed on|at|income|price;
    feet|foot|years was|were|has_been|have_been|been replaced|redone; one repair;
    somebody|someone|they cut in a|the|another tee|wye|cleanout|connection|branch|line|valve|saddle; put in a fitting|reducer|tee|wye|cleanout|valve|trap|new_tank|new_roof|new_furnace; new pipe wrench|cutter; new pipe , and; new piece of equipment|software;
  `,
  examples: {
    says: [
      { text: "There's a newer piece of pipe at twenty three.", gives: { at: 23 } },
      { text: "It's been patched in at sixteen.", gives: { at: 16 } },
      { text: 'They replaced a piece at 33.', gives: { at: 33 } },
      { text: 'Somebody cut out the bad stuff at 18.', gives: { at: 18 } },
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
      'Patches like that never last.',
      "That'll need a repair before winter.",
      "You'll need a spot repair at thirty.",
      'They replaced the driveway.',
      'He said they patched the driveway, not the pipe.',
      "I'd get a price on a spot repair.",
      'No repairs that I can see.',
    ],
    notYet: [
      { text: 'Spot repair from thirty one to thirty four feet, PVC.', gives: { at: 31, to: 34, material: 'pvc' } },
      { text: 'Somebody cut in a new piece at 19, plastic.', gives: { at: 19, material: 'pvc' } },
    ],
  },
  report: {
    meaning: 'This piece was repaired before.',
    next: 'Ask the seller what was repaired, when, and by whom.',
    glossary: 'Earlier repair: a piece of the line that was replaced or mended at some time.',
  },
} as const satisfies Kind;
