import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const debris = {
  name: 'debris',
  group: 'defect',
  title: 'Debris',
  plural: 'debris',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  weakNeeds: 'notice',
  words: spoken`
    shingle; pea shingle; mortar|concrete|cement|grout|resin|epoxy|glue|tar|asphalt|wax lump|lumps|glob|globs|blob|blobs|splatter|dribble|drip|drips; lump|lumps|glob|blob|chunk|chunks|crumbs|pile|bit|bits|dab|smear of|of_our|of_their|of_some mortar|concrete|cement|grout|resin|epoxy|glue|tar|asphalt|wax|plaster|drywall|tile|thinset; rust|scale flakes|chips|crumbs|bits|chunks on|along|lying_on|sitting_on the bottom|floor|invert; sprinkle|sprinkling|scatter|scattering|dusting of * rust|scale|sand|gravel|grit|stones|flakes; broken|loose bits|pieces|chips|shards|chunks of clay|pipe|tile|iron on|lying|laying|sitting|in|along; pieces|bits|chips|shards lying|laying|sitting in|on|along it|there|the|here;
    debris; mortar; grout; toilet paper; toilet tissue; tissue; paper towel; lint; dryer lint; silt; sediment;
    wipes; baby wipes; wet wipes; sludge; sawdust; drywall dust; drywall mud; drywall compound; thinset; thin set;
    construction debris; construction junk; muck; solids; settled solids; rubble; pebbles; little stones;
    concrete slurry; slurry; joint compound; stucco; tile chips; wood chips; shavings; pvc shavings;
    plastic shavings; pea gravel; landscape rock; kitty litter; cat litter; coffee grounds; food waste; eggshells;
    scraps; wad of hair; hair clog; wad of paper; roofing grit; shingle grit; grit; ash; sediments; clod; dirt clod;
    concrete chunks; chunks of concrete; concrete washout; hardened concrete; spoils; broken tile; acorns;
    pine needles; twigs; rust flakes in the bottom; feminine products; tampons; flushable wipes; rags; silted;
    silted up; silting; silty; silt bed; turd; turds; poop; feces; fecal; fecal matter; excrement; gunk; gunked up;
    goop; gunky; slop; grime; gritty; hairball; hair ball; hair balls; hairballs;
    clump|wad|ball|mat|knot|clot|nest of hair|lint|wipes|paper|tissue|toilet_paper; matted hair; hair and lint;
    hair and soap; shards;
    brick|concrete|mortar|grout|plaster|rock bits|pieces|chunks|rubble|fragments|chips|crumbs|shards;
    cement slag|droppings|slurry|blob|splatter|spill|grout; mortar droppings;
    blob|slug|lump|chunk|glob|hunk|pile|mound|heap|bed|bank|berm|drift|puddle|skin|layer|film of concrete|cement|mortar|grout|plaster|paint|thinset|sand|silt|gravel|dirt|mud|rock|rocks|stone|stones|paper|debris|lint|sediment|rubble|drywall_mud|sludge|solids|grit|leaves;
    drywall; latex paint; paint skin; lint buildup; paper buildup; paper towels; loose|solid|wet lint|debris|paper;
    tissue paper; sand bar; sandbar; detritus; sewage solids; settlement of|solids; settled material|stuff|debris;
    wad of wipes|towels|paper_towel|paper_towels; paper mush; silt|sand|gravel|mud|dirt build_up|buildup|deposit|deposits; droppings of mortar; mortar|grout|cement dropping|droppings|snot|snots|lump|lumps|blob|blobs|splash; paper pulp; tile grout; wood|plastic|pvc|metal|iron shaving|shavings|chips|filings|splinters|curls; insulation; packing peanuts; leaf litter; leaf debris; leaves and twigs; twigs and feathers; feathers; cobwebs; cigarette butts; butts; cotton|q tips|buds|balls; sanitary pads|products|towels; food scraps; egg shells; fines; compost; mud daubers; dead leaves|bugs|insects; tea leaves; rice; corn; floss;
  `,
  signs: spoken`
    paper|tissue|wipe|wipes|lint|hair|solids|stuff|leaves 's|is|are hung_up|snagged|caught|stuck|piled|piled_up|draped|piling|building_up|collecting|hanging_up; paper|tissue|wipe|wipes|lint|hair|solids|stuff|leaves hung_up|snagged|caught|stuck|piled|piled_up|draped|piling|built_up|building_up|collecting;
    stuff|material|junk|crap settled|laying|lying|sitting|settling|piled * bottom|invert|flow_line|pipe|line;
    stuff|crud|crap|junk in|on|along the bottom|invert|floor|flow_line|flowline|pipe|line;
    
    bits|pieces|chunks|fragments|chips|lumps|shards|crumbs of * laying|lying|sitting|loose;
    bits|pieces|chunks|fragments|chips|lumps of brick|concrete|mortar|tile|rock|grout|stone|cement|plaster;
    concrete|cement|mortar|grout|plaster|paint in the|this? pipe|line|bottom|invert|drain|bore;
    concrete|cement|mortar|grout|plaster|paint laying|lying|poured|dumped|washed|hardened|set_up|spilled|ran down|in|on * pipe|line|bottom|invert|drain|here;
    dumped|poured|washed|rinsed|spilled|dropped|pouring|dumping|washing|rinsing concrete|cement|mortar|grout|plaster|paint|thinset;
    dumped|poured|washed|rinsed|spilled|dropped|washing|rinsing some|their|his|the|leftover concrete|cement|mortar|grout|plaster|paint|thinset;
    washed out concrete|cement|mortar|grout; set up concrete|cement|grout|mortar;
    concrete|cement|mortar|grout|plaster|thinset|paint 's|is|has|has_been|'s_been|got just? been? poured|dumped|washed|rinsed|set_up|hardened|dried|settled|run down|in|on|up|here|hard?; paper|wipes|stuff|debris|junk|sand|gravel|silt|mud|dirt|solids|rocks|leaves 's|is|are|has|have * piled|piling|collected|collecting|gathered|gathering|built|building|settled|settling|accumulated|accumulating|banked|caught|hung|snagged|packed|laying|lying|sitting|resting up|in|on|here|there|behind|against|along|at?;
  `,
  weakWords: spoken`
    paper; dirt; mud; sand; rock; rocks; stone; stones; leaves; junk; dust; trash; garbage; chips; waste; cement;
    paint; plaster; crud on|in|along the bottom|invert|floor|flow_line; hair; mulch; litter; sewage; crumbs; stool;
    gravel; stuff on the bottom;
    wax in|on|smeared|squeezed|stuck|along|hanging|from|down|off; splinters;
  `,
  notWords: spoken`
    lens|camera|head|skid|glass|light * covered|caked|smeared|coated|plastered|splashed in|with * mud|dirt|grease|paper|sludge;
    paperwork; on paper; piece of paper; mud room; mudroom; mud on the reel; sand paper; sandpaper; paper thin;
    tar paper; newspaper; paper plate; paint brush; house paint; paint job; painted; paper says;
    paper towel company; rock hard; rock bottom; rocks in; hair of the dog; hair past; a hair; off|up|back|over a hair; stone wall;
    stone foundation; stone house; rock and roll; hard as a rock; stepping stone; stone 's throw; sand box; sandbox;
    sand trap; leaves of; leaves the; leaves on; leaves in the yard; rake leaves; raking leaves; leaves me;
    leaves it; he leaves; she leaves; it leaves; that leaves; who leaves; leaves you; dirt cheap; dirt road;
    weight of the dirt; dirt above; feet of dirt; pay dirt; in the mud; muddy; mud everywhere; hand me a paper;
    rock solid; trash talk; trash can; trash truck; keep the wipes; in the trash; garbage truck; garbage day;
    garbage disposal; no waste; waste of; waste line; waste pipe; paper trail; crumbs on; rest of the paper;
    on the paper; tile floor; tile guy; in the paper; in paper; kitchen paper; hair cut; haircut; my hair;
    her hair; his hair; wallpaper; paper pipe; cement line; cement pipe; asbestos cement; gray cement; cement stuff;
    grey cement; concrete pipe; plaster wall; rocks on; paper work; the waste; chips and; wood chip trail;
    dust mask; cocoa mulch; gravel driveway; gravel drive; gravel road; gravel lot; junk mail; junk drawer;
    sewage pump; sewage smell; smell of sewage; smells like sewage; sand it; cement mixer; sand beach; beach sand;
    hair on; sand in my; mud on my; dirt on my; dirt on it; gravel in my; hair dryer; green stones; corner stone;
    paint the; stone 's showing; the stones in the concrete; the stone showing;
    paint on the house|wall|lid|cap|cleanout|cover|trim|siding|lawn|grass|ground|street|curb; paint a mark;
    paint mark; paint it; paint can; paint that; can of paint; marking paint; spray paint; fresh paint; dry as dust;
    dust off; dusty; dust cover; dust cap; cement 's|is|has|gone|went * gone|soft|eaten|away;
    cement|mortar lining|lined|joint|joints|floor|patio|driveway|walk|block;
    leaves in|on|off|from|all_over the yard|gutter|gutters|lawn|street|driveway|ground|trees|tree;
    gravel in|on the driveway|road|yard; gravel out|around;
    mind|watch the * gravel|mud|rocks|cement|paint|dirt|dust|concrete;
    boots|shoes|feet|truck|hands|gloves|knees|jeans * mud|dirt|dust|mulch|paint;
    mud|dirt|dust|paint|mulch on my|his|her|your|our boots|shoes|hands|floor|carpet|truck|camera|reel|jeans|rug;
    out of paper; dirt back; back fill; backfill; rocks by|around|over|along the; rock garden;
    stone patio|walk|steps|porch|path; mud in my; wipe the; wipe it; paper towel for|from|roll; with a paper towel;
    a paper towel to; sand on the beach; hair on my|his|her|its; dog|cat|cats|dogs|my|his|her * hair;
    flush|flushed|flushing * paper|wipes|tissue|tampons; don't flush * wipes|paper;
    concrete patio|porch|driveway|steps|walk|slab|floor|block|wall|sidewalk|pad|bench|lid|collar; laundry paint;
    the seller's paper; need|want|get|grab some|a|more paper|tissue; paper cup|bag|plate|route; cut the paper;
    trash pickup|bin|bins|bag|bags|day; litter box; waste of time|money; rocks in my|his|her; dirt dauber;
    dirt bike; mud dauber; mud flap; mud bath; mud|dirt|snow on the road;
    leaves out|behind|around|alone|from|for|here|there|a|to|with|us|no|only|one|my|your|his|her;
    candle|ear|car|ski wax; wax ring|paper|on|off|museum; hair like; insulation on|in|around|over the|that pipe|wall|attic|ceiling; corn field|hole|cob; rice a; lime stone|green|tree|juice; fines for;
    look|looking|looks|staring|peering|see|seeing|into out? at|into|through|to the? dirt|soil|mud|earth|ground|gravel|sand|rock; see|seeing|touching the? dirt|soil|earth|ground|bedding|gravel behind|beyond|through|between|outside|past|above|around|back; see|seeing the? dirt|soil|earth $; where the? dirt|soil|ground|sand|mud used|should|was|has|ought|'s; straight|right|through|open|exposed to the? dirt|soil|mud|sand;
    crusty|greasy|rusty|scaly|fatty|slimy stuff in|on|along the? bottom|invert|floor|flow_line|pipe|line;
  `,
  misheard: [
    { heard: 'the_brie|debri|the_breeze|debrief|de_brie|the_bris', said: 'debris', needs: 'distance' },
    { heard: 'crowd', said: 'grout', needs: 'article' },
    { heard: 'travel', said: 'gravel', needs: 'distance' },
    { heard: 'seltz|saw dust', said: 'sawdust', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'Nine, pea shingle on the floor.', gives: { at: 9, position: 'bottom' } },
      {
        text: 'There is gravel in the bottom at nine, maybe ten percent.',
        gives: { at: 9, position: 'bottom', percent: 10 },
      },
      {
        text: "Gravel at eight feet, a third of the pipe. I look again. It wasn't a third, it was half.",
        gives: { at: 8, percent: 50 },
      },
      { text: 'Toilet paper hung up at 27.', gives: { at: 27 } },
      { text: 'Somebody washed out grout down here, thirteen feet.', gives: { at: 13 } },
      { text: "There's paper on the bottom at 31.", gives: { at: 31, position: 'bottom' } },
      { text: 'Dirt. Sixteen feet.', gives: { at: 16 } },
      { text: 'Lumps of concrete at nine feet.', gives: { at: 9 } },
      { text: 'Silted up from 20 to 24, about a third.', gives: { at: 20, to: 24, percent: 33 } },
      { text: 'A big hairball at nineteen.', gives: { at: 19 } },
      { text: 'Debris on the bottom at eighteen feet.', gives: { at: 18, position: 'bottom' } },
      { text: "There's gravel from forty to forty three.", gives: { at: 40, to: 43 } },
      {
        text: 'Joint at 20 feet, seated, sand lying along the bottom from 20 to 27.',
        gives: { at: 20, to: 27, position: 'bottom' },
      },
      { text: 'Mortar at thirty three, about twenty percent.', gives: { at: 33, percent: 20 } },
    ],
    unsure: [
      {
        text: "There's the brie on the bottom at 22 feet.",
        gives: { at: 22, position: 'bottom' },
        flag: 'word-unsure',
      },
      { text: 'Could be mud at 36.', gives: { at: 36, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'Debris builds up wherever water sits.',
      'Let me get a paper towel for my glasses.',
      'I tracked mud all over her kitchen.',
      'Flush some paper for me.',
      'Mind the gravel.',
      'Let me paint a mark on the lawn.',
      'No debris.',
      'He jetted a load of gravel out of here last fall.',
      'Do you have a paper copy of the listing?',
    ],
  },
  report: {
    meaning: 'Loose or settled material lies in the pipe and can hold back what comes down.',
    next: 'Have the line cleaned and looked at again.',
    glossary: 'Debris: material lying in the pipe that does not belong there, such as gravel, mortar or paper.',
  },
} as const satisfies Kind;
