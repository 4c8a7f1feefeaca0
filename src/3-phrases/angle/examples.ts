/** Turns of the pipe. */
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    {
      value: { degrees: 45, count: 1 },
      ways: [
        'a forty five degree bend',
        'forty five degrees to the left',
        'a forty five',
        '45 degree',
        'another forty five',
        'a forty five and then forty five more',
        'a bend, forty five, right',
      ],
    },
    { value: { degrees: 90, count: 1 }, ways: ['a ninety', 'ninety degree elbow', 'hard ninety', 'long sweep ninety'] },
    {
      value: { degrees: 22.5, count: 1 },
      ways: ['a twenty two and a half', '22.5 degree bend', 'twenty two and a half degree bend'],
    },
    { value: { degrees: 90, count: 1 }, ways: ['quarter bend, left', 'a right angle turn'] },
    { value: { degrees: 45, count: 1 }, ways: ['an eighth bend', '1/8 bend'] },
    { value: { degrees: 22.5, count: 1 }, ways: ['a sixteenth bend', "it's a twenty two"] },
    { value: { degrees: 45, count: 2 }, ways: ['two forty fives', 'two 45s'] },
    { value: { degrees: 90, count: 2 }, ways: ['two nineties', 'two 90s'] },
  ],
  never: [
    'ninety feet',
    'a quarter of the bend',
    'ninety percent',
    'forty five feet',
    'forty five dollars',
    'thirty two degrees this morning',
    'forty five minutes',
  ],
  notYet: [
    { value: { degrees: 45, count: 2 }, ways: ['a pair of forty fives'] },
    { value: null, ways: ["it's ninety degrees outside"] },
  ],
} satisfies FamilyExamples<{ readonly degrees: number; readonly count: number }>;
