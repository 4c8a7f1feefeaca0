import type { Kind } from '../kind.ts';

export const scale = {
  name: 'scale',
  group: 'defect',
  title: 'Scale',
  plural: 'scale',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['scale', 'scaling', 'scaled', 'scaly', 'scale buildup', 'tuberculation', 'tuberculated', 'tubercles', 'mineral buildup', 'mineral deposits', 'mineral deposit', 'rust scale', 'rust buildup', 'crusty', 'crust', 'encrustation', 'encrusted', 'crusted', 'calcification', 'calcium', 'calcified', 'lime scale', 'limescale', 'barnacles', 'rust flakes', 'flaking', 'flaky', 'lime', 'rough and scaly', 'mineral', 'hard deposits', 'deposits', 'crud', 'build up', 'buildup', 'nodules', 'rusty crust'],
  notWords: ['scale of one', 'scale of 1', 'on a scale', 'bathroom scale', 'scale up', 'to scale', 'full scale', 'scale the', 'large scale', 'fish scale', 'upper crust', 'pie crust', 'lime green', 'build up on the lens', 'economies of scale', 'pay scale', 'mineral water', 'scale model', 'tip the scale', 'scale back', 'grease buildup', 'buildup of grease', 'buildup of paper', 'time to scale', 'crud on my', 'key lime', 'pizza crust', 'buildup on the lens', 'calcium in', 'a lime'],
  misheard: [{ heard: 'kale|skill|skale|scales|scab|scail|skell|skull', said: 'scale', needs: 'distance' }, { heard: 'sale|scare', said: 'scale', needs: 'article' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Rust has built up on the wall of the pipe, which narrows it and gives paper something to catch on.',
    next: 'Have the line descaled if it runs slowly.',
    glossary: 'Scale: hard rust that builds up on the inside of iron pipe.',
  },
} as const satisfies Kind;
