import type { Kind } from '../kind.ts';

export const materialChange = {
  name: 'material-change',
  group: 'fitting',
  title: 'Material change',
  plural: 'material changes',
  takes: ['fromMaterial', 'toMaterial'],
  words: ['material change', 'change of material', 'change in material'],
  signs: ['transition from', 'transition to', 'transitions to', 'transitions into', 'transition between', 'transition'],
  misheard: [{ heard: 'transmission from|to', said: 'transition', needs: 'nothing' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning:
      'One pipe material ends and another begins; the joint between them is a usual place for a lip, a gap or roots.',
    next: 'Nothing to do beyond what is noted at the joint.',
    glossary: 'Material change: the place where one kind of pipe joins another.',
  },
} as const satisfies Kind;
