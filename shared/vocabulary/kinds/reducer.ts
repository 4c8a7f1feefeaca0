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
    goes|go|went|comes|drops|steps|jumps|bumps|changes|reduces|tapers|necks from a|an? 2|3|4|5|6|8|10|12|two|three|four|five|six|eight|ten|twelve inch? down|up|out|back? to a|an? 2|3|4|5|6|8|10|12|two|three|four|five|six|eight|ten|twelve inch?;
    reducer; reducing coupling; reducing fitting; bell reducer; increaser; bushing; reduction; reducing bushing;
    # by # reducer|increaser|bushing; # to # reducer|increaser|bushing; # inch to # inch reducer|increaser;
    reducer fitting; eccentric reducer; taper; taper piece; tapered fitting; step down fitting; upsizer;
    reducer|increaser , # to #; reducer|increaser from? # to #; opens|opening|necks|steps|reduces|increases up|down? from # to #;
    necks|necked|chokes|reduces|reduced|squeezes|narrows|narrowed|tapers down|in|out? to a|an? 2|3|4|5|6|8|10|12|two|three|four|five|six|eight|ten|twelve; size reduction; opens|opening|widens|increases up|out? to a|an? 3|4|5|6|8 inch|inches|incher?; drops|goes|steps|comes|changes|reduces|necks|increases in size; adapter|fitting , # by #; # by # fitting|adapter|coupling|bushing;
    goes|go|drops|steps|comes|necks|reduces|changes|increases|going|stepping from a|an? # inch|inches down|up|out? to a|an? #;
  `,
  signs: spoken`
    it|she|he|pipe|line|bore|and|then|this|that|which|diameter|size goes|go|went|gets|got|turns|comes|becomes a_size|one_size|a_bit|a_little|way|lots? bigger|larger|smaller|narrower|wider|fatter|skinnier at|to|from|there|here|again;
    goes|got|gets|turns bigger|larger|smaller|narrower|wider|fatter|skinnier at|from|to;
    bells|belling|belled|flares|flared|swells|opens|opened|fattens|widens|broadens out|up to|into a|an|the 2|3|4|5|6|8|10|12|two|three|four|five|six|eight|ten|twelve;
    bells|flares|swells|fattens|opens_up|opens_out out? to a|an # inch; bells|flares|swells out; opens|opened|opening up|out into|to|onto the|a|our|your? # inch|inches;
    bore|pipe|line|diameter|size|it|she drops|goes|comes|steps|necks|shrinks|squeezes|tapers|narrows down|up? a? size|sizes; bore|diameter drops|steps|shrinks|necks|closes|narrows|tapers|opens|increases down|up|out|in;
    steps|drops|goes|bumps|comes|jumps|necks down|up a|one|two|another? size|sizes; size|diameter smaller|bigger|larger from|at|here;
    steps|drops|goes|jumps|necks|bumps a|one|two|half_a size|sizes;
    shrinks|shrunk|shrank|tapers|tapered|tapering down|in|up|out? to a|an? 2|3|4|5|6|8|two|three|four|five|six|eight;
    # inch|inches becomes|turns_into|goes_to|changes_to a|an? # inch|inches; # into|onto a|an|the # inch|inches;
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
    from # to # feet|foot|ft|%|percent|minutes|hours|o'clock|degrees|years|days|weeks|o_clock|in_the|bucks|dollars|hundred|cups|people; from # to # , #;
    # inch|inches to # inch|inches of|deep|long|wide|tall|high|thick|across|gap|offset|crack|apart|out;
    # to # inch|inches of|deep|long|wide|tall|high|thick|across; reduction in; reduction of; price reduction;
    goes|drops|steps down to a # foot|feet|degree; reduces the; bushing hammer; down to a # percent;
    opens up to the|a|me|daylight|dirt; gets bigger|smaller every|when|with|as; adapter cable|for|plug|on|in_the|is; goes up in size; hole|crack|gap|offset|puddle * bigger|smaller|wider; it 's|is|gets bigger|smaller than|the|inside|and;
  `,
  misheard: [{ heard: 'red_user|re_ducer|reduce_her|producer|seducer', said: 'reducer', needs: 'nothing' }],
  examples: {
    says: [
      { text: 'Goes from four to six at twenty four.', gives: { at: 24 } },
      { text: 'The bore narrows at thirty three.', gives: { at: 33 } },
      { text: 'Eighteen, drops a size.', gives: { at: 18 } },
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
      'I went from four to six cups of coffee.',
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
