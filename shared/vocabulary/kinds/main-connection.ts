import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const mainConnection = {
  name: 'main-connection',
  group: 'fitting',
  title: 'Connection to the public main',
  plural: 'connections to the public main',
  takes: ['position', 'clock'],
  ends: 'main',
  role: 'opening',
  words: spoken`
    city main; public main; public sewer; city sewer; municipal main; municipal sewer; sewer main; main sewer;
    main connection; main line connection; connection to the main; connection to the city;
    connection at the main; city 's main; city 's pipe; city 's sewer; city 's line; city line; city pipe;
    city tap; tap at the main; tap to the main; street main; main in the street; public line; the main;
    our main; town 's main; town main; county main; town sewer; county sewer; district main; trunk line;
    main trunk; street sewer; utility main; big pipe in the street; main tap; main tie in; main;
  `,
  signs: [
    'tied|ties|tie|connects|connected|dumps|drops|empties|taps into|to the main',
    'tap into the main|city',
    'hit|reach|reached|made_it_to|got_to|at|in|into the main',
    'connects to the city',
  ],
  notWords: spoken`
    to the main; toward the main; towards the main; for the main; before the main; short of the main; main vent;
    main stack; main cleanout; main house; main drain; main bath; main bathroom; main run; main thing;
    main problem; main street; main road; main issue; main concern; main item; main level; main floor;
    the main one; main finding; main entrance; main building; main reason; main trap; main shutoff; water main;
    gas main; main water; main part; from the main; main street side; toward city main; toward our main;
    to the city main; to our main; to public main; to the public sewer; toward the public sewer; to the city;
    on the main line; lined to the main; main worry; main event; main point; main , thing; to the sewer main;
    to the street main; all the way to the main; out to the main; down to the main; main reached; from main;
    to main; between the wye and the main; and the main; how far to the main; past the main; off the main;
    main crew; main yard; front of the main; reach the main; reached the main ,;
  `,
  misheard: [
    { heard: 'city mane|maine|mean|man|name|mayne|may', said: 'city main', needs: 'nothing' },
    { heard: '3 main|three main', said: 'city main', needs: 'nothing' },
    { heard: 'the mane|maine', said: 'the main', needs: 'distance' },
    { heard: 'sitting main|city mainly', said: 'city main', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'City main at sixty two feet.', gives: { at: 62 } },
      { text: "And there's the main at seventy one, we come in at the top.", gives: { at: 71, position: 'top' } },
      { text: 'Fifty eight feet, we tie into the main.', gives: { at: 58 } },
      { text: 'We reached the main at 80.5.', gives: { at: 80.5 } },
      { text: "Public sewer at ninety three, in at two o'clock.", gives: { at: 93, clock: 2 } },
    ],
    unsure: [{ text: 'I think that is the main at 68.', gives: { at: 68, status: 'suspected' }, flag: 'suspected' }],
    never: [
      "We're headed for the main, should be about sixty feet.",
      'The city owns everything from the main to the curb.',
      'The main thing is to keep people from pouring grease down it.',
      'We never made it to the main.',
    ],
    notYet: [
      { text: "There's the city mane at 75 feet.", gives: { at: 75 }, flag: 'word-unsure' },
      { text: 'The main is deep on this street.', gives: [] },
    ],
  },
  report: {
    meaning: 'The line meets the public main here, so it was seen to its lower end.',
    next: 'Nothing to do.',
    glossary: 'Main: the public sewer, usually under the street, into which the lateral runs.',
  },
} as const satisfies Kind;
