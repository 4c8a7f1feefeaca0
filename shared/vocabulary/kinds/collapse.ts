import type { Kind } from '../kind.ts';

export const collapse = {
  name: 'collapse',
  group: 'defect',
  title: 'Collapse',
  plural: 'collapses',
  takes: ['to', 'position', 'clock', 'percent'],
  words: ['collapse', 'collapsed', 'collapsing', 'cavein', 'caved in', 'cave in', 'caving in', 'fallen in', 'fell in', 'falling in', 'crushed', 'pancaked', 'folded in', 'fall down'],
  signs: ['folded right down', 'folded down', "roof 's|has|is come|fallen|down", 'top of the pipe lying', "top 's|has fallen|come in|down", 'caved', 'flat as a', 'fallen down', 'smashed flat', 'mashed flat', 'squashed flat', 'top of the pipe is lying', 'nothing left of the pipe', 'there is no pipe left', 'no pipe left', 'is fall down'],
  notWords: ['collapse on the couch', 'collapsed on the', 'collapsed in bed', 'i collapse', 'crushed stone', 'crushed rock', 'crushed gravel', 'fell in love', 'falling in love', 'crushed it', 'crushed ice', 'collapse in my', 'i almost collapsed', 'fell in the'],
  misheard: [{ heard: 'clots|claps|clapse|collabs|collapsible|clubs|class|collab|kolaps|colapse|colaps', said: 'collapse', needs: 'article' }, { heard: 'collect|callous', said: 'collapse', needs: 'article' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The pipe has lost its shape and no longer carries sewage as it should.',
    next: 'Have a licensed plumber replace this length without delay, and use as little water as possible until then.',
    glossary: 'Collapse: a place where the pipe has caved in.',
  },
} as const satisfies Kind;
