import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const coupling = {
  name: 'coupling',
  group: 'fitting',
  title: 'Coupling',
  plural: 'couplings',
  takes: [],
  words: spoken`
    mechanical joint|coupling; adaptor; adapter; no hub adapter|adaptor; transition adapter|adaptor|fitting|piece;
    coupling; rubber coupling; no hub band; no hub; nohub band; band; steel band; band clamp; rubber boot;
    rubber sleeve; flex coupling; flexible coupling; shielded coupling; shielded band; repair coupling;
    transition coupling; rubber connector; rubber band coupling; banded joint; boot; rubber;
    slip coupling; fernco; fernco coupling; banded connection; banded coupling; stainless band; stainless steel band;
    coupled together; coupled up; glue coupling; glued coupling; repair clamp; no hub coupling|clamp|connection; unshielded coupling; mission band; hose clamp; transition boot; clamp;
  `,
  notWords: spoken`
    rubber gloves; rubber ducky; rubber duck; rubber ball; rubber mallet; my boot; my boots; band aid; a band;
    reducing coupling; rubber gasket; rubber ring; rubber washer; work boots; boots; to boot; rubber band;
    rubber stopper; rubber toy; rubber glove; boot up; puts the boot; coupling of; rubber flap; steel bands;
  `,
  misheard: [
    { heard: 'cupling|cuppling|cup_ling|couplin|copling', said: 'coupling', needs: 'nothing' },
    {
      heard: 'no have|hug|hob|hut|hubb|hove band|bands|coupling|couplings|clamp',
      said: 'no hub band',
      needs: 'nothing',
    },
    { heard: 'fern_co|firm_co|furnco|fernko|fern_go|burn_co', said: 'Fernco', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'There is a rubber adaptor on it at thirty two.', gives: { at: 32 } },
      { text: 'Rubber coupling at eleven feet.', gives: { at: 11 } },
      { text: 'A stainless band holds the two together at fifteen feet.', gives: { at: 15 } },
      { text: 'Two couplings, one at ten and one at thirteen.', gives: [{ at: 10 }, { at: 13 }] },
      { text: "At twenty nine there's a no hub band.", gives: { at: 29 } },
      { text: 'Steel band, thirty six and a half.', gives: { at: 36.5 } },
      { text: 'I see a flexible coupling here at 18.', gives: { at: 18 } },
    ],
    unsure: [
      { text: "There's a cupling at forty.", gives: { at: 40 }, flag: 'word-unsure' },
      { text: 'That might be a coupling at 52.', gives: { at: 52, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'Bands like that usually rust out in twenty years.',
      'I used to play in a band.',
      'No couplings, the whole thing is hub and spigot.',
    ],
    notYet: [{ text: 'I need new rubber boots for this.', gives: [] }],
  },
  report: {
    meaning: 'Two pieces of pipe are joined by a sleeve here, as is usual where a piece was put in later.',
    next: 'Nothing to do.',
    glossary: 'Coupling: a sleeve, often rubber with metal bands, that joins two pipe ends.',
  },
} as const satisfies Kind;
