/** Whole sentences: what is replaced, what is taken back, and where the target is in doubt. */
import type { SentenceExamples } from '../example.ts';

export const examples = {
  given: [
    { text: 'Roots at 19, no wait, 20. No, 19, I had it right.', gives: { kind: 'roots', at: 19 } },
    { text: 'Belly from 18 to 24, no, make it 26.', gives: { kind: 'belly', at: 18, to: 26 } },
    {
      text: 'Offset at thirty one feet. No, make that thirty three feet, about half an inch.',
      gives: { kind: 'offset-joint', at: 33, inches: 0.5 },
    },
    {
      text: "Crack at twelve feet. Sorry, make it fourteen feet, three o'clock.",
      gives: { kind: 'crack', at: 14, clock: 3 },
    },
    { text: 'Roots at twenty one, make that twenty four feet.', gives: { kind: 'roots', at: 24 } },
    { text: 'Crack at thirty, no wait, thirty three feet.', gives: { kind: 'crack', at: 33 } },
    { text: 'Offset at 15. Correction, 16.', gives: { kind: 'offset-joint', at: 16 } },
    { text: 'Wye on the left at 27. Sorry, on the right.', gives: { kind: 'wye', at: 27, position: 'right' } },
    { text: 'There is a hole at forty. Scratch that, forty two.', gives: { kind: 'hole', at: 42 } },
    {
      text: 'Grease at 33, a quarter of the pipe, no, closer to half.',
      gives: { kind: 'grease', at: 33, percent: 50 },
    },
    { text: 'Crack at forty one, forty two.', gives: { kind: 'crack', at: 42 } },
    {
      text: 'Offset at 14. Roots at 22. That offset I called at 14 should be 16.',
      gives: [
        { kind: 'offset-joint', at: 16 },
        { kind: 'roots', at: 22 },
      ],
    },
    { text: "Crack at twenty six. No, it isn't twenty six, it's twenty five.", gives: { kind: 'crack', at: 25 } },
    { text: "A hole at thirty five. I had it as thirty five but it's thirty six.", gives: { kind: 'hole', at: 36 } },
    {
      text: 'A laundry drain on the left at ten. Roots at thirty. I said ten for the laundry, it should have been eleven.',
      gives: [
        { kind: 'branch', at: 11, position: 'left', serves: 'laundry' },
        { kind: 'roots', at: 30 },
      ],
    },
    {
      text: 'A crack at fifteen. Roots at thirty. I had fifteen on that crack but the reel slipped. Sixteen is the right number.',
      gives: [
        { kind: 'crack', at: 16 },
        { kind: 'roots', at: 30 },
      ],
    },
    {
      text: 'A belly from twenty two to thirty. Roots at forty. That belly went to thirty two, not thirty.',
      gives: [
        { kind: 'belly', at: 22, to: 32 },
        { kind: 'roots', at: 40 },
      ],
    },
    {
      text: 'A crack at fourteen. Roots at thirty. I said fourteen for the crack, it reads fifteen from this side, I will keep fourteen.',
      gives: [
        { kind: 'crack', at: 14 },
        { kind: 'roots', at: 30 },
      ],
    },
    {
      text: 'A crack at fourteen. A wye at fifteen. I put the crack at fourteen and the wye is at fifteen.',
      gives: [
        { kind: 'crack', at: 14 },
        { kind: 'wye', at: 15 },
      ],
    },
    {
      text: 'A crack at twenty two. Roots at thirty. Let me fix the crack. Twenty four is right.',
      gives: [
        { kind: 'crack', at: 24 },
        { kind: 'roots', at: 30 },
      ],
    },
    {
      text: 'A belly from twenty two to thirty. Roots at forty. The belly, I said it ended at thirty, it is thirty two, that was my mistake.',
      gives: [
        { kind: 'belly', at: 22, to: 32 },
        { kind: 'roots', at: 40 },
      ],
    },
    {
      text: 'A crack at twenty two. You should fix the crack. Thirty four. Offset joint.',
      gives: [
        { kind: 'crack', at: 22 },
        { kind: 'offset-joint', at: 34 },
      ],
    },
    { text: 'A wye at twenty. Move that to twenty two.', gives: { kind: 'wye', at: 22 } },
    {
      text: 'Roots at thirty, from the top. I take that back, they come in all around, not just from the crown.',
      gives: { kind: 'roots', at: 30, position: 'all-around' },
    },
    { text: 'Light roots at thirty. On second look, heavy.', gives: { kind: 'roots', at: 30, degree: 'heavy' } },
    { text: "Scale at twelve. Scratch that, it's grease.", gives: { kind: 'grease', at: 12 } },
    { text: "Scale at twelve no that's grease.", gives: { kind: 'grease', at: 12 } },
    { text: 'Tee at ten I mean a wye.', gives: { kind: 'wye', at: 10 } },
    { text: "Crack at nineteen no it's just a hair on the lens.", gives: [] },
    { text: 'Crack at 26, no, fracture.', gives: { kind: 'fracture', at: 26 } },
    { text: 'Cleanout at 19. Correction, vent.', gives: { kind: 'vent', at: 19 } },
    { text: 'Belly at 17. No, I mean a back pitch.', gives: { kind: 'back-pitch', at: 17 } },
    {
      text: "There's a tee at 12, so it's a wye really. I called it a tee, it's a wye.",
      gives: { kind: 'wye', at: 12 },
    },
    { text: 'Offset at 21. I had the number wrong. The offset is at 23.', gives: { kind: 'offset-joint', at: 23 } },
    { text: 'Hole at 16. Seventeen, I mean.', gives: { kind: 'hole', at: 17 } },
    {
      text: 'Grease at 28, a third of the pipe. Roots at 35. I had the grease at 28, it is 29.',
      gives: [
        { kind: 'grease', at: 29, percent: 33 },
        { kind: 'roots', at: 35 },
      ],
    },
    { text: 'Deformed at 41, twenty percent. Make it thirty.', gives: { kind: 'deformation', at: 41, percent: 30 } },
    { text: 'Hole at 33. Never mind the barking, that is Rex.', gives: { kind: 'hole', at: 33 } },
    { text: 'Crack at 25. I lied. 26.', gives: { kind: 'crack', at: 26 } },
    { text: 'Crack at 25. Hang on, I was still rolling. 26.', gives: { kind: 'crack', at: 26 } },
    { text: "Tee at 9, what's it say, 10.", gives: { kind: 'tee', at: 10 } },
    { text: 'Belly from 4 to 10. 12, really.', gives: { kind: 'belly', at: 4, to: 12 } },
    { text: 'Crack at 15. 50, not 15.', gives: { kind: 'crack', at: 50 } },
    { text: 'Light roots at 25, actually, heavy.', gives: { kind: 'roots', at: 25, degree: 'heavy' } },
  ],
  flagged: [
    {
      text: 'Crack at 20. Hole at 21. Sorry, that was 23.',
      gives: [
        { kind: 'crack', at: 20 },
        { kind: 'hole', at: 23 },
      ],
      flag: 'corrected',
    },
  ],
  notGiven: [
    'Roots at twenty. Scratch that.',
    "Crack at 31. No, forget that, it's a seam.",
    "There's an offset at 14. Never mind, that's the camera tilting.",
    'Break at 44 feet. Strike that, false alarm.',
    'Hole at 29. No, just a shadow.',
    'Crack at 37. I take that back.',
    'Offset at 24. My mistake, nothing there.',
    'Root at 12, hole at 15. Scratch both of those.',
  ],
  notYet: [
    { text: "Tee at 31 on the right. I said tee, it's a wye.", gives: { kind: 'wye', at: 31, position: 'right' } },
    { text: 'Scale at 12. I keep saying scale, I mean grease.', gives: { kind: 'grease', at: 12 } },
    { text: 'Roots at eighteen or, uh, nineteen.', gives: { kind: 'roots', at: 19 }, flag: 'distance-unsure' },
  ],
} satisfies SentenceExamples;
