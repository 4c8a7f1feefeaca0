import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const hole = {
  name: 'hole',
  group: 'defect',
  title: 'Hole',
  plural: 'holes',
  takes: ['to', 'position', 'clock', 'inches'],
  words: ['hole', 'puncture', 'punctured', 'pinhole', 'pin hole'],
  signs: [
    'rusted|eaten|worn|rotted|corroded|wore|ate all|clean|right|clear through',
    'rusted|eaten|worn|rotted|corroded|wore all the way through',
    'gone all the way through',
    'rusted|rotted|worn|eaten|wore through',
    'see dirt through',
    'worn right through',
  ],
  notWords: spoken`
    hole in my; hole in the ground; dig a hole; one hole; hole in one; post hole; same hole; this hole;
    the hole in the floor; in this hole; a hole in the wall; pothole; the whole; whole thing; whole way;
    whole house; whole line; whole pipe; whole time; whole lot; whole chunk; down the hole; rabbit hole;
    out of the hole; in the hole; cubby hole; hole for; hole up; first hole; hole of the day; second hole;
    third hole; holes to go in; next hole; whole circumference; a whole chunk; a whole bunch; a whole lot;
    hole number; nineteenth hole; hole saw; hole in your wallet; holes in the yard; hole in the yard;
    burn a hole; hole in the lawn; dug a hole; hole punch; whole night; whole street; fox hole; access hole;
    whole chunk; hole in the budget;
  `,
  misheard: [{ heard: 'whole|hall|hull|hold', said: 'hole', needs: 'article' }],
  examples: {
    says: [
      { text: 'Hole in the top at thirty five feet, about two inches.', gives: { at: 35, position: 'top', inches: 2 } },
      { text: 'Rusted clean through at 18.', gives: { at: 18 } },
      { text: "There's a hole at six o'clock, 40 feet.", gives: { at: 40, clock: 6 } },
      { text: 'Pinhole at 22 on the right.', gives: { at: 22, position: 'right' } },
    ],
    unsure: [{ text: 'Maybe a hole at 27.', gives: { at: 27, status: 'suspected' }, flag: 'suspected' }],
    never: [
      'They would have to dig a hole in the driveway.',
      'No holes.',
      'I went the whole way without seeing anything.',
      'Rust eats a hole in the bottom sooner or later.',
    ],
    notYet: [
      {
        text: "There's a hull in the top at thirty five feet.",
        gives: { at: 35, position: 'top' },
        flag: 'word-unsure',
      },
    ],
  },
  report: {
    meaning: 'The wall is open to the ground here; sewage can leave the pipe and soil can enter.',
    next: 'Have a licensed plumber repair or replace this length.',
    glossary: 'Hole: an opening through the pipe wall.',
  },
} as const satisfies Kind;
