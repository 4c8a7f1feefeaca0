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
        'let me wind it back',
        "let's head back",
        'now in reverse',
        'on the pull',
        'okay, coming back to you',
        "okay I'm coming back",
        'on the way out we see it again',
        'reeling in',
        'backing it out',
      ],
    },
    {
      value: 'zero',
      ways: [
        'counter is at zero',
        'zeroing the counter',
        'reset to zero',
        'zeroed out at the cap',
        'footage has been reset',
        'meter on nought',
        'count starts over from here',
        'number reads zero again',
      ],
    },
    {
      value: 'next-run',
      ways: [
        'now going the other way',
        'turning around',
        'second run',
        'next opening',
        'switching to the back cleanout',
        'survey two',
        'now for the house side',
        'swapped ends',
        'round two',
        'let me do the upstream half',
        'new access',
      ],
    },
    { value: 'same-access', ways: ['same cleanout', 'from the same opening', 'same riser'] },
    {
      value: 'access',
      ways: [
        'front cleanout',
        'through the pulled toilet',
        'down the roof vent',
        'at the floor drain',
        'I lifted the hall toilet',
        'in by the rodding eye',
      ],
    },
    { value: 'enter', ways: ["I'm going in", 'heading downstream', 'pushing out', 'dropping in'] },
    {
      value: 'finish',
      ways: [
        "I'm ending this one here",
        "that's where I'll stop it",
        'no reason to go on',
        'I can see daylight',
        "that's far enough",
        'out of cable',
      ],
    },
    { value: 'summary', ways: ['to sum up', 'so in summary', 'long story short', 'all in all'] },
    {
      value: 'downstream',
      ways: [
        'heading downstream',
        'going with the flow',
        'out toward the street',
        'down to the main',
        'with the current',
        'outbound',
        'pointed at the road',
      ],
    },
    {
      value: 'upstream',
      ways: [
        'heading upstream',
        'against the flow',
        'up toward the house',
        'back under the house',
        'inbound',
        'facing the building',
        'in under the slab',
      ],
    },
  ],
  never: [
    'she called me back',
    'and coming out the far side of it',
    "the tub's backing up",
    'pull back a foot',
    'I did want to see that',
    'let me zero in on this crack',
    'there are zero defects in it',
    'roots on the house side of the joint',
    'up the ladder I go',
    'he comes by on Fridays',
    'it is eight degrees below zero',
    'the toilet runs',
    'somebody is running water upstairs',
  ],
} satisfies FamilyExamples<CameraCue | Direction>;
