import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const debris = {
  name: 'debris',
  group: 'defect',
  title: 'Debris',
  plural: 'debris',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: spoken`
    debris; gravel; mortar; grout; paint; paper; toilet paper; toilet tissue; tissue; paper towel; lint;
    dryer lint; sand; silt; sediment; wipes; baby wipes; wet wipes; sludge; sawdust; drywall dust; drywall mud;
    drywall compound; thinset; thin set; construction debris; construction junk; leaves; muck; solids;
    settled solids; rubble; pebbles; little stones; concrete slurry; slurry; dirt; mud; rocks; stones; plaster;
    joint compound; cement; stucco; tile chips; chips; wood chips; shavings; pvc shavings; plastic shavings;
    mulch; pea gravel; landscape rock; dust; junk; crumbs; kitty litter; cat litter; litter; coffee grounds;
    food waste; eggshells; waste; sewage; stool; scraps; wad of hair; hair clog; wad of paper; roofing grit;
    shingle grit; grit; rock; ash; sediments; clod; dirt clod; concrete chunks; chunks of concrete;
    concrete washout; washout; hardened concrete; trash; garbage; spoils; broken tile; acorns; pine needles;
    twigs; rust flakes in the bottom; feminine products; tampons; flushable wipes; rags;
  `,
  notWords: spoken`
    paperwork; on paper; piece of paper; mud room; mudroom; mud on the reel; sand paper; sandpaper; paper thin;
    tar paper; newspaper; paper plate; paint brush; house paint; paint job; painted; paper says;
    paper towel company; rock hard; rock bottom; rocks in; hair of the dog; hair past; a hair; stone wall;
    stone foundation; stone house; rock and roll; hard as a rock; stepping stone; stone 's throw; sand box;
    sandbox; sand trap; leaves of; leaves the; leaves on; leaves in the yard; rake leaves; raking leaves;
    leaves me; leaves it; he leaves; she leaves; it leaves; that leaves; who leaves; leaves you; dirt cheap;
    dirt road; weight of the dirt; dirt above; feet of dirt; pay dirt; in the mud; muddy; mud everywhere;
    hand me a paper; rock solid; trash talk; trash can; trash truck; keep the wipes; in the trash;
    garbage truck; garbage day; garbage disposal; no waste; waste of; waste line; waste pipe; paper trail;
    crumbs on; rest of the paper; on the paper; tile floor; tile guy; paint on; in the paper; in paper;
    kitchen paper; hair cut; haircut; my hair; her hair; his hair; wallpaper; paper pipe; cement line;
    cement pipe; asbestos cement; gray cement; cement stuff; grey cement; concrete pipe; plaster wall; rocks on;
    paper work; the waste; chips and; wood chip trail; dust mask; cocoa mulch; gravel driveway; gravel drive;
    gravel road; gravel lot; junk mail; junk drawer; sewage pump; sewage smell; smell of sewage;
    smells like sewage; sand it; cement mixer; sand beach; beach sand; hair on; sand in my; mud on my;
    dirt on my; dirt on it; gravel in my; hair dryer; green stones; corner stone; paint the; stone 's showing;
    the stones in the concrete; the stone showing;
  `,
  misheard: [
    { heard: 'the_brie|debri|the_breeze|debrief|de_brie|the_bris', said: 'debris', needs: 'distance' },
    { heard: 'crowd', said: 'grout', needs: 'article' },
    { heard: 'travel', said: 'gravel', needs: 'distance' },
    { heard: 'seltz|saw dust', said: 'sawdust', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'Debris on the bottom at eighteen feet.', gives: { at: 18, position: 'bottom' } },
      { text: "There's gravel from forty to forty three.", gives: { at: 40, to: 43 } },
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
      'No debris.',
      'He jetted a load of gravel out of here last fall.',
      'Do you have a paper copy of the listing?',
    ],
    notYet: [
      { text: 'Toilet paper hung up at 27.', gives: { at: 27 } },
      { text: 'Let me get a paper towel for my glasses.', gives: [] },
      { text: 'Debris builds up wherever water sits.', gives: [] },
      { text: 'I tracked mud all over her kitchen.', gives: [] },
    ],
  },
  report: {
    meaning: 'Loose or settled material lies in the pipe and can hold back what comes down.',
    next: 'Have the line cleaned and looked at again.',
    glossary: 'Debris: material lying in the pipe that does not belong there, such as gravel, mortar or paper.',
  },
} as const satisfies Kind;
