import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { arrivalsAt } from '../word-groups.ts';

export const mainConnection = {
  name: 'main-connection',
  group: 'fitting',
  title: 'Connection to the public main',
  plural: 'connections to the public main',
  // Where on the main it comes in is not where something sits on the round of this pipe.
  takes: [],
  ends: 'main',
  role: 'opening',
  words: spoken`
    street 's line; street 's pipe;
    alley|brick|council|township|village|borough|sanitary|authority sewer|main; sewer in|under the lane|avenue; main drain|line|pipe|sewer in|under the road|street|alley|avenue|lane;
    trunk sewer; city trunk; sewer in the road|street|alley|highway; main in the road|alley|street;
    city main; public main; public sewer; city sewer; municipal main; municipal sewer; sewer main; main sewer;
    main connection; main line connection; connection to the main; connection to the city;
    connection at the main; city 's main; city 's pipe; city 's sewer; city 's line; city line; city pipe;
    city tap; tap at the main; tap to the main; street main; main in the street; public line; the main;
    our main; town 's main; town main; county main; town sewer; county sewer; district main; trunk line;
    connection|junction|tie_in|connects|saddle|inlet to|at|into|with|on main|mains|sewer|public_main|city_main|trunk; main trunk; street sewer; utility main; big pipe in the street; main tap; main tie in; main;
  `,
  signs: [
    ...spoken`
    ^ and|so|then|there|there_'s|okay|well? the? city|sewer|city_sewer $; and|so|then? the city|town|township|public_sewer 's # feet|foot? $; ^ and|so|then? the sewer # feet|foot? $;
    street|town|township|alley|lane|village 's line|pipe|main|sewer|drain; there 's|is the|your|our sewer; # feet|foot? , city|sewer $; # feet|foot city|sewer $; ^ sewer , #; ^ city|sewer # feet|foot? $;
    that 's the|your|our street|avenue|alley|sewer $; brings|takes|puts|gets us|me|you to|into|out_to the main|sewer|city; and|then # more|again|feet|foot|further? to the main|sewer $;
    ^ and|then? right|straight? out|down|on|right_down? to the main|sewer|city $; where the town|city|county|township|council|district|village takes it|over; # feet|foot? , public side $;
    where|here|there i|we|you|it|she|your_line|the_line|the_lateral|your_lateral meet|meets|join|joins|hit|hits|enter|enters|tie_into|ties_into|tie_in_to|run_into|runs_into|become|becomes the city|public|street|town|municipal|main? city|sewer|main|pipe|line|system|network; city 's|main|sewer|side|part|pipe begins|starts|takes_over|picks_up;
    that|there|here|this|it 's|is the|our city 's|town 's|district 's|council 's $; council|borough|village|authority|water_company|utility main|sewer|line;
    i|we|and|it|she|camera|lateral|line reach|reaches|make|makes|find|finds the|your|our city|street|public? main|sewer at|here|there;
    tie|ties|tied|tying in|into|on|in_to to? the? city|street|public|town|county|district|municipal sewer|main|line|system?; county|district|town|council|borough|village 's sewer|main|line|pipe;
    line|lateral|pipe|it 's|is|runs # feet|foot to the main|city|sewer; total|total_of # feet|foot to the main|city|sewer;
    ${arrivalsAt('main|mane|city_main|city_sewer|public_sewer|public_main|sewer_main|street_main|city')}
    out? in|into|at the|your street|road|city|public|alley sewer|main;
    round|big|large|dark hole|opening|pipe|void 's|is|there_is|ahead_is|up_ahead_is the|your city|public|street|main? city|main|sewer;
    big|large|open pipe|sewer|line from|of|for|is the city|town|street|county|village; this|that|it is|'s the big pipe|one|sewer from|in|of|under the city|street|road;
arrive|arrived|arriving|arrives|come|came|made_it|got|pop|popped|we_'re|i_'m|we_are|dropped|drop|dumped|hanging|turned_up out? at|to|in|into|on the|our|your city|public|street|town? main|sewer|trunk;
    arrive|arrived|come|came to the main of the city; city in front of us|me; enters|meets|joins|hits|hit|met|joined|entered the city|public|street|town? main|sewer|trunk;
    discharges|discharge|empties|opens|spills|outfalls|flows|dumps|connects out? to|in|into|at the city|public|street|town? main|sewer|trunk;
    looking down? in|into|at the city|public|street? main|sewer; pipe|line|opening * is|'s the city 's; is|'s the city 's pipe|line|sewer|main; that 's|is us in|into|at|to the main|sewer|city;
    tie|ties|tied|tying in|into|on|in_to to? the? main|mane|maine|city_main|sewer;
`,
    'tied|ties|tie|connects|connected|dumps|drops|empties|taps into|to the main',
    'tap into the main|city',
    'hit|reach|reached|made_it_to|got_to|at|in|into the main',
    'connects to the city',
    ...spoken`
    where it|we|the_line|the_lateral|this|you|yours|that|everything 's|is|just? ties|tie|taps|goes|dumps|comes|hits|meets|meet|connects|joins|join|drops|enters|empties|discharges in|into|out|to|with? the? city|street|main|sewer|public|town|county|council|municipal|authority; hit|hitting|into|in|at|reach|reached|join|joining|joins|see|there_'s|it_'s|that_'s|this_is the big pipe|sewer; big pipe , that|it|the; ^ the? big pipe $; tap|tie_in|saddle|hub at|on|into|for the main|city|street|sewer; council|authority|municipal|public|city|town|county main|sewer|pipe|line|connection;
  `,
  ],
  doubtfulWords: spoken`
    mainline; main line;
  `,
  notWords: spoken`
    there 's the sewer truck|smell|gas|guy|bill|odor|crew|line|pipe; hear the sewer|main; sewer # feet|foot deep|down|away;
    city|street|public|town|county|district 's? stub|stub_out|side|half|end|cleanout|riser|portion|section|inspector|crew|guys|people|permit|water|lateral;
    about|beyond|behind|past|of|where|whether|if|than|until|unless|without|see|find|seeing the|your main|city_main|public_sewer|sewer_main; get|gets|got|make_it|made_it|push|pushed|reach|seen|see in_to|into|to|as_far_as the main;
    hear|hearing|heard|smell the main; main|sewer 's past|beyond|further|farther|not|another|still;
    main 's|is|was about|around|roughly|what|like|maybe|probably|another|somewhere|supposed|deep|in_the|under|over|out|just|only|still|further|farther|ahead|past|beyond|on_the_other|across;
    make the mane; made the mane; mane 's what|about|around|like|maybe; sewer smells|gas; find|found|hunt|looking for the main;
    main we|i have|haven't|never|did; toward|towards|to|for|find the sewer|main in the road|street|alley;
    before it|you|we get|gets to the main; when you get to the main; if it gets to the main; once you get to the main; got into the main problem;
    to the main; toward the main; towards the main; for the main; before the main; short of the main; main vent;
    main stack; main cleanout; main house; main drain; main bath; main bathroom; main run; main thing;
    main problem; main street; main road; main issue; main concern; main item; main level; main floor;
    the main one; main finding; main entrance; main building; main reason; main trap; main shutoff; water main;
    gas main; main water; main part; from the main; main street side; toward city main; toward our main;
    to the city main; to our main; to public main; to the public sewer; toward the public sewer; to the city;
    on the main line; lined to the main; main worry; main event; main point; main , thing; to the sewer main;
    to the street main; all the way to the main; out to the main; down to the main; main reached; from main;
    to main; between|from * and|to the main; halfway|midway * and the main; how far to the main; past the main; off the main;
    main crew; main yard; in front of the main; reach the main; reached the main ,;
    in|on|to|from|under|across|toward|towards|down|up|along|near|by|of|off|behind|past|out_to|into|for|at|between|reach|clear_to the street; street side|light|trees|tree|noise|sweeper|level|cleanout|is|looks|number|sign; the street 's|is|was|looks|sweeper|light; mainline valve; main line valve|cleanout|stoppage|drain|is|was|has|backup|sewer_backup|clog; off|on|in|of|the|your|our|this main line; big pipe wrench|organ|of|like; where it goes to the|into_the|out to the? street_sweeper; city|town|county|council|public|municipal main|sewer|pipe|line|connection is|was|'s about|around|roughly|out|somewhere|supposed|probably|likely|maybe|deep|old|over|in_the|under;
    there|that|it|this|i 's|is|see the? big pipe wrench|organ;
  `,
  misheard: [
    { heard: 'city mane|maine|mean|man|name|mayne|may', said: 'city main', needs: 'nothing' },
    { heard: '3 main|three main', said: 'city main', needs: 'nothing' },
    { heard: 'the mane|maine', said: 'the main', needs: 'distance' },
    { heard: 'sitting main|city mainly', said: 'city main', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: 'The city main at 38. Okay, I take it out now.', gives: { at: 38 } },
      { text: "So the city's forty four.", gives: { at: 44 } },
      { text: 'Brick sewer, thirty six.', gives: { at: 36 } },
      { text: 'Forty two foot, city.', gives: { at: 42 } },
      { text: "Here's where you meet the city. Forty nine feet.", gives: { at: 49 } },
      { text: "It's clean right to the main at fifty two.", gives: { at: 52 } },
      { text: 'And out into the street sewer at thirty nine feet.', gives: { at: 39 } },
      { text: "Fifty four, here's where the line ties into the street.", gives: { at: 54 } },
      { text: 'And forty two feet is the big pipe from the city.', gives: { at: 42 } },
      { text: 'Fifty one, we pop out into the public main.', gives: { at: 51 } },
      { text: "That's us into the sewer at 47.", gives: { at: 47 } },
      { text: 'City main at sixty two feet.', gives: { at: 62 } },
      { text: "And there's the main at seventy one, we come in at the top.", gives: { at: 71 } },
      { text: 'Fifty eight feet, we tie into the main.', gives: { at: 58 } },
      { text: 'We reached the main at 80.5.', gives: { at: 80.5 } },
      { text: "Public sewer at ninety three, in at two o'clock.", gives: { at: 93 } },
    ],
    unsure: [
      { text: 'Mainline at sixty one feet.', gives: { at: 61 }, flag: 'word-unsure' },
      { text: 'I think that is the main at 68.', gives: { at: 68, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "The city's got forty trucks out.",
      'My sewer bill was forty bucks.',
      "The street's torn up at ten.",
      'At sixty feet we should hit the main.',
      'I can smell the main from here.',
      "That's the big pipe wrench I was missing.",
      'The main ought to be around sixty.',
      'The drawing shows the main at eighty.',
      'Plans put the main around seventy.',
      'I can hear the main before I see it. Sixty.',
      "We're headed for the main, should be about sixty feet.",
      'The city owns everything from the main to the curb.',
      'The main thing is to keep people from pouring grease down it.',
      'We never made it to the main.',
      'The main is deep on this street.',
      'The main is about sixty feet from here by the map.',
      'We hunted for the main for an hour.',
    ],
    notYet: [{ text: "There's the city mane at 75 feet.", gives: { at: 75 }, flag: 'word-unsure' }],
  },
  report: {
    meaning: 'The line meets the public main here, so it was seen to its lower end.',
    next: 'Nothing to do.',
    glossary: 'Main: the public sewer, usually under the street, into which the lateral runs.',
  },
} as const satisfies Kind;
