/** Numbers that are no place: what they count, or "length" for how long a thing is along the pipe. */
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    { value: 'years', ways: ['the house is sixty years old', 'twenty years ago', 'give it five years'] },
    { value: 'year', ways: ['built in fifty eight', 'nineteen fifty eight', 'built in 1962'] },
    { value: 'clockTime', ways: ['forty five minutes', 'at nine in the morning', 'ten am'] },
    { value: 'money', ways: ['two hundred dollars', 'fifty bucks', 'quoted nine hundred'] },
    { value: 'people', ways: ['four kids', 'three of us'] },
    { value: 'pieces', ways: ['three bedrooms', 'twelve joints', 'two dogs', 'five gallons'] },
    { value: 'temperature', ways: ['ninety five outside', 'twenty below'] },
    {
      value: 'length',
      ways: [
        'ten feet long',
        'six feet of scale',
        'for the next five feet',
        'goes on for twelve feet',
        'and that goes on for another eight',
        'running about a foot',
      ],
    },
    { value: 'depth', ways: ['six feet deep', 'eight feet down', 'four feet of cover'] },
    { value: 'ordinal', ways: ['unit twelve', 'joint number five', 'lot 40', 'house number twelve'] },
  ],
  never: [
    'at twenty feet',
    'thirty percent',
    "three o'clock",
    'four inch',
    'twenty three, roots',
    'no kids in this house',
  ],
} satisfies FamilyExamples<string>;
