/** What the camera and its counter do; a way may hold other cues beside the one named. */
import type { Direction } from '../../../shared/vocabulary/attributes.ts';
import type { FamilyExamples } from '../example.ts';
import type { CameraCue } from './lexicon.ts';

export const examples = {
  says: [
    {
      value: 'pull-back',
      ways: [
        'pulling back now',
        "okay I'm coming back",
        'on the way out we see it again',
        'reeling in',
        'backing it out',
      ],
    },
    { value: 'zero', ways: ['counter is at zero', 'zeroing the counter', 'reset to zero', 'zeroed out at the cap'] },
    {
      value: 'next-run',
      ways: [
        'now going the other way',
        'turning around',
        'second run',
        'next opening',
        'switching to the back cleanout',
      ],
    },
    { value: 'same-access', ways: ['same cleanout', 'from the same opening', 'same riser'] },
    {
      value: 'access',
      ways: ['front cleanout', 'through the pulled toilet', 'down the roof vent', 'at the floor drain'],
    },
    { value: 'enter', ways: ["I'm going in", 'heading downstream', 'pushing out', 'dropping in'] },
    { value: 'summary', ways: ['to sum up', 'so in summary', 'long story short', 'all in all'] },
    {
      value: 'downstream',
      ways: ['heading downstream', 'going with the flow', 'out toward the street', 'down to the main'],
    },
    {
      value: 'upstream',
      ways: ['heading upstream', 'against the flow', 'up toward the house', 'back under the house'],
    },
  ],
  never: [
    'she called me back',
    'he comes by on Fridays',
    'it is eight degrees below zero',
    'the toilet runs',
    'somebody is running water upstairs',
  ],
} satisfies FamilyExamples<CameraCue | Direction>;
