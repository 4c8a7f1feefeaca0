import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const belly = {
  name: 'belly',
  group: 'defect',
  title: 'Belly',
  plural: 'bellies',
  takes: ['to', 'degree', 'percent', 'inches'],
  weakNeeds: 'measure',
  words: spoken`
    belly; bellied; belly section; sag; sagging; sagged; saggy; dip; dips; dipping; dipped; low spot; low area;
    low point; low place; low section; standing water; ponding; ponded; pooling; pooled; water pocket; pond;
    swale; sway; swayback; puddle; settled section; pool; sump; lazy spot; bathtub in the; low patch;
  `,
  signs: spoken`
    water|water's standing|sitting|laying|lying|pooled|pooling|ponding|parked|trapped|retained;
    water 's|is standing|sitting|laying|lying|pooled|pooling|parked|trapped|retained;
    water 's|is just sitting|standing|laying|lying; water * sitting|standing|laying|lying|pooled|pooling;
    sitting|sits|retained|trapped water; there is retained water; water 's|is|just|that|and_it|not stays|stay;
    holding|holds|hold|held water; in water; in the water; into water; into the water; water in the bottom;
    water sits|sit|lays|lies|stands; it dips; she dips; she 's dipping; camera goes|went|dips under;
    settled and; water the * stay; water stays; water stay; doesn't drain; does not drain; it never empties;
    carrying water; carries water; pipe sags; full of water; half under; water don't move; water doesn't move;
    water not moving; water it not move; the water stay , it not move;
  `,
  weakWords: ['water'],
  notWords: spoken`
    standing water upstream of; my belly; on my belly; beer belly; belly laugh; belly up; belly full; her belly;
    his belly; belly rub; skinny dip; chip and dip; dip your; dip stick; double dip; dip net; potbelly;
    pot belly; belly of the beast; belly button; fire in the belly; groundwater; belly aching; bellyaching;
    car pool; swimming pool; the pool guy; pool table; a pool; sump pump; the pool; by the pool; pool house;
    belly ache; mud puddle; puddle jumper; puddle in; puddles; dip in; went for a dip; pool deck;
    above ground pool; pool equipment; pond in; duck pond; the pond; fish pond; koi pond; puddle by;
    retention pond; sag wagon; belly flop; trap full; full of water like; full of water , as; in hot water;
    dip switch; belly flopped; dip in the market; dead in the water; french dip; bowling ball; head underwater;
    water line; water softener;
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
    never: ['My belly is full from lunch.', 'No bellies in this one.', 'The pool guy was here when I pulled up.'],
    notYet: [
      { text: 'A belly collects everything.', gives: [] },
      { text: "There's standing water in the yard.", gives: [] },
    ],
  },
  report: {
    meaning: 'Part of the line lies lower than the pipe after it and holds water, where solids can settle.',
    next: 'Watch the place, and have the line cleaned if it runs slowly.',
    glossary: 'Belly: a low place in the line that holds water when nothing is running; also called a sag or a dip.',
  },
} as const satisfies Kind;
