import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { arrivalsAt } from '../word-groups.ts';

export const manhole = {
  name: 'manhole',
  group: 'fitting',
  title: 'Manhole',
  plural: 'manholes',
  takes: [],
  ends: 'manhole',
  role: 'opening',
  words: [
    'mh',
    'inspection chamber',
    'manhole',
    'city manhole',
    'municipal manhole',
    'sewer manhole',
    'public manhole',
    'up|out at|in|into|through|under * manhole lid|cover|rungs',
  ],
  signs: spoken`
    ${arrivalsAt('manhole|city_manhole|chamber')}
  `,
  notWords: spoken`
    manhole 's|is|was about|around|what|somewhere|supposed|probably|out|over|behind|under|in_the|past|beyond|down; manhole lid|key|hook; popped|opened|open|opening|lifted the|a manhole; manhole over there;
    to the manhole; toward the manhole; towards the manhole; to a manhole; manhole cover; from the manhole;
    down to the manhole; for the manhole; in the city manhole; up from the manhole; the city manhole open;
    between the manhole; before the manhole;
  `,
  misheard: [{ heard: 'man who|man hall|mandhole|mainhole|manho', said: 'manhole', needs: 'distance' }],
  examples: {
    says: [
      { text: "We've reached the end and come to the manhole at sixty one.", gives: { at: 61 } },
      { text: 'Manhole at ninety one feet.', gives: { at: 91 } },
      { text: 'We come out into the city manhole at eighty four.', gives: { at: 84 } },
      { text: "There's the manhole, seventy seven and a half.", gives: { at: 77.5 } },
    ],
    unsure: [{ text: 'We come into a mainhole at sixty feet.', gives: { at: 60 }, flag: 'word-unsure' }],
    never: [
      'The crew parked over the manhole.',
      'I had to park right on top of the manhole.',
      "We're going toward the manhole in the street.",
      "There's no manhole on this street.",
      'They would have to bring a jetter in from the manhole.',
    ],
  },
  report: {
    meaning: 'The line meets a manhole here.',
    next: 'Nothing to do; nobody should climb in without the equipment and training for confined spaces.',
    glossary: 'Manhole: a shaft from the surface down to a sewer.',
  },
} as const satisfies Kind;
