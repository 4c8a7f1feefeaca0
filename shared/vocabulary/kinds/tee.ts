import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const tee = {
  name: 'tee',
  group: 'fitting',
  title: 'Tee',
  plural: 'tees',
  takes: ['position', 'clock', 'serves'],
  words: spoken`
    tee; t fitting; sanitary tee; santee; san tee; tee fitting; t connection; test tee; inlet tee; baffle tee;
    tee connection; tee junction; t junction; t piece; tee piece; tee branch; saddle tee; tap tee; tee type; vent tee;
    t shape; t shaped fitting|piece|connection|joint|branch; tee shape|shaped fitting?; sani tee; straight tee; cleanout tee on;
  `,
  notWords: spoken`
    cup of tea; iced tea; to a t; t shirt; tee off; golf tee; sweet tea; tee time; tee shirt;
  `,
  misheard: [
    { heard: 't|tea|teas|ts', said: 'tee', needs: 'article' },
    { heard: 't|tea on|off|to the', said: 'tee', needs: 'distance' },
    { heard: '<service> t|tea', said: 'tee', needs: 'distance' },
    { heard: 'inlet|outlet|sanitary|test|baffle|saddle t|tea|key', said: 'tee', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'A T shaped fitting at fifteen.', gives: { at: 15 } },
      {
        text: "There's a yard drain. Tee in the top of the pipe. Nineteen feet.",
        gives: { at: 19, position: 'top', serves: 'yard' },
      },
      { text: "Nine feet, tee on the left. Not the tub, the tub's behind us.", gives: { at: 9, position: 'left' } },
      { text: 'Nine feet, tee, bar sink, so that would be the kitchen.', gives: { at: 9, serves: 'kitchen' } },
      { text: 'Tee at seventeen feet, comes in from the top.', gives: { at: 17, position: 'top' } },
      { text: "Here's a sanitary tee at 29 feet for the water heater.", gives: { at: 29, serves: 'water-heater' } },
      { text: 'At twelve feet we have a tee, and that is where the tub drops in.', gives: { at: 12, serves: 'tub' } },
      { text: 'A saddle tee opens to the left at thirty one.', gives: { at: 31, position: 'left' } },
      { text: "At forty point two there's a tee on the left.", gives: { at: 40.2, position: 'left' } },
    ],
    unsure: [
      {
        text: "Maybe a tee at 21, I can't get the head turned to look.",
        gives: { at: 21, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: [
      'A tee like that should never be laid on its back.',
      'I left a cup of tea in the truck.',
      "There's no tee on this line.",
      'He left a golf tee on the step.',
    ],
    notYet: [
      {
        text: "There's a tea at thirty three on the right.",
        gives: { at: 33, position: 'right' },
        flag: 'word-unsure',
      },
    ],
  },
  report: {
    meaning: 'Another drain or an opening joins the line here through a T-shaped fitting.',
    next: 'Nothing to do.',
    glossary: 'Tee: a T-shaped fitting that brings a second drain in at a right angle.',
  },
} as const satisfies Kind;
