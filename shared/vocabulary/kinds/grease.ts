import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const grease = {
  name: 'grease',
  group: 'defect',
  title: 'Grease',
  plural: 'grease',
  takes: ['to', 'position', 'clock', 'degree', 'percent'],
  words: spoken`
    grease; greasy; greased; fat; fats; fat buildup; grease buildup; soap scum; lard; congealed; congealed fat;
    soap buildup; soap; cooking fat; cooking grease; buildup of grease; grease deposit; greasey; fatty; lardy;
    tallow; congealing; coagulated; oil and grease; fats and oils; fats oils and grease; oily;
    oily sludge|film|residue|buildup|water; cooking oil; bacon grease|fat;
    solid|hardened|solidified|hard fat|grease; waxy; fog buildup|deposit|deposits|build_up;
    grease|fat|soap|greasy|soapy|fatty|oily|fog build_up|buildup|deposit|deposits|film|coating|layer|residue|ring|rings|collar|shelf|plug;
    ring|rings|collar|layer|film|coat|shelf|buildup|build_up|deposit|deposits|lump|lumps|coating of grease|fat|soap|lard;
    soapy; soap curd;
    fatberg; greased up|over; grease ball|balls|clog|mat|cap|shelf; shelf of grease|fat; slick with grease|fat; coated|covered|caked|lined|packed|clogged|plugged|choked|slimed in|with grease|fat|lard|soap|bacon_fat|cooking_fat; congealed grease; bacon|lamb|chicken grease|fat|drippings; white|yellow|grey|gray fat|grease|greasy;
  `,
  notWords: spoken`
    grease on the lens; elbow grease; grease pencil; grease trap; grease monkey; fat chance; fat lip; grease on my;
    big fat; fat cat; greasy spoon; greasy burger; greasy food; soap opera; dish soap; so much soap; no soap;
    soap and water; soap box; soap suds; fat hands; fat fingers; grease gun; fat dog; fat squirrel; fat on me;
    fat cable; too fat; bar of soap; laundry soap; chew the fat; lens is greasy;
    hands|gloves|fingers|hand|reel|cable|lens|lid|burger|pan are|is|all|get|got|'s greasy|greased|oily;
    greased my|the|it|up * reel|cable|hinge|threads|wheels; grease my|the|it|up reel|cable|hinge|threads|wheels; grease on the reel|cable|lid|cap; some grease on|for; hand soap;
    soapy water; soap dispenser; pour|pouring|dump|dumping|put|putting * grease|fat|oil|soap;
    wash|washed|washing * soap; oily rag; oil change; not a fat;
    pour|poured|pouring|tip|tipped|tipping|rinse|rinsing|dump|pours|dumps * bacon|cooking|kitchen|chicken? grease|fat|oil|drippings; grease fire; too fat; fat wad|check|cable|man;
  `,
  misheard: [
    {
      heard: "greece|grace|greases|greece's|crease|creases|grief|greis|greasing|greek",
      said: 'grease',
      needs: 'distance',
    },
    { heard: 'bruise|breeze', said: 'grease', needs: 'distance' },
  ],
  examples: {
    says: [
      { text: 'Grease on the top half of the pipe from five to nine feet.', gives: { at: 5, to: 9, position: 'top' } },
      {
        text: 'A bit of grease at nine feet on the left, nothing on the bottom.',
        gives: { at: 9, degree: 'light', position: 'left' },
      },
      { text: "It's all greased up at twenty two.", gives: { at: 22 } },
      { text: 'Nineteen, roots. Grease! I meant grease.', gives: { at: 19 } },
      {
        text: 'Grease ten to fourteen on the top half, moderate.',
        gives: { at: 10, to: 14, position: 'top', degree: 'moderate' },
      },
      { text: 'Fat deposits at twelve, thirty percent.', gives: { at: 12, percent: 30 } },
      { text: 'A ring of grease all the way around at 17.', gives: { at: 17, position: 'all-around' } },
      { text: "It's caked with grease at nine feet.", gives: { at: 9, degree: 'heavy' } },
      { text: 'Grease at twenty one feet, about a third of the pipe.', gives: { at: 21, percent: 33 } },
      {
        text: 'Light grease along the top from 30 to 36.',
        gives: { at: 30, to: 36, degree: 'light', position: 'top' },
      },
      { text: 'Congealed fat at forty feet.', gives: { at: 40 } },
      { text: "Fourteen and a half, it's getting greasy.", gives: { at: 14.5 } },
    ],
    unsure: [
      { text: "There's greece on the top at 25 feet.", gives: { at: 25, position: 'top' }, flag: 'word-unsure' },
      { text: 'Could be grease at 50.', gives: { at: 50, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "You wondered about grease. I can tell you there isn't any.",
      'Grease is what kills these lines.',
      'My hands are greasy.',
      'I greased the cable.',
      "Don't ever pour grease down the sink.",
      'No grease.',
      'I need to grease the reel.',
      "The restaurant's grease trap is out back.",
    ],
  },
  report: {
    meaning: 'Grease has hardened on the wall, which narrows the pipe and catches solids.',
    next: 'Have the line cleaned, and keep fat and oil out of the drains.',
    glossary: 'Grease: cooled kitchen fat that sticks to the wall of the pipe.',
  },
} as const satisfies Kind;
