import type { Kind } from '../kind.ts';

export const crack = {
  name: 'crack',
  group: 'defect',
  title: 'Crack',
  plural: 'cracks',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: ['crack', 'cracked', 'cracking', 'hairline', 'hairline crack', 'fissure', 'longitudinal crack', 'spider crack', 'circumferential crack', 'split'],
  signs: ['split in the', 'is split', 'has split', 'hairline split', 'split along', 'split down'],
  notWords: ['crack at it', 'crack of dawn', 'crack up', 'cracked up', 'crack me up', 'cracks me up', 'crack open', 'cracked open', 'crack a', 'crack the cap', 'crack the plug', 'crack the cleanout', 'crack the lid', 'crack it open', 'cracking me up', 'crack team', 'split level', 'split ranch', 'split the', 'split difference', 'banana split', 'split up', 'split foyer', "screen 's got a crack", 'my screen', 'cracked screen', 'cracking jokes', 'take a crack', 'wise crack', 'cracked the cap', 'cracked my', 'cracks jokes', 'lickety split', 'split second', 'split entry', 'cracked cap', 'cracked lid', 'cracked sidewalk', 'crack in the sidewalk', 'cracks in the driveway', 'cracked driveway', 'first crack at', 'split bill', 'tail crack', 'crack in the foundation', 'cracked the window', 'crack a window', 'crack in my'],
  misheard: [{ heard: 'crap|krak|craig|crackle|track|crac', said: 'crack', needs: 'article' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The wall is split but the pieces have not moved; water can pass out and roots can pass in.',
    next: 'Watch the place, and have it repaired if it opens or roots appear.',
    glossary: 'Crack: a split in the pipe wall with the pieces still in place.',
  },
} as const satisfies Kind;
