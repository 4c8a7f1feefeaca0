import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const fracture = {
  name: 'fracture',
  group: 'defect',
  title: 'Fracture',
  plural: 'fractures',
  takes: ['to', 'position', 'clock', 'inches'],
  outgrows: ['crack', 'break'],
  words: ['fracture', 'fractured', 'fracturing'],
  signs: spoken`
    busted|broken|smashed|broke|cracked|shattered|split up|all_round|all_around? in|into? # or? #? pieces|bits but|and|, they|they_'re|it_'s|they_'ve * still|stayed|hanging|holding|in_place|where; cracked|broken|busted|split * and|but the? pieces|bits|chunks are|'re loose|hanging|still_in_place|still_there; pieces|bits * but|and|, * they|it 've|have|has stayed|held; pieces|bits * loose|hanging but nothing|none 's|has|is fallen|dropped|gone|missing;
    shattered|broken|busted|smashed|cracked|split|in , pieces|bits|slabs|plates|chunks leaning|tilting|tilted|standing|hanging|propped; pieces|bits|slabs|plates|chunks leaning|tilted|propped|resting on|against|in each_other|one_another|together?;
    in pieces|bits|slabs|plates|sections , but|and? they|it|she|everything|the_pieces 's|'ve|have|has|is|are|'re? stayed|not_gone|not_moved|stayed_put|where_they|held|holding|standing|still|put|all;
    in pieces|bits|slabs|plates at|by # , but|and? they|it|everything|the_pieces 's|'ve|have|has|is|are|'re? stayed|not_gone|not_moved|stayed_put|where_they|held|holding|standing|still|put|all;
    in pieces|bits|slabs|plates|sections but|and they|it|she|everything|the_pieces 's|'ve|have|has|is|are|'re? stayed|not_gone|not_moved|stayed_put|where_they|held|holding|standing|still|put|all;
    shards|pieces|sherds|fragments|chunks|bits|plates of_clay|of_iron|of_pipe|of_the_pipe|of_wall|of_the_wall|of_it|of_concrete? shoved|pushed|knocked|pressed|punched|kicked|shifted in|inward|inwards|over|out|loose|sideways;
    piece|pieces|bits|plates|parts|segments|shards|wall|edges|edge|halves|clay|crack * shifted|moved|displaced|stepped|slid|out_of_place|out_of_line;
    broken but in place; broken but still there; broken , but all the pieces;
    pieces|everything|parts * still|all there|in_place|together|holding; pieces are still there;
    cracked|split and|then shifted|displaced|moved|stepped|dropped|pushed_out|pushed_in;
    halves|edges|the_pieces|broken_pieces|two_sides don't|doesn't|do_not|no_longer line|match|meet up?; the pieces|edges|halves aren't|not|isn't|no_longer lined|flush|level|matched up?; shifted out of line;
    wall looks stepped; piece|pieces * pushed|pushing in|inward|out;
    cracked|broken|shattered|busted|split|smashed into|in|to * pieces|plates|bits|chunks|sections but|and * still|all|holding|in_place|standing|there|together; in pieces|bits|plates , but|and? * still|all|holding|in_place|standing|shifted|moved|together; in pieces|bits|plates at|by #|this_spot , but|and? * still|all|holding|in_place|standing|shifted|moved|together; moved|shifted|slid|slipped on|against|past each_other|one_another; in pieces , shifted|moved|displaced; broken|cracked|shattered into|in plates|segments|sections;
  `,
  notWords: ['fractured my', 'fracture clinic'],
  misheard: [
    { heard: 'frack_sure|frack_shirt|fraction_d', said: 'fracture', needs: 'nothing' },
    { heard: 'fracker|fractur|factor|fractor|fraction', said: 'fracture', needs: 'distance' },
  ],
  examples: {
    says: [
      { text: 'At 27 it is busted up in three or four pieces but they are still hanging in place.', gives: { at: 27 } },
      { text: "At nineteen it's in pieces but they've not gone anywhere.", gives: { at: 19 } },
      { text: "Forty three, the pipe's shattered, pieces leaning in.", gives: { at: 43 } },
      { text: "It's in pieces at seventeen, but they're all still there.", gives: { at: 17 } },
      { text: 'Fracture at thirty two feet, on the left.', gives: { at: 32, position: 'left' } },
      { text: 'Pieces have shifted at forty one.', gives: { at: 41 } },
      { text: 'Fractured at the crown, 19 feet.', gives: { at: 19, position: 'top' } },
      { text: "Fifty four, it's broken but still there, nothing fallen out.", gives: { at: 54 } },
      { text: 'Cracked at 24 and the pieces have moved.', gives: { at: 24 } },
      { text: "The pipe's cracked at 33. The two halves don't line up.", gives: { at: 33 } },
      { text: "It's broken at 41 but everything is still in place.", gives: { at: 41 } },
      { text: "At fifty it's past a crack, that's a fracture.", gives: { at: 50 } },
    ],
    unsure: [
      { text: "There's a fracker at thirty feet.", gives: { at: 30 }, flag: 'word-unsure' },
      { text: 'Might be a fracture at 23.', gives: { at: 23, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "I'd only call it a fracture if the pieces had moved.",
      'A fracture is worse than a crack.',
      'No fractures.',
      'My brother fractured his wrist on a ladder.',
    ],
  },
  report: {
    meaning: 'The wall is split and the pieces have shifted, so the pipe has begun to lose its shape.',
    next: 'Have a licensed plumber price a repair of this length.',
    glossary: 'Fracture: a split in the pipe wall where the pieces have moved a little.',
  },
} as const satisfies Kind;
