/** How much of it. "Some", "hairline" and "worse" give none. */
import type { Degree } from '../../../shared/vocabulary/attributes.ts';
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    {
      value: 'light',
      ways: [
        'light scale',
        "there's a light scale here",
        'there are light roots',
        'a little grease',
        'slight offset',
        'minor roots',
        'just a touch of rust',
        'bit of grease here',
        'a bit of a dip',
        'scale on the bottom, nothing heavy',
        'a bit of debris',
      ],
    },
    { value: 'moderate', ways: ['moderate roots', 'medium scale', 'a fair amount of grease'] },
    {
      value: 'heavy',
      ways: [
        'heavy roots',
        'severe offset',
        "it's pretty bad",
        'a lot of scale',
        'packed with roots',
        'major offset',
        'badly corroded',
      ],
    },
  ],
  never: [
    'I can get the lens light into the gap',
    'a shallow groove worn in it',
    'in between those two',
    'a little worse than the left one',
    'where it goes bad',
    'some roots',
    'hairline crack',
    'it gets worse',
    'turn the light up',
    'not too bad',
    'back up a little further',
    'a heavy truck went by',
    'the parking lot',
    'bad weather',
    'my bad',
    'a little past that',
    'drill bit',
    'not a lot to see',
  ],
} satisfies FamilyExamples<Degree>;
