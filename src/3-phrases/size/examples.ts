/** Inches of a thing, and the nominal size of the pipe. */
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    { value: { inches: 0.5 }, ways: ['half an inch', 'a half inch offset', 'half inch gap', 'one half inch'] },
    {
      value: { inches: 1.5 },
      ways: ['an inch and a half of water', 'inch and a half offset', 'one and a half inches deep'],
    },
    { value: { inches: 0.75 }, ways: ['three quarter inch lip', 'three quarters of an inch'] },
    { value: { inches: 2 }, ways: ['two inches of water', 'about two inches deep', 'a two inch hole'] },
    { value: { inches: 1 }, ways: ['maybe inch of water', 'sticks in an inch', 'about an inch deep', 'one inch'] },
    {
      value: { diameterIn: 4 },
      ways: [
        'four inch clay',
        'a four-inch line',
        '4" cast iron',
        'cast iron, four inch.',
        'size four',
        'four inches in diameter',
        'for inch PVC',
        'cast iron, for inch',
      ],
    },
    { value: { diameterIn: 6 }, ways: ['it is six inch from here', 'six inch pipe', 'diameter is six'] },
    { value: { diameterIn: 1.5 }, ways: ['inch and a half copper'] },
    { value: { diameterIn: 2 }, ways: ['too inch pipe'] },
    { value: { diameterIn: 6 }, ways: ["it's clay, and it's a six.", 'Clay tile. Six.'] },
  ],
  never: [
    'four feet',
    'Clay at twenty. Roots. Four.',
    'the third one is a six pack',
    'inch by inch',
    'inching along',
    'going to inch along',
    'size of a basketball',
  ],
  notYet: [{ value: null, ways: ['give him an inch and he takes a mile'] }],
} satisfies FamilyExamples<{ readonly inches: number } | { readonly diameterIn: number }>;
