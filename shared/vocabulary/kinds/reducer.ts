import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const reducer = {
  name: 'reducer',
  group: 'fitting',
  title: 'Reducer',
  plural: 'reducers',
  takes: [],
  changesSize: true,
  words: spoken`
    reducer; reducing coupling; reducing fitting; bell reducer; increaser; bushing; reduction; reducing bushing;
    # by # reducer|increaser|bushing; # to # reducer|increaser|bushing; # inch to # inch reducer|increaser;
    reducer fitting; eccentric reducer; taper; taper piece; tapered fitting; step down fitting; upsizer;
    reducer|increaser , # to #; reducer|increaser from? # to #; opens|opening|necks|steps|reduces|increases up|down? from # to #;
    necks|necked|chokes|reduces|reduced|squeezes|narrows|narrowed|tapers down|in|out? to a|an? 2|3|4|5|6|8|10|12|two|three|four|five|six|eight|ten|twelve; size reduction; opens|opening|widens|increases up|out? to a|an? 3|4|5|6|8 inch|inches|incher?; drops|goes|steps|comes|changes|reduces|necks|increases in size; adapter|fitting , # by #; # by # fitting|adapter|coupling|bushing;
    goes|go|drops|steps|comes|necks|reduces|changes|increases|going|stepping from a|an? # inch|inches down|up|out? to a|an? #;
  `,
  signs: spoken`
    drops|drop|steps|goes|comes|chokes off|down|up to|into a|an? # inch; increases|increase|reduces|decreases|goes from # to # inch;
    size change; change of size; goes|drops|steps|comes down|up one|a pipe? size;
    reduces|reduced|reducing to|down|from; necks|necked|necking|chokes|pinches down|up to|from|on|here|into;
    necks|necked|necking down; size|diameter change|changes|changed; change in|of size|diameter; size transition;
    size|diameter steps|goes|drops|comes|jumps|opens|bumps|increases|decreases|reduces down|up|out?;
    steps|step|stepped|goes|go|went|drops|drop|bumps|bump|comes|jumps down|up in|a|one|for size;
    steps|step|stepped|drops|drop|bumps|opens|goes|comes|jumps down|up? to a? # inch pipe?;
    pipe|line gets|get|is bigger|larger|smaller|narrower; gets bigger|larger|smaller|narrower , # inch|inches? to #;
    # inch|inches to a? # inch|inches; from # inch|inches? to a? # inch|inches; from a? # inch|inches to a? #;
    goes|go|drops|steps|comes from? a? # inch|inches? down|up? to a? # inch|inches; downsizes|upsizes|downsized|upsized to|here|at;
    increases|increase|enlarges|widens to a? # inch; change of pipe? size; goes|drops|steps down to a #;
    upsizes|downsizes to; gets smaller|bigger|larger down|up to # inch;
    pipe|line|bore 's|is|gets|got|opens|narrows|goes narrower|wider|smaller|bigger|narrow; it gets|got|goes narrower|smaller|narrow; narrows|narrowing down? here|at|to|from; opens up|out to a? # inch;
  `,
  notWords: spoken`
    # inch|inches to # inch|inches of|deep|long|wide|tall|high|thick|across|gap|offset|crack|apart|out;
    # to # inch|inches of|deep|long|wide|tall|high|thick|across; reduction in; reduction of; price reduction;
    goes|drops|steps down to a # foot|feet|degree; reduces the; bushing hammer; down to a # percent;
    opens up to the|a|me|daylight|dirt; gets bigger|smaller every|when|with|as; adapter cable|for|plug|on|in_the|is; goes up in size; hole|crack|gap|offset|puddle * bigger|smaller|wider; it 's|is|gets bigger|smaller than|the|inside|and;
  `,
  misheard: [{ heard: 'red_user|re_ducer|reduce_her|producer|seducer', said: 'reducer', needs: 'nothing' }],
  examples: {
    says: [
      { text: 'Pipe drops in size at seven.', gives: { at: 7 } },
      { text: 'Size change at thirty.', gives: { at: 30 } },
      { text: "There's a reducer at twenty feet.", gives: { at: 20 } },
      { text: 'At thirty three it necks down.', gives: { at: 33 } },
      { text: 'Nineteen feet, the line goes from three inch to four inch.', gives: { at: 19 } },
      { text: 'It opens up from three to four inch at twenty six feet.', gives: { at: 26 } },
      { text: 'Thirty nine feet, it necks down on us, four inch to three.', gives: { at: 39 } },
      { text: 'Forty seven and a half, reducing fitting.', gives: { at: 47.5 } },
    ],
    unsure: [
      { text: "There's a red user at thirty feet.", gives: { at: 30 }, flag: 'word-unsure' },
      { text: 'Maybe a reducer at fifteen.', gives: { at: 15, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'Somebody always puts the reducer in upside down.',
      'No reducer that I can see.',
      'The water stands from two inches to four inches deep at twenty feet.',
      "I'd reduce the price if I were them.",
    ],
  },
  report: {
    meaning: 'The pipe changes size here.',
    next: 'Nothing to do.',
    glossary: 'Reducer: a fitting that joins a larger pipe to a smaller one.',
  },
} as const satisfies Kind;
