/** Whole sentences: what is claimed in spite of the words round it, what is doubted, and what is not claimed at all. */
import type { SentenceExamples } from '../example.ts';

export const examples = {
  given: [
    { text: 'Roots at forty six. Call it sixty percent blocked.', gives: [{ kind: 'roots', at: 46, percent: 60 }] },
    {
      text: 'Grease at thirty one, half the line is plugged with it.',
      gives: [{ kind: 'grease', at: 31, percent: 50 }],
    },
    {
      text: 'Crack at twelve on the left and roots at sixteen, ten percent.',
      gives: [
        { kind: 'crack', at: 12, position: 'left' },
        { kind: 'roots', at: 16, percent: 10 },
      ],
    },
    { text: 'Water about an inch deep from 20 to 28.', gives: [{ kind: 'belly', at: 20, to: 28, inches: 1 }] },
    { text: 'Roots at 22 cut it down by half.', gives: [{ kind: 'roots', at: 22, percent: 50 }] },
    {
      text: "A little grease at 12 feet, and I can't get past the bend at 23 feet.",
      gives: [
        { kind: 'grease', at: 12, degree: 'light' },
        { kind: 'stopped', at: 23 },
        { kind: 'bend', at: 23 },
      ],
    },
    {
      text: "I can't rule out a break at 46.",
      gives: { kind: 'break', at: 46, status: 'suspected' },
    },
    { text: "Looks like a break at 22 but it isn't.", gives: [] },
    { text: "At twenty two, oh no there's a hole in the bottom.", gives: { kind: 'hole', at: 22, position: 'bottom' } },
    { text: 'At forty, a hole, no pipe at all on the bottom.', gives: { kind: 'hole', at: 40, position: 'bottom' } },
    { text: 'At thirty, an offset, no roots in it.', gives: { kind: 'offset-joint', at: 30 } },
    { text: 'Nothing for twelve feet and I am in the main at fifty.', gives: { kind: 'main-connection', at: 50 } },
    { text: "At eighteen there's a wye that goes nowhere.", gives: { kind: 'wye', at: 18 } },
    {
      text: 'Thirty eight, caved in, no way through.',
      gives: [
        { kind: 'collapse', at: 38 },
        { kind: 'stopped', at: 38 },
      ],
    },
    { text: 'The seller said roots, and yep, roots at nineteen.', gives: { kind: 'roots', at: 19 } },
    {
      text: 'He says there were roots last year, and there they are at nineteen.',
      gives: { kind: 'roots', at: 19 },
    },
    { text: 'No problem, here come the roots at nineteen feet.', gives: { kind: 'roots', at: 19 } },
    { text: "No doubt about it, that's a crack at 26.", gives: { kind: 'crack', at: 26 } },
    { text: "Not gonna lie, that's a big belly at thirty three.", gives: { kind: 'belly', at: 33 } },
    { text: "You can't miss that offset at twelve feet.", gives: { kind: 'offset-joint', at: 12 } },
    { text: "Not a lot of grease at 41 but there's some.", gives: { kind: 'grease', at: 41 } },
    {
      text: 'Not just scale, there is a hole at fifteen feet.',
      gives: [
        { kind: 'scale', at: 15 },
        { kind: 'hole', at: 15 },
      ],
    },
    {
      text: "There's no breaks in this section and here we've got an offset at forty two feet.",
      gives: { kind: 'offset-joint', at: 42 },
    },
    { text: 'No roots so far but at thirty one there is a crack.', gives: { kind: 'crack', at: 31 } },
    { text: 'No cracks okay now at 38 we have some gravel.', gives: { kind: 'debris', at: 38 } },
    { text: "I think, no, I'm sure, that's a hole at twenty feet.", gives: { kind: 'hole', at: 20 } },
    { text: 'Roots at 18, maybe a quarter of the pipe.', gives: { kind: 'roots', at: 18, percent: 25 } },
    {
      text: "Wye on the left at 27, I'm guessing that's the laundry.",
      gives: { kind: 'wye', at: 27, position: 'left', serves: 'laundry' },
    },
    { text: 'Hole at 18, maybe somebody drilled it.', gives: { kind: 'hole', at: 18 } },
    { text: 'Might be a crack at 31. Yes, it is a crack.', gives: { kind: 'crack', at: 31 } },
    { text: 'Offset at 44, probably from that big maple.', gives: { kind: 'offset-joint', at: 44 } },
    { text: "You usually see these in clay, and here's one, open joint at 36.", gives: { kind: 'open-joint', at: 36 } },
    {
      text: 'Like I always say, look at the joints, and sure enough there are roots at fifty two feet.',
      gives: { kind: 'roots', at: 52 },
    },
  ],
  flagged: [
    { text: "Crack at 22. I can't be sure.", gives: { kind: 'crack', at: 22, status: 'suspected' }, flag: 'suspected' },
    {
      text: "Don't quote me, but that's a void at 36.",
      gives: { kind: 'void', at: 36, status: 'suspected' },
      flag: 'suspected',
    },
    {
      text: 'A collapse at 51, or could be.',
      gives: { kind: 'collapse', at: 51, status: 'suspected' },
      flag: 'suspected',
    },
    {
      text: 'That might be an offset at 17.',
      gives: { kind: 'offset-joint', at: 17, status: 'suspected' },
      flag: 'suspected',
    },
    {
      text: "There's something at 30, I want to say a crack.",
      gives: { kind: 'crack', at: 30, status: 'suspected' },
      flag: 'suspected',
    },
    {
      text: "Roots at 25 possibly, it's blurry.",
      gives: { kind: 'roots', at: 25, status: 'suspected' },
      flag: 'suspected',
    },
    {
      text: 'Could be a hole, could be a shadow, twenty eight feet.',
      gives: { kind: 'hole', at: 28, status: 'suspected' },
      flag: 'suspected',
    },
    {
      text: "Looks like it could be grease at 33 but don't hold me to that.",
      gives: { kind: 'grease', at: 33, status: 'suspected' },
      flag: 'suspected',
    },
  ],
  notGiven: [
    "Looked like a hole at nine, it's only a stain.",
    'Possible crack at 27. That crack at 27 turned out to be a hair.',
    'I do not see any roots, cracks or offsets through here.',
    'Cracks I am not seeing.',
    'An offset, for the folks watching, is when one pipe drops below the other.',
    'The last guy wrote up a break that was never there.',
    'Roots no, cracks no, bellies no.',
    'Collapse, there is none.',
    'Roots on this run. None.',
    'As for grease, nothing.',
    'Absent from this line. Roots, offsets, and grease.',
    'At no point did I find a break.',
    "I don't believe there's a belly in here.",
    "I thought that was a crack at thirty but it's just a hair on the lens.",
    'Is that a root? No.',
    'Roots, no, none.',
    "There wasn't a single offset.",
    'Neither roots nor grease.',
    'Sometimes you get a belly where the trench settled.',
    'Roots will find any joint that is not glued.',
    'If you flush wipes you get a blockage.',
    'Two years ago they snaked roots out of here.',
    'The seller told me they had a belly fixed.',
    "I'd have them cut the roots before closing.",
    'They should get a price on the offset.',
    'The neighbor had a collapse last winter.',
    'Roots will find any joint that is not glued.',
    'My lens has a scratch on it, so never mind the line you see.',
    'Back then they put lead in every joint and the joints still opened up.',
    'My buddy found a bowling ball in one once.',
  ],
  notYet: [
    { text: "It's not that there isn't scale at 22, it's just thin.", gives: { kind: 'scale', at: 22 } },
    {
      text: "Twenty nine feet, that's a crack, or a root, I can't tell.",
      gives: [
        { kind: 'crack', at: 29, status: 'suspected' },
        { kind: 'roots', at: 29, status: 'suspected' },
      ],
      flag: 'suspected',
    },
  ],
} satisfies SentenceExamples;
