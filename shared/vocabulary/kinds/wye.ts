import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const wye = {
  name: 'wye',
  group: 'fitting',
  title: 'Wye',
  plural: 'wyes',
  takes: ['position', 'clock', 'serves'],
  words: spoken`
    wye; y fitting; y connection; wye fitting; wye connection; wye branch; combo; combo wye; double wye;
    y branch; y junction; wye junction; y lateral; wye lateral; y piece; wye piece; wye type; combination wye; y off;
    combination fitting; combi; y shaped fitting|piece|connection|joint; y shape; wye shape|shaped; forty_five_degree|45_degree wye; combination wye|tee;
  `,
  notWords: spoken`
    is|are a wye in;
    tell me why; why is; why do; why are; why did; why does; why not; why would; why that; that is why;
    that 's why; which is why; know why; wonder why; see why; why i; why we; why you; why they; why he; why she;
    why on earth; why don; reason why; any way; no way; by the way; way out; a while; while i; while we;
    while you; the while; once in a while; quite a while;
  `,
  misheard: [
    { heard: 'why|y|whys', said: 'wye', needs: 'article' },
    { heard: 'while on|off the', said: 'wye', needs: 'article' },
    { heard: 'why|y|wi on|off|to the', said: 'wye', needs: 'distance' },
    { heard: '<service> why|y', said: 'wye', needs: 'distance' },
    { heard: 'why|y fitting|connection|branch', said: 'wye', needs: 'nothing' },
    { heard: 'wise', said: 'wyes', needs: 'distance' },
    { heard: 'wire', said: 'wye', needs: 'article' },
  ],
  examples: {
    says: [
      { text: 'A wye at nine feet, left or right, I forget.', gives: { at: 9 } },
      {
        text: 'A wye at nine feet on the left, I ran the kitchen sink and nothing came out.',
        gives: { at: 9, position: 'left' },
      },
      {
        text: 'Two wyes close together. The first is at twelve and takes the kitchen, the second is at fifteen and takes the laundry.',
        gives: [
          { kind: 'wye', at: 12, serves: 'kitchen' },
          { kind: 'wye', at: 15, serves: 'laundry' },
        ],
      },
      {
        text: 'There is a wye at nineteen on the right. Wait, I had the wye on the right. Left.',
        gives: { at: 19, position: 'left' },
      },
      {
        text: 'Two wyes. Nothing between them. The first picks up the kitchen at eighteen. The other goes to the laundry at twenty one.',
        gives: [
          { kind: 'wye', at: 18, serves: 'kitchen' },
          { kind: 'wye', at: 21, serves: 'laundry' },
        ],
      },
      {
        text: 'Two wyes. The first at 18, the second at 21. A crack at 25. Another at 30.',
        gives: [
          { kind: 'wye', at: 18 },
          { kind: 'wye', at: 21 },
          { kind: 'crack', at: 25 },
          { kind: 'crack', at: 30 },
        ],
      },
      {
        text: 'Two wyes. The first is at 18, the second is at 21.',
        gives: [{ at: 18 }, { at: 21 }],
      },
      { text: 'Two wyes, at twelve and fourteen.', gives: [{ at: 12 }, { at: 14 }] },
      { text: 'Combination fitting at eleven, on the left.', gives: { at: 11, position: 'left' } },
      { text: "Nine feet, tee on the left. It's not a tee, it's a wye.", gives: { at: 9, position: 'left' } },
      {
        text: 'The kitchen comes in through a wye at nine feet on the left.',
        gives: { at: 9, position: 'left', serves: 'kitchen' },
      },
      {
        text: "Nine feet, a wye on the left. Nothing for a while. Correction on that wye. It's on the right.",
        gives: { at: 9, position: 'right' },
      },
      { text: 'Nine feet, a wye, and it picks up the kitchen.', gives: { at: 9, serves: 'kitchen' } },
      { text: "A wye at ten feet on the left. The dog's in the bathroom.", gives: { at: 10, position: 'left' } },
      { text: "Nine feet, a wye on the left. Kitchen or laundry, I can't tell.", gives: { at: 9, position: 'left' } },
      {
        text: "There's a wye at twenty six feet on the right, that's the kitchen.",
        gives: { at: 26, position: 'right', serves: 'kitchen' },
      },
      { text: "Nineteen feet, wye at two o'clock.", gives: { at: 19, clock: 2 } },
      {
        text: 'Got a Y fitting here at 33, left hand side, probably picks up the laundry.',
        gives: { at: 33, position: 'left', serves: 'laundry' },
      },
      { text: 'Combo wye at eight and a half feet, picks up the tub.', gives: { at: 8.5, serves: 'tub' } },
    ],
    unsure: [
      {
        text: "There is a wye at nine feet on the right. It could be the laundry, I don't know.",
        gives: { at: 9, position: 'right', serves: 'laundry' },
        flag: 'hedged',
      },
      { text: 'Could be a wye at fifty, hard to tell.', gives: { at: 50, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "That's why I always start at the front.",
      "I don't know why they ran it this way.",
      'A wye is what you want there, never a tee on its back.',
      'No wye so far.',
    ],
    notYet: [
      { text: 'A four inch wye comes in at forty seven.', gives: { at: 47, diameterIn: 4 } },
      { text: "There's a why at thirty six on the left.", gives: { at: 36, position: 'left' }, flag: 'word-unsure' },
    ],
  },
  report: {
    meaning: 'Another drain joins the line here through a Y-shaped fitting.',
    next: 'Nothing to do.',
    glossary: 'Wye: a Y-shaped fitting that brings a second drain in at an angle, in the direction of flow.',
  },
} as const satisfies Kind;
