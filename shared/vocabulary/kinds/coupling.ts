import type { Kind } from '../kind.ts';

export const coupling = {
  name: 'coupling',
  group: 'fitting',
  title: 'Coupling',
  plural: 'couplings',
  takes: ['position', 'clock'],
  words: ['coupling', 'rubber coupling', 'no hub band', 'no hub', 'nohub band', 'band', 'steel band', 'band clamp', 'rubber boot', 'rubber sleeve', 'flex coupling', 'flexible coupling', 'shielded coupling', 'shielded band', 'repair coupling', 'banded coupling', 'transition coupling', 'rubber connector', 'rubber band coupling', 'banded joint', 'boot', 'rubber', 'slip coupling', 'unshielded coupling', 'mission band', 'hose clamp', 'transition boot', 'clamp'],
  notWords: ['rubber gloves', 'rubber ducky', 'rubber duck', 'rubber ball', 'rubber mallet', 'my boot', 'my boots', 'band aid', 'a band', 'reducing coupling', 'rubber gasket', 'rubber ring', 'rubber washer', 'work boots', 'to boot', 'rubber band', 'rubber stopper', 'rubber toy', 'rubber glove', 'boot up', 'puts the boot', 'coupling of', 'rubber flap', 'steel bands'],
  misheard: [{ heard: 'cupling|cuppling|coupling|cup ling|couplin', said: 'coupling', needs: 'nothing' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Two pieces of pipe are joined by a sleeve here, as is usual where a piece was put in later.',
    next: 'Nothing to do.',
    glossary: 'Coupling: a sleeve, often rubber with metal bands, that joins two pipe ends.',
  },
} as const satisfies Kind;
