/** Shares of the bore, in percent. */
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    { value: 30, ways: ['thirty percent', 'about thirty percent of the pipe', '30%', 'thirty per cent blocked'] },
    {
      value: 33,
      ways: [
        'a third of the pipe',
        'about a third full',
        'taking up a third of it',
        'roughly a third',
        "it's about a third there",
        'a good third of the pipe',
        'maybe a third and then it opens up',
      ],
    },
    {
      value: 50,
      ways: [
        'about halfway up the pipe',
        'the water is halfway up',
        'half full',
        'half the pipe',
        'blocking half the bore',
        "it's about half",
        'half of pipe is closed',
        'the pipe is down to half',
      ],
    },
    { value: 15, ways: ['ten to twenty percent', 'between ten and twenty percent', 'maybe ten, twenty percent'] },
    { value: 67, ways: ['two thirds of the way up', 'two thirds full'] },
    { value: 25, ways: ['a quarter of the pipe', 'a quarter full', 'lost about a quarter of its height'] },
    { value: 75, ways: ['three quarters of the pipe', 'three quarters blocked'] },
    { value: 80, ways: ['leaving twenty percent of the pipe open', 'only twenty percent of the bore is left'] },
    { value: 100, ways: ['a hundred percent blocked', 'one hundred percent'] },
  ],
  never: [
    "we're halfway up the hill",
    'the third of the pipes',
    'half an inch',
    'a hole about like a quarter',
    'an inch and a half of it',
    'a two percent slope',
    "battery's at forty percent",
    'half an hour',
    'a third of the houses on this street',
    'half past nine',
    'ninety percent chance of rain',
    'a quarter mile',
    'I am a hundred percent sure',
  ],
} satisfies FamilyExamples<number>;
