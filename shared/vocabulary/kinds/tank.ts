import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { arrivalsAt } from '../word-groups.ts';

export const tank = {
  name: 'tank',
  group: 'fitting',
  title: 'Septic tank',
  plural: 'septic tanks',
  takes: [],
  ends: 'tank',
  role: 'opening',
  words: spoken`
    septic tank; septic; tank; the tank; pump tank; holding tank; tank inlet; inlet of the tank;
    inlet of the septic tank;
    septic tank inlet; tank baffle; inlet baffle; septic chamber;
    inlet to|of|into|side_of the? septic? tank;
  `,
  signs: spoken`
    ${arrivalsAt('tank|septic|septic_tank')}
  `,
  notWords: spoken`
    tank side|end|half|guy|man|truck|alarm|level; tank 's|is|was about|around|what|somewhere|supposed|probably|out|over|behind|under|in_the|past|beyond|empty|full|old|new|fine|good;
    to the tank; toward the tank; towards the tank; to the septic; toward the septic; on septic;
    has a septic tank; for a tank; fish tank; water tank; gas tank; oil tank; tank top; out to the septic;
    to a septic; for the tank; the tank lid; tank lid; the tank pumped; tank was pumped; pump the tank;
    septic guy; septic system; septic inspection; septic permit; a septic man; toilet tank; before the tank;
    think tank; tank pumped; propane tank; downstream to the septic tank; downstream to the tank;
    down to the tank; septic company; to the septic tank; toward the septic tank; tank looked at;
    between the house and the tank; have the tank; end of the tank; side of the tank; out of the tank;
    inlet side of the tank; short of the tank; it has a septic; with a septic; septic out; no septic;
    the tank was; septic people; in the septic line;
    tank of gas|water|fish|propane|oil;
  `,
  examples: {
    says: [
      { text: 'We made it to the tank, forty seven.', gives: { at: 47 } },
      { text: 'Fifty three feet, clean all the way to the tank at fifty three.', gives: { at: 53 } },
      { text: 'Septic tank at forty four feet.', gives: { at: 44 } },
      { text: "We're in the tank at fifty one.", gives: { at: 51 } },
      { text: "And there's the tank, thirty eight feet.", gives: { at: 38 } },
    ],
    unsure: [
      {
        text: 'That could be the tank at sixty, too dark to say.',
        gives: { at: 60, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: [
      'I never found the tank lid in the yard.',
      'They had the tank pumped in the spring.',
      'The fish tank in the hall is huge.',
      'No tank here, this is all on city sewer.',
      "We're going out toward the septic tank.",
    ],
  },
  report: {
    meaning: 'The line ends in a septic tank, not in a public sewer.',
    next: 'Have the tank and its field looked at by someone who does that work; they are no part of this inspection.',
    glossary: 'Septic tank: a buried tank that settles and partly treats the sewage of one property.',
  },
} as const satisfies Kind;
