/** Where on the wall. */
import type { Position } from '../../../shared/vocabulary/attributes.ts';
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    {
      value: 'top',
      ways: ['coming in from the top', 'at the crown', 'up top', 'overhead', 'upper side', 'along the upper half'],
    },
    {
      value: 'bottom',
      ways: [
        'along the bottom',
        'in the invert',
        'in the flow line',
        'on the floor of the pipe',
        'gravel on the floor',
      ],
    },
    {
      value: 'left',
      ways: [
        'on the left',
        'left hand side',
        'left side of the pipe',
        'off to the left',
        'bends to the left of twenty degrees',
      ],
    },
    { value: 'right', ways: ['on the right', 'right hand side', 'from the right', 'on the right wall'] },
    {
      value: 'side',
      ways: [
        'at the spring line',
        'both sides',
        'along both walls',
        'on the left and the right',
        'on the side wall',
        'from the side',
      ],
    },
    { value: 'all-around', ways: ['all the way around', 'all around the joint', 'full circumference', 'clean around'] },
  ],
  never: [
    'I can squeeze by on the left',
    'slid past it on the right',
    'lying on its side',
    'a flap hinged at the top',
    'flow going left to right',
    'water on the floor',
    'right now',
    'right at the joint',
    'we left the truck running',
    'all right',
    'right away',
    'he left early',
    'the bottom line is',
    'side yard',
    'on the other side of the street',
    'right out of the gate',
  ],
  notYet: [{ value: null, ways: ['top dollar', 'nothing left to see', 'from top to tail'] }],
} satisfies FamilyExamples<Position>;
