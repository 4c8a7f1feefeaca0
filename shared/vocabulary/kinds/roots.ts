import type { Kind } from '../kind.ts';

export const roots = {
  name: 'roots',
  group: 'defect',
  title: 'Roots',
  plural: 'roots',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['root', 'roots', 'root ball', 'root mass', 'rootlet', 'root hair', 'tree root', 'feeder root', 'root intrusion', 'hair roots', 'root curtain', 'root growth', 'root infestation', 'rooty', 'root mat', 'root tendril', 'root tips', 'root clump', 'root fibers', 'root wad', 'root beard'],
  signs: ['whiskers', 'horse tail', 'horsetail', 'stringy stuff', 'tree hair', 'little hairs', 'hairy', 'root coming', 'tendrils', 'beard', 'fuzz', 'bird nest', 'fox tail', 'foxtail', 'spiderweb of', 'hairs coming in', 'hair coming in', 'hair in the joint', 'hairs in the joint'],
  notWords: ['root cause', 'root of the problem', 'root beer', 'root for', 'rooting for', 'rooted', 'root canal', 'en route', 'scenic route', 'square root', 'grass roots', 'root of it', 'whisker away', 'beard on', 'his beard', 'my beard', 'cat whiskers', 'roots here in', 'roots run deep', 'put down roots', 'my roots'],
  misheard: [{ heard: "routes|route|ruts|rootes|rudes|roofs|rutes|root's|boots|rutz|rootz", said: 'roots', needs: 'distance' }, { heard: 'fruits|fruit', said: 'roots', needs: 'distance' }, { heard: 'reads at the joint', said: 'roots at the joint', needs: 'nothing' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning:
      'Roots get in where a joint or the wall is not tight, catch paper and grow back after cutting for as long as the way in stays open.',
    next: 'Have the roots cut out by a licensed plumber, and the place looked at again afterward.',
    glossary: 'Roots: tree or shrub roots that have grown into the pipe.',
  },
} as const satisfies Kind;
