import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const scale = {
  name: 'scale',
  group: 'defect',
  title: 'Scale',
  plural: 'scale',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: spoken`
    rust; scale; scaling; scaled; scaly; scale buildup; tuberculation; tuberculated; tubercles; mineral buildup;
    mineral deposits; mineral deposit; rust scale; rust buildup; crusty; crust; encrustation; encrusted;
    crusted; calcification; calcium; calcified; lime scale; limescale; barnacles; rust flakes; flaking; flaky;
    lime; rough and scaly; mineral; hard deposits; deposits; crud; build up; buildup; nodules; rusty crust;
  `,
  notWords: spoken`
    scale of one; scale of 1; on a scale; bathroom scale; scale up; to scale; full scale; rust belt; rust color;
    rust colored; rusted; rust stain; rust stains; rust never; scale the; large scale; fish scale; upper crust;
    pie crust; lime green; build up on the lens; economies of scale; pay scale; mineral water; scale model;
    tip the scale; scale back; grease buildup; buildup of grease; buildup of paper; time to scale; crud on my;
    key lime; pizza crust; buildup on the lens; calcium in; a lime;
  `,
  misheard: [
    { heard: 'kale|skill|skale|scales|scab|scail|skell|skull', said: 'scale', needs: 'distance' },
    { heard: 'sale|scare', said: 'scale', needs: 'article' },
  ],
  examples: {
    says: [
      { text: 'Heavy scale from ten to twenty two feet.', gives: { at: 10, to: 22, degree: 'heavy' } },
      {
        text: 'Scaling on the bottom at 31, maybe twenty percent.',
        gives: { at: 31, position: 'bottom', percent: 20 },
      },
      { text: 'Rust buildup at fifteen.', gives: { at: 15 } },
      { text: "There's tuberculation all the way around at 8.5.", gives: { at: 8.5, position: 'all-around' } },
    ],
    unsure: [{ text: 'Possibly scale at 19.', gives: { at: 19, status: 'suspected' }, flag: 'suspected' }],
    never: [
      "On a scale of one to ten it's a six.",
      'Cast iron always scales up in time.',
      'No scale at all.',
      "The bathroom scale says I'm up five pounds.",
    ],
    notYet: [
      { text: "There's kale on the bottom at 27 feet.", gives: { at: 27, position: 'bottom' }, flag: 'word-unsure' },
    ],
  },
  report: {
    meaning: 'Rust has built up on the wall of the pipe, which narrows it and gives paper something to catch on.',
    next: 'Have the line descaled if it runs slowly.',
    glossary: 'Scale: hard rust that builds up on the inside of iron pipe.',
  },
} as const satisfies Kind;
