import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { earth, is } from '../word-groups.ts';

export const hole = {
  name: 'hole',
  group: 'defect',
  title: 'Hole',
  plural: 'holes',
  takes: ['to', 'position', 'clock', 'inches'],
  isSpot: true,
  words: spoken`
    hole; puncture; punctured; pinhole; pin hole; perforated; perforation; holed; holed through; breach; breached; rust hole; worm hole;
  `,
  signs: spoken`
    it|bottom|top|side|wall|iron|pipe|invert ${is} rusted|eaten|worn|rotted|corroded|gone|wore all_the_way|clean|right|clear|straight|completely? through;
    rusted|eaten|worn|rotted|corroded|wore|ate|gone all_the_way|all|clean|right|clear|straight|completely through;
    rusted|rotted|worn|eaten|wore through; see ${earth}|daylight through; opening in the wall|side|top;
    rip|tear in the|this|it; tore open; torn open; wall 's|is torn|ripped|tore; a rip|gash in;
    put|ran|run|drove|punched|stuck|poked|gone|went|knocked|driven|drilled * pick|bar|pickaxe|shovel|spade|digging_bar|fork|auger|drill|tooth|backhoe|bucket through|into; opening|gap|window knocked|broken|punched|smashed|busted|rusted|worn|eaten in|through the|this? wall|side|top|bottom|pipe|crown; see|seeing|look|looking|looks clear|right|straight|clean|all_the_way through the|it|this? wall|pipe|side|bottom|iron; through to the dirt|soil|ground|earth|clay|bedding|rock;
  `,
  weakWords: ['tear', 'rip', 'gash', 'torn'],
  notWords: spoken`
    hole in my; hole in the ground; dig a hole; one hole; hole in one; post hole; same hole; this hole;
    the hole in the floor; in this hole; a hole in the wall; pothole; the whole; whole thing; whole way;
    whole house; whole line; whole pipe; whole time; whole lot; whole chunk; down the hole; rabbit hole;
    out of the hole; in the hole; cubby hole; hole for; hole up in|until|for; first hole; hole of the day; second hole;
    third hole; holes to go in; next hole; whole circumference; a whole chunk; a whole bunch; a whole lot;
    hole number; nineteenth hole; hole saw; hole in your wallet; holes in the yard; hole in the yard;
    burn a hole; hole in the lawn; dug a hole; hole punch; whole night; whole street; fox hole; access hole;
    whole chunk; hole in the budget; of the hole; drilled a hole for; hole for the; wear and tear;
    tear it|this|that|out|up|down; hole he|they dug; the hole in my; rip it|that|out; rip off; let her rip;
    torn out; cut|cuts|cutting the|a hole|holes; a whole in one;
    worm holes|hole in_the_wood; look right through you|me|it_and;
  `,
  misheard: [
    { heard: 'whole|hall|hull', said: 'hole', needs: 'article' },
    { heard: 'a whole|hull in', said: 'hole in', needs: 'nothing' },
  ],
  examples: {
    says: [
      {
        text: "A hole at 14, on the left. There's the main, at 40. Home we go. There's that hole.",
        gives: [
          { at: 14, position: 'left' },
          { kind: 'main-connection', at: 40 },
        ],
      },
      { text: "Somebody's put a pick through it at twenty.", gives: { at: 20 } },
      { text: "Ten feet. Look at the floor of the pipe. There's a hole.", gives: { at: 10, position: 'bottom' } },
      { text: 'Hole in the top at thirty five feet, about two inches.', gives: { at: 35, position: 'top', inches: 2 } },
      { text: 'Rusted clean through at 18.', gives: { at: 18 } },
      { text: "There's a hole at six o'clock, 40 feet.", gives: { at: 40, clock: 6 } },
      { text: 'Pinhole at 22 on the right.', gives: { at: 22, position: 'right' } },
      { text: "The bottom's worn right through at 14.", gives: { at: 14, position: 'bottom' } },
      { text: "It's rusted through at 9.", gives: { at: 9 } },
      { text: "There's a rip at nineteen, on the left.", gives: { at: 19, position: 'left' } },
    ],
    unsure: [
      {
        text: "There's a hull in the top at thirty five feet.",
        gives: { at: 35, position: 'top' },
        flag: 'word-unsure',
      },
      { text: 'Maybe a hole at 27.', gives: { at: 27, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "For a second I took that for a hole at fifteen, it's only a stain.",
      'They would have to dig a hole in the driveway.',
      'No holes.',
      'Hold on, five, let me read that again.',
      "We're back in the same hole going the other way.",
      'Normal wear and tear at six feet.',
      'I went the whole way without seeing anything.',
      'Rust eats a hole in the bottom sooner or later.',
    ],
  },
  report: {
    meaning: 'The wall is open to the ground here; sewage can leave the pipe and soil can enter.',
    next: 'Have a licensed plumber repair or replace this length.',
    glossary: 'Hole: an opening through the pipe wall.',
  },
} as const satisfies Kind;
