/** Numbers as they are spoken and as recognisers print them. */
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    {
      value: 11.5,
      ways: ['eleven and a half feet', '11 and a half feet', '11.5 feet', '11. And a half.', 'eleven point five'],
    },
    { value: 42.25, ways: ['forty two and a quarter', '42 and a quarter feet', '42¼ feet'] },
    { value: 42.75, ways: ['forty two and three quarters feet', '42 and three quarters'] },
    {
      value: 105,
      ways: [
        'a hundred and five feet',
        'hundred and five feet',
        'one hundred five feet',
        'one oh five',
        'a hundred five',
      ],
    },
    { value: 120, ways: ['one twenty feet', 'a hundred and twenty feet', '120 feet'] },
    { value: 212, ways: ['two twelve', 'two hundred twelve', 'two hundred and twelve feet'] },
    {
      value: 52.5,
      ways: ['fifty two five', 'fifty two point five', '52 five', 'fifty two and a half', 'fifty-two and a half'],
    },
    {
      value: 0.75,
      ways: ['three quarters of the pipe', 'three quarter inch', '3/4 inch', 'point seven five of an inch'],
    },
    { value: 0.5, ways: ['half the pipe', 'a half inch', 'one half'] },
    { value: 2, ways: ['a couple feet', 'a couple of feet', 'two feet'] },
    { value: 2.5, ways: ['2 and a 1/2 feet', 'two and a half'] },
    { value: 44, ways: ['40 for.', '40 for feet', '40 for and'] },
    { value: 52, ways: ['fifty to feet', 'fifty two feet', '52 feet'] },
    { value: 1962, ways: ['nineteen sixty two', '1962'] },
    { value: 30.4, ways: ['thirty point four', '30.4'] },
    { value: 0, ways: ['zero', '0'] },
  ],
  never: [
    'no roots anywhere',
    'halfway down',
    'too many to count',
    'for what it is worth',
    'won the bid',
    'I ate already',
  ],
  notYet: [{ value: 30.4, ways: ['thirty and four tenths'] }],
} satisfies FamilyExamples<number>;
