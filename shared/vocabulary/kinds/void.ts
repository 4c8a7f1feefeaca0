import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { earth, is } from '../word-groups.ts';

export const voidKind = {
  name: 'void',
  group: 'defect',
  title: 'Void',
  plural: 'voids',
  takes: ['to', 'position', 'clock', 'inches'],
  isSpot: true,
  words: spoken`
    void; voids; cavity; cavern; washout behind; empty space; empty pocket; open space behind; air pocket;
    pocket outside the pipe; dark space; black space;
    washout; erosion void; sinkhole; hollow space; gap behind the pipe|wall|it;
  `,
  signs: spoken`
    ${earth} ${is} washed|eroded|gone|missing|hollowed|scoured off|away|out|behind|from?; ${earth} * washed|eroded|carried away|out|off;
    ${earth} behind|under|above|around|outside * gone|washed|missing|eroded; soil has washed; dirt washed; ${earth} * gone behind|outside|from_behind|around|under|above;
    nothing behind; empty behind; hollow behind; space outside; pocket outside; space behind;
    hole in the ground behind; see way back in; no dirt behind; no soil behind; missing soil; missing dirt;
    undermined; hollowed out; scooped out; ground has washed; hollow|empty|cave|cavern|open|space|dark|black behind|outside|out_there|back_there|beyond;
    a hollow; like a cave; behind it? 's|is empty|hollow|nothing; hollow|cave underneath|under|below|around|there; see out into the ground;
    ${earth} washed|eroded|scoured|gone away|out from|around|under|over|behind|above|beside the|around? pipe|wall|it?; dark|black gap|space|hole|area behind|outside|above|over|under|beyond it|the|this; black|dark behind|back_there|outside|beyond; looking|look|see past|beyond|through|behind the? pipe|wall|it into nothing|space|darkness|the_dark|a_cave|a_hole; no|not_any ground|soil|dirt|bedding|support|earth behind|under|around|there|outside|above|over the|this|it|pipe|here?; blackness behind;
  `,
  weakWords: ['hollow', 'cave', 'open space'],
  notWords: spoken`
    void the; null and void; voided; void of; hollow core; hollow eyed; the hollow; up the hollow;
    sleepy hollow; cavity in my tooth; a cavity filled; dentist; cave in; man cave; hollow road; cavities;
    cave man; hollow lane; hollow way; hollow drive; hollow street; hollow court; hollow pike; hollow circle; hollow place; hollow trail; hollow loop;
    empty house; empty lot; empty bucket; house is empty; tank is empty; in the hollow;
    down in the hollow; air pocket in the line;
    sinkhole in|on the street|yard|road|news; dark space in the attic; space behind the|my house|garage|truck|wall_unit; hollow space in the wall; nothing behind me|us|that_door;
    hollow sound|ring|noise|when;
  `,
  misheard: [
    { heard: "a_avoid|a_boyd|devoid|a_voyage|a_void's", said: 'void', needs: 'nothing' },
    { heard: "be|maybe|possibly|there_'s|there_is|see|got avoid", said: 'void', needs: 'nothing' },
    { heard: 'avoid behind|under|above|there|outside|beside|next', said: 'void', needs: 'nothing' },
    { heard: 'avoid', said: 'void', needs: 'article' },
  ],
  examples: {
    says: [
      { text: 'The dirt has washed away from around the pipe at seventeen.', gives: { at: 17 } },
      { text: "There's a void behind the pipe at thirty feet.", gives: { at: 30 } },
      { text: "Dirt's washed out on the left at 45.", gives: { at: 45, position: 'left' } },
      { text: 'Cavity on top at 22.5.', gives: { at: 22.5, position: 'top' } },
      { text: 'Fifty two, the soil has washed away behind it.', gives: { at: 52 } },
      { text: "It's hollow behind there at 44.", gives: { at: 44 } },
      { text: 'A cave on the right at 17.', gives: { at: 17, position: 'right' } },
    ],
    unsure: [
      { text: "There's avoid behind the joint at 30 feet.", gives: { at: 30 }, flag: 'word-unsure' },
      { text: 'Might be a void at 38.', gives: { at: 38, status: 'suspected' }, flag: 'suspected' },
    ],
    never: ["That'd void the warranty.", 'No voids.', 'They live down in the hollow.'],
    notYet: [{ text: 'A void forms when the soil washes into the pipe.', gives: [] }],
  },
  report: {
    meaning: 'There is an empty space in the ground outside the pipe, where soil has been washed away.',
    next: 'Keep loads off the ground above it and have a licensed contractor open and repair it soon.',
    glossary: 'Void: an empty space in the soil outside the pipe.',
  },
} as const satisfies Kind;
