import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const blockage = {
  name: 'blockage',
  group: 'defect',
  title: 'Blockage',
  plural: 'blockages',
  takes: ['to', 'position', 'percent'],
  words: spoken`
    blockage; blocked; blocked off; plugged; plugged up; plugged solid; stopped up; stopped up solid; clog;
    clogged; clogged up; obstruction; obstructed; stoppage; full stoppage; backup; jammed up; jammed;
    choked off; packed solid; dammed up; log jam; impassable; completely blocked; plug of;
  `,
  signs: spoken`
    line 's|is stopped up; solid plug; packed off; shut off completely; closed off completely;
    nothing getting past; nothing gets past; nothing gets through; nothing getting through; water 's backed up;
    backed up behind; totally closed; sealed off; jammed solid;
  `,
  notWords: spoken`
    plugged in; plugged it; plugged into; plug it; around the block; block over; blocked me; blocked in;
    blocked the; backup camera; backup plan; a backup battery; had a backup; backup last; plugged the;
    my truck blocked; driveway blocked; blocked driveway; traffic jam; jammed my; paper jammed; blocked out;
    clog up; plugged solid with; backup generator; had backups; backed up twice; blocked my; blocked by;
    backup reel; backups;
  `,
  examples: {
    says: [
      { text: 'Blockage at forty six feet.', gives: { at: 46 } },
      { text: "It's plugged solid at 38.", gives: { at: 38 } },
      { text: "It's about ninety percent blocked at 20.", gives: { at: 20, percent: 90 } },
      { text: 'Nothing getting past at sixty one.', gives: { at: 61 } },
    ],
    unsure: [{ text: "I think there's a clog at 33.", gives: { at: 33, status: 'suspected' }, flag: 'suspected' }],
    never: [
      'My truck is blocked in.',
      'They had a blockage last Christmas.',
      'No blockage.',
      'He plugged it into the wall.',
    ],
  },
  report: {
    meaning: 'The line is blocked or nearly so; sewage can come back into the house.',
    next: 'Use no water until a licensed plumber has cleared the line, then have it looked at again.',
    glossary: 'Blockage: a place where nothing, or hardly anything, passes.',
  },
} as const satisfies Kind;
