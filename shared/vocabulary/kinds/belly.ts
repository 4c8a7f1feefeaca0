import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const belly = {
  name: 'belly',
  group: 'defect',
  title: 'Belly',
  plural: 'bellies',
  takes: ['to', 'degree', 'percent', 'inches'],
  weakNeeds: 'measure',
  yieldsTo: 'trap',
  words: spoken`
    belly; bellied; belly section; sag; sagging; sagged; saggy; dip; dips; dipping; dipped; low spot; low area;
    low point; low place; low section; standing water; ponding; ponded; pooling; pooled; water pocket; pond; swale;
    sway; swayback; puddle; settled section; pool; sump; lazy spot; bathtub in the; low patch; bellying; swag;
    swagged; swagging; birdbath; bird bath; sunken; sunken section|spot|area|pipe|length; subsidence;
    low stretch|run|length|bit|joint; negative spot; settled pipe|spot|stretch|length|joint; stagnant water;
    dead water; residual water; hollow full of water; trough of water; slug of water; dip in the line|pipe;
  `,
  signs: spoken`
    we|i 're|'m|are|am wet again|now|here|, from;
    we|i 're|'m|are|am wet from|again from; i|we 'm|'re|am|are half|quarter|two_thirds|three_quarters|third|mostly under|submerged;
    water|water's standing|sitting|laying|lying|pooled|pooling|ponding|parked|trapped|retained;
    water 's|is standing|sitting|laying|lying|pooled|pooling|parked|trapped|retained;
    water 's|is just sitting|standing|laying|lying; water * sitting|standing|laying|lying|pooled|pooling;
    sitting|sits|retained|trapped water; there is retained water; water 's|is|just|that|and_it|not stays|stay;
    holding|holds|hold|held water; in water; in the water; into water; into the water; water in the bottom;
    water sits|sit|lays|lies|stands; it dips; she dips; she 's dipping;  settled and;
    water the * stay; water stays; water stay; doesn't drain; does not drain; it never empties; carrying water;
    carries water; pipe sags; full of water; half under; water don't move; water doesn't move; water not moving;
    water it not move; the water stay , it not move;
    water|it|which just|only|always? sits|sit|stands|lays|lies|pools|ponds|collects|accumulates|gathers|lingers there|here|in;
    water just|only|always? sits|sit|stands|stand|lays|lies|pools|ponds|collects|accumulates|gathers|lingers|settles;
    water 's|is|that_'s|just|keeps? sitting|standing|laying|lying|pooled|pooling|ponding|collecting|gathering|accumulating|lingering|stagnant;
    water * collecting|gathering|trapped|ponded|ponding|stagnant;
    collected|collecting|pooling|ponding|gathering|stagnant|backed_up water;
    holding|holds|hold|held|retaining|retains|retain|trapping|traps|carrying|carries|keeping|keeps * water;
    holding|holds|held * inch|inches; holding an|half|two|three inch|inches|an_inch;
    never|doesn't|does_not|won't|don't|can't|cannot|ain't|hasn't|not ever|fully|quite|really|completely? drain|drains|drained|drainin|empty|empties|emptied|clear_out|drain_out;
    never dries|dry out|up?; never runs dry; water * nowhere|no_place|noplace|no_where to go|drain|run;
    nowhere|no_place for the|that|this? water to go; water|it can't|won't|cannot get out|away;
    water won't|doesn't|don't|can't|does_not|do_not|isn't|never|ain't leave|leaves|go|move|moves|drain|drains|moving|leaving|draining|clear|run|flow|get_out|get_away|going|flowing;
    water not leaving|draining|flowing|going|running;
    in|into|hit|hitting|hits|reach|reaching|reached|meet|meeting|met|enter|entering|through|touching some|more|deeper|shallow|the? water;
    pipe|line|section|stretch|length|run|bottom|lateral|sewer sinks|sink|sank|sags|settles|subsides|dips|bellies|bows;
    pipe|line|section|stretch|length|run|bottom|lateral 's|is|has settled|sunk|sunken|sank|subsided|sagged|sagging|sinking|settling|bowed|dipping|dipped|low; pipe|line|section|stretch|length|bottom 's|is|has just|all|really|kind_of settled|sunk|subsided|sagged|sagging|low;
    it|she 's|has sunk|subsided|sagged|settled; pipe|line|section|it|we lies|lays|runs|goes|get|gets low;
    low|lower here|there|there_'s|in_here|through_here;
    pipe|line|section|stretch|length|joint|bottom|invert 's|is|lies|sits|all|completely|mostly under_water|underwater|submerged;
    half|halfway|half_way|partly|partially|mostly|quarter|third way? under_water|underwater|under|submerged;
    bottom|pipe * lies|lays|sits|stands in water; water up to the;
    water|level comes|rises|climbs up? to half|the_spring_line|the_springline|a_third|a_quarter; water * deep;
    deep in water; inch|inches of water; wet all|the_whole the? way; bow in it|the; bow in the pipe|line;
    has|have|had|got|with water in it|the_bottom; water in it; water in here;
    lost|lose|losing|loses the|its|our|my|all? fall|grade|pitch|slope; it 's|is all? submerged;
    i|we|it|she|pipe|line go|goes|went|dip|dips|dipped|duck|drop under|underwater|under_water at|about|around|by|from just? about|around? #; i|we|it|she|pipe|line go|goes|went|dip|dips|dipped|duck|drop under|below water|the_water|the_surface; i|we 'll? go|went under there|here|again; go|goes|going|went underwater;
  `,
  weakWords: spoken`
    water; going under; goes under; dunks; dives under;
  `,
  notWords: spoken`
    standing water upstream of; my belly; on my belly; beer belly; belly laugh; belly up; belly full; her belly;
    his belly; belly rub; skinny dip; chip and dip; dip your; dip stick; double dip; dip net; potbelly; pot belly;
    belly of the beast; belly button; fire in the belly; groundwater; belly aching; bellyaching; car pool;
    swimming pool; the pool guy; pool table; a pool; sump pump; the pool; by the pool; pool house; belly ache;
    mud puddle; puddle jumper; puddles; dip in; went for a dip; pool deck; above ground pool; pool equipment;
    pond in; duck pond; the pond; fish pond; koi pond; puddle by; retention pond; sag wagon; belly flop; trap full;
    full of water like; full of water , as; in hot water; dip switch; belly flopped; dip in the market;
    dead in the water; french dip; bowling ball; head underwater; water line; water softener;
    street|road|driveway|yard|lawn|sidewalk|patio|alley|ground|roof dips|sags|holds|holding;
    street|road|driveway|yard|lawn|sidewalk|patio 's|is holding|sagging;
    street|road|driveway|yard|lawn|sidewalk * standing|ponding;
    tub|sink|toilet|shower|basin|gutter|yard|basement|washer|dishwasher never|doesn't|does_not|don't|won't|can't drain|drains|empty;
    full of water from|like; trap * holds|holding water; trap * full of water; trap is holding;
    hits|hit the water main; in|through|into the water bill|department|company|main; belly of the; the? water heater|heaters; reach|reached|hit|in|into|through|behind|touching the? water heater; lost|lose|loses|losing the fall|grade|pitch|slope in|on|of my|his|her|the; in hot|cold water;
    the water bill|company|department|main|meter; city water; drinking water; bottle of water; water bottle;
    water bill; water main; water meter; glass of water; water damage; hold water with me; dip of the; chip dip;
    bring a; sag my; puddle of coffee; puddles outside; puddle on the floor|driveway|street|lawn;
    put|run|running|ran|pour|poured|send|sent|flush|throw some|more? water in it|here; low here on; run * water;
    water running; turn * water; water pressure; rain water; rainwater; hold the water;
    backyard|front_yard|pool|creek|ditch|gutter holds|holding; water in the basement|yard|street|house|meter;
    water never hurt; going low; battery 's|is|gets|running|runs low; camera low;
    drop|drops|bit|glass|cup of water on|in_the_air; drop|drops of water;
  `,
  misheard: [
    {
      heard:
        "valley|valleys|belie|billy|million|valet|belt|belts|bally|barely|bailey|balley|berry|bella|fairly|daily|belly's",
      said: 'belly',
      needs: 'article',
    },
    { heard: 'sack|sacks|sac', said: 'sag', needs: 'distance' },
    { heard: 'sad', said: 'sag', needs: 'article' },
    { heard: 'lows_but|low_spat|lo_spot|loaf_spot|slow_spot', said: 'low spot', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: "Belly at nine feet. The water's about an inch deep.", gives: { at: 9, inches: 1 } },
      { text: 'Belly at nine feet, two inch.', gives: { at: 9, inches: 2 } },
      { text: 'Twenty two feet, she never drains right there.', gives: { at: 22 } },
      { text: 'Pipe has settled at thirty four, water just sits.', gives: { at: 34 } },
      { text: "It's holding about two inches at 27.", gives: { at: 27, inches: 2 } },
      { text: 'Water collects from forty one to forty six.', gives: { at: 41, to: 46 } },
      { text: 'Sunken section, twelve to sixteen feet.', gives: { at: 12, to: 16 } },
      { text: "There's a bit of a low spot at nine feet.", gives: { at: 9, degree: 'light' } },
      {
        text: 'Belly from eighteen to twenty five feet, about two inches of water.',
        gives: { at: 18, to: 25, inches: 2 },
      },
      { text: "We're in water at thirty one, out of it at thirty seven.", gives: { at: 31, to: 37 } },
      { text: 'Slight dip at forty two.', gives: { at: 42, degree: 'light' } },
      { text: 'Standing water at 50 feet, a third of the pipe.', gives: { at: 50, percent: 33 } },
      { text: 'Low spot starts at twelve. Clears up at sixteen and a half.', gives: { at: 12, to: 16.5 } },
      { text: "Twenty feet, there's water here about half the pipe.", gives: { at: 20, percent: 50 } },
    ],
    unsure: [
      { text: "There's a valley at twenty feet.", gives: { at: 20 }, flag: 'word-unsure' },
      { text: 'Could be a belly at 33.', gives: { at: 33, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'The driveway has a dip at about thirty feet.',
      'In the house next door we found a belly at forty.',
      "There's standing water in the yard.",
      'The street dips out front.',
      'Water runs right through.',
      'That trap is full of water, as it should be.',
      'My belly is full from lunch.',
      'No bellies in this one.',
      'The pool guy was here when I pulled up.',
    ],
    notYet: [{ text: 'A belly collects everything.', gives: [] }],
  },
  report: {
    meaning: 'Part of the line lies lower than the pipe after it and holds water, where solids can settle.',
    next: 'Watch the place, and have the line cleaned if it runs slowly.',
    glossary: 'Belly: a low place in the line that holds water when nothing is running; also called a sag or a dip.',
  },
} as const satisfies Kind;
