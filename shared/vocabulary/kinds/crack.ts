import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const crack = {
  name: 'crack',
  group: 'defect',
  title: 'Crack',
  plural: 'cracks',
  takes: ['to', 'position', 'clock', 'degree'],
  words: spoken`
    crack; cracked; cracking; hairline; hairline crack; fissure; longitudinal crack; spider crack;
    circumferential crack; split; hairline fracture; crazing; crazed; stress crack; craze cracking; spider cracking;
    spiderwebbed; spiderwebbing; seam split; split seam;
    stress fracture; fracture line; hair crack; fissured; crack line; split lengthwise|lengthways|longitudinally;
  `,
  signs: [
    'split in the',
    'is split',
    'has split',
    'hairline split',
    'split along',
    'split down',
    ...spoken`
    bottom|top|side|crown|pipe|bell|hub|seam|wall 's|is|are|has|have opened|opening up? along|down the|its length|seam; dark|black line running|down|along the? crown|top|side|bottom|wall;
  `,
  ],
  notWords: spoken`
    crack at it; crack of dawn; crack up; cracked up; crack me up; cracks me up; crack open; cracked open;
    crack a; crack the cap; crack the plug; crack the cleanout; crack the lid; crack it open; cracking me up;
    crack team; split level; split ranch; split the bill|difference|cost|price|tab|check; split difference; banana split; split up; split foyer;
    screen 's got a crack; my screen; cracked screen; cracking jokes; take a crack; wise crack; cracks when|whenever|if|with; cracked the cap;
    cracked my; cracks jokes; lickety split; split second; split entry; cracked cap; cracked lid;
    cracked sidewalk; crack in the sidewalk; cracks in the driveway; cracked driveway; first crack at;
    split bill; tail crack; crack in the foundation; cracked the window; crack a window; crack in my;
    cracked tile|a_joke|a_smile|ribs|egg|eggs|phone; he|she|they|i cracked the|a|his|her bathroom|kitchen|tile|window|phone|screen|ribs;
  `,
  misheard: [{ heard: 'crap|krak|craig|crackle|track|crac', said: 'crack', needs: 'article' }],
  examples: {
    says: [
      { text: 'Nine feet, a crack right across the bottom.', gives: { at: 9, position: 'bottom' } },
      { text: "Eleven o'clock. Crack. Twenty two feet.", gives: { at: 22, clock: 11 } },
      { text: 'A crack at nine feet, a little farther on.', gives: { at: 9 } },
      {
        text: "A crack at nine feet. It's on the left, and the camera goes by it.",
        gives: { at: 9, position: 'left' },
      },
      {
        text: 'Two cracks along here. One at nine, and the other at fifteen.',
        gives: [
          { kind: 'crack', at: 9 },
          { kind: 'crack', at: 15 },
        ],
      },
      {
        text: 'A crack along the crown starts at eleven feet. It closes up at fourteen.',
        gives: { at: 11, to: 14, position: 'top' },
      },
      {
        text: "A crack at twenty five, twelve o'clock. The crack entry, twelve o'clock, should read one o'clock.",
        gives: { at: 25, clock: 1 },
      },
      { text: 'A crack at nine feet, it does not go all the way around.', gives: { at: 9 } },
      { text: "it's clay and it's 6 inch 10 feet there's a crack", gives: { at: 10 } },
      {
        text: 'Crack on top at ten and on the bottom at fourteen.',
        gives: [
          { at: 10, position: 'top' },
          { at: 14, position: 'bottom' },
        ],
      },
      { text: "A crack at ten feet. It's a heavy camera, this one.", gives: { at: 10 } },
      { text: "A crack at ten feet. I'm about half done here.", gives: { at: 10 } },
      { text: 'A crack at ten feet. My back is bad today.', gives: { at: 10 } },
      { text: "A crack at ten feet, I couldn't tell you how deep.", gives: { at: 10 } },
      {
        text: "At ten I've got a crack going the whole way around the pipe.",
        gives: { at: 10, position: 'all-around' },
      },
      { text: 'Hairline crack along the top from twelve to fifteen feet.', gives: { at: 12, to: 15, position: 'top' } },
      { text: "There's a crack at nine o'clock, twenty six feet.", gives: { at: 26, clock: 9 } },
      { text: 'Bottom of the pipe is split at 37.', gives: { at: 37, position: 'bottom' } },
      { text: 'Forty eight feet, cracked all the way around.', gives: { at: 48, position: 'all-around' } },
      { text: 'The wall is crazed all around at 21.', gives: { at: 21, position: 'all-around' } },
      { text: 'Hairline fracture at 14, left side.', gives: { at: 14, position: 'left' } },
    ],
    unsure: [
      {
        text: "There's a crap at twenty two feet on the left.",
        gives: { at: 22, position: 'left' },
        flag: 'word-unsure',
      },
      {
        text: 'Looks like maybe a crack at thirty, could be a shadow.',
        gives: { at: 30, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: [
      "The last inspector had a crack at twenty two, and I don't see it.",
      "I had a crack in mind at twenty but no, that's a mold line.",
      'Let me take a crack at it.',
      'Clay cracks when you drive a truck over it.',
      'No cracks in here at all.',
      "I thought that was a crack but it's just paper.",
    ],
    notYet: [{ text: 'There is a crack in the driveway right above us.', gives: [] }],
  },
  report: {
    meaning: 'The wall is split but the pieces have not moved; water can pass out and roots can pass in.',
    next: 'Watch the place, and have it repaired if it opens or roots appear.',
    glossary: 'Crack: a split in the pipe wall with the pieces still in place.',
  },
} as const satisfies Kind;
