import type { Kind } from '../kind.ts';

export const blockage = {
  name: 'blockage',
  group: 'defect',
  title: 'Blockage',
  plural: 'blockages',
  takes: ['to', 'position', 'percent'],
  words: ['blockage', 'blocked', 'blocked off', 'plugged', 'plugged up', 'plugged solid', 'stopped up', 'stopped up solid', 'clog', 'clogged', 'clogged up', 'obstruction', 'obstructed', 'stoppage', 'full stoppage', 'backup', 'jammed up', 'jammed', 'choked off', 'packed solid', 'dammed up', 'log jam', 'impassable', 'completely blocked', 'plug of'],
  signs: ["line 's|is stopped up", 'solid plug', 'packed off', 'shut off completely', 'closed off completely', 'nothing getting past', 'nothing gets past', 'nothing gets through', 'nothing getting through', "water 's backed up", 'backed up behind', 'totally closed', 'sealed off', 'jammed solid'],
  notWords: ['plugged in', 'plugged it', 'plugged into', 'plug it', 'around the block', 'block over', 'blocked me', 'blocked in', 'blocked the', 'backup camera', 'backup plan', 'a backup battery', 'had a backup', 'backup last', 'plugged the', 'my truck blocked', 'driveway blocked', 'blocked driveway', 'traffic jam', 'jammed my', 'paper jammed', 'blocked out', 'clog up', 'plugged solid with', 'backup generator', 'had backups', 'backed up twice', 'blocked my', 'blocked by', 'backup reel', 'backups'],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The line is blocked or nearly so; sewage can come back into the house.',
    next: 'Use no water until a licensed plumber has cleared the line, then have it looked at again.',
    glossary: 'Blockage: a place where nothing, or hardly anything, passes.',
  },
} as const satisfies Kind;
