/** Readings of the counter, stretches between two of them, and ways from somewhere. */
import type { FamilyExamples } from '../example.ts';
import type { RelativeValue } from '../phrase.ts';

type DistanceExample =
  | { readonly feet: number; readonly toFeet?: number; readonly isEnd?: true }
  | { readonly further: number | null; readonly shape: RelativeValue['shape'] };

export const examples = {
  says: [
    {
      value: { feet: 23 },
      ways: [
        'roots at twenty three feet',
        'twenty three feet, roots',
        'at 23 there is a crack',
        'counter says twenty three',
        'twenty three, roots',
        'we are at 23 now',
        'station 23',
        'at about twenty three',
      ],
    },
    {
      value: { feet: 18.5 },
      ways: [
        'offset at eighteen and a half feet',
        'at eighteen point five',
        'eighteen feet and a half, crack',
        '18. 5 feet',
      ],
    },
    {
      value: { feet: 0, toFeet: 8 },
      ways: [
        'crusty for the first eight feet',
        'scale right from the start out to about eight',
        'sand from the word go, up to the eight foot mark',
      ],
    },
    { value: { feet: 17 }, ways: ['stopped at seventeen by the same stuff', "can't push any farther than seventeen"] },
    {
      value: { feet: 112 },
      ways: ['crack at one plus twelve', 'one plus twelve, wye', 'station 1+12', 'roots, one plus twelve'],
    },
    { value: { feet: 46.5 }, ways: ['zero plus forty six point five, a tee', 'tee at oh plus forty six and a half'] },
    { value: { feet: 206 }, ways: ['offset, two plus oh six', 'station two plus zero six'] },
    { value: { feet: 30, toFeet: 38 }, ways: ['from zero plus thirty to zero plus thirty eight'] },
    { value: { feet: 10.5 }, ways: ['ten feet six inches'] },
    { value: { feet: 32 }, ways: ['they cut it out at thirty two', 'this run ends at 32'] },
    {
      value: { feet: 60 },
      ways: [
        'call it sixty',
        'coming up on sixty',
        'just past sixty feet, wye',
        'sixty feet or so',
        'sixty and change, crack',
      ],
    },
    {
      value: { feet: 40, toFeet: 44 },
      ways: ['from forty four back to forty', 'scale, forty down to forty four'],
    },
    {
      value: { feet: 31, toFeet: 38 },
      ways: [
        '31-38 feet',
        '31 to 38 feet',
        'from thirty one to thirty eight',
        'between 31 and 38',
        'starts at thirty one and goes to thirty eight',
        'thirty one feet through thirty eight feet',
        'in at 31, out at 38',
        'from 31 2 38',
        'from 31 too 38 feet',
      ],
    },
    {
      value: { feet: 45, isEnd: true },
      ways: [
        "it doesn't come back up till forty five",
        'I lose it again around forty five',
        'up to where the wall is which is forty five',
        "and I don't see it let up until, oh, forty five",
        'it is with us all the way to forty five',
        'it keeps up until I reach the wall at forty five',
        'the last of it is at forty five',
        'out of it at forty five',
        'clears up at forty five',
        'all the way to forty five',
        'lets go at 45',
      ],
    },
    { value: { feet: 52 }, ways: ['a belly at fifty to feet', 'crack at 52'] },
    {
      value: { further: 5, shape: 'offset' },
      ways: [
        'five feet further on',
        'another five feet',
        'five feet past the wye',
        'five more feet',
        '5 feet on from there',
        'five feet beyond the coupling',
      ],
    },
    {
      value: { further: -3, shape: 'offset' },
      ways: ['three feet short of the main', 'three feet before the wye', 'three feet back'],
    },
    { value: { further: 2, shape: 'offset' }, ways: ['a couple feet past the wye', 'two feet past it'] },
    {
      value: { further: 4, shape: 'offset' },
      ways: [
        'four past the wye there is a crack',
        'four further, a tee',
        'four more and the joint is dropped',
        'four later, clay',
        'four up from the gasket, a hole',
      ],
    },
    { value: { further: -2, shape: 'offset' }, ways: ['just two short of it a crack'] },
    { value: { further: 1, shape: 'offset' }, ways: ['a foot past it', 'one foot past the tee'] },
    {
      value: { further: 0, shape: 'same' },
      ways: ['same spot', 'same spot, a crack', 'in that same joint', 'right there, a crack', 'a void, same place.'],
    },
    {
      value: { further: null, shape: 'between' },
      ways: ['halfway between the wye and the main', 'midway between those two couplings'],
    },
    { value: { further: null, shape: 'middle' }, ways: ['in the middle of the belly', 'halfway through it'] },
    {
      value: { further: 5, shape: 'offset' },
      ways: [
        'I carry on for another five feet',
        'go another five and there',
        'push on five feet',
        'five feet lower',
        'clean for another five feet, and then a tee',
        'tee. plus five.',
        'we go on five feet',
      ],
    },
    { value: { further: 0.5, shape: 'offset' }, ways: ['half a foot past it'] },
    { value: { further: 4, shape: 'inside' }, ways: ['four feet into the liner', 'four feet into it'] },
    { value: { further: null, shape: 'end' }, ways: ['right where it ends', 'at the far end of the sag'] },
    { value: { further: null, shape: 'start' }, ways: ['at the start of the belly', 'right where it begins'] },
    {
      value: { feet: 5, toFeet: 16 },
      ways: ['as far as sixteen feet, it begins at about five'],
    },
    { value: { feet: 10.5 }, ways: ['ten foot six', 'crack at 10\'6"'] },
    {
      value: { feet: 40, toFeet: 44 },
      ways: ['from forty four, back to forty', 'scale from forty four feet back to forty feet'],
    },
  ],
  never: [
    'for about a foot in there I saw nothing',
    'there are two more of them',
    'a four inch line',
    'about thirty percent of it',
    'a forty five degree bend',
    "at three o'clock",
    'built in nineteen fifty eight',
    'the main is nine feet deep there',
    'twenty years old',
    'eighty years of soap, well, sixty.',
    'a bushing drops it from five down to three',
    'a reducer, three by four',
    'schedule forty',
    'paid two hundred dollars',
    'that one again',
    'I have two dogs',
    'unit twelve',
    'locator says six feet',
    'call me at five five five oh one two three',
    'one of those days',
    'between those two there',
    'back up two feet',
    'for the next five feet',
    'water two inches deep',
    'runs three feet',
  ],
} satisfies FamilyExamples<DistanceExample>;
