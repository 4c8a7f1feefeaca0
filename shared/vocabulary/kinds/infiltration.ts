import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { earth, flowing } from '../word-groups.ts';

export const infiltration = {
  name: 'infiltration',
  group: 'defect',
  title: 'Infiltration',
  plural: 'infiltration',
  takes: ['to', 'position', 'clock', 'degree'],
  words: spoken`
    infiltration; infiltrating; infiltrates; weeping; weeps; seeping; seepage; seep; ground water entering;
    groundwater entering; groundwater infiltration; runner; dripper; gusher; leaking in; inflow;
    ingress; water ingress|intrusion; groundwater|ground_water leak|leaking|ingress|seepage|coming; water|wet stain|stains|staining|mark|marks on|at|down|under|below|around the? joint|wall|hub|bell|crown|left|right|side; running joint;
  `,
  signs: spoken`
    slime|ooze|rust_water|orange_water|brown_water|stain|gunk coming|running|weeping|oozing|seeping through|out_of|from|at|in_at|down_from the|a|that|this? joint|joints|crack|wall|hub|seam; soil|mud|muddy_stuff|dirt|sand|clay that_'s|that_has|has|been? washed|washing|washes|leached in|into;
    mud|soil|dirt|earth|silt|sand|fines|muck|ground coming|comes|came|pushing|pushes|oozing|squeezing|welling|boiling|bubbling|working|works right|straight|all? up|out|down through|from|of the|a|that|this; mud|soil|dirt|earth|silt|sand|muck coming|comes|pushing|oozing|washing|washes|working|works|running|runs right|straight|all in|through|into;
    soil|mud|dirt|earth|silt|sand|ground that 's|has|is|was|just? been? washed|come|coming|worked|pushed|seeped|fallen|leaked|washing in|into|through;
    water|groundwater|ground_water is|'s let|leaking|finding_its_way|making_its_way in|through at|through;
    groundwater|ground_water coming|running|dripping|dribbling|leaking|pouring|seeping in on|from|at|through the left|right|top|side|bottom|joint;
    water|groundwater|ground_water|drip|trickle|stream|moisture 's|is|are|of_water|of_groundwater? ${flowing} in|through;
    water|groundwater|drip|drops|trickle ${flowing} from|out_of|at|down_from the crown|joint|roof|wall|seam|crack|top|ceiling;
    groundwater dribbling|weeping|seeping|dripping|coming|leaking|getting|trickling|running; ground water ${flowing};
    dripping|dribbling|weeping|seeping|sweating|trickling|squirting|gushing|spurting|oozing in|through;
    joint|joints|crack|seam|wall|crown|hub|bell 's|is|are|was leaking|dripping|wet|sweating|crying; leak at|in the joint|crown|seam|wall; drips|dribbles|weeps|seeps|trickles in;
    ${earth}|clay 's|is|are coming|washing|falling|pouring|leaking|getting|seeping|spilling|sifting|flowing|entering|oozing|squeezing|pushing|dropping|running|sliding in|inside|through|into;
    mud|soil|dirt|earth|silt|sand|fines coming|washing|falling|pouring|leaking|getting|seeping|spilling|sifting|flowing|oozing|squeezing|pushing|dropping|running|sliding in|inside|through|into;
    mud|soil|dirt|earth|silt|sand|ground|fines washes|comes|falls|pours|seeps|spills|sifts|come|wash|gets in|inside|through;
    soil|water|groundwater entering; water enters; that 's|is groundwater; groundwater weeping; soil 's coming;
    mud * coming in; dirt * coming in; water getting in; water gets in; wet hub; still dribbling; a wet streak;
    groundwater getting; ground come inside; the ground come; water running in; soil in; soil washing;
    soil intrusion; mud in the joint; dirt sifting; dirt falling; beads of water; water beading;
    it 's|is|'s_just|'s_really pouring|streaming|gushing|dripping|leaking|weeping|seeping|trickling|spraying|dribbling|squirting in|through; dirt|soil|mud|sand|silt|earth 's|is|has|have come|came|fallen|washed|sifted|pushed|poured|spilled|run|sloughed|slid|dropped in|through|inside|into with_it|the_pipe|here?; water tracking|finding|making its|a? way? in|through; clear water coming|running|entering|dripping|dribbling;
    water|groundwater|ground_water 's|is? ${flowing} in|through on|from|at|through|around the? left|right|top|side|bottom|crown|joint|hub|roof|wall side?;
  `,
  weakWords: ['drip', 'trickle', 'leak', 'leaking', 'dripping', 'steady drip', 'active leak'],
  doubtfulWords: spoken`
    groundwater; ground water; water stain|stains; wet streak|spot|patch|mark; rust stain down;
  `,
  notWords: spoken`
    if there 's groundwater; weeping willow; weep hole; weeping eyes; groundwater today; if groundwater;
    high groundwater; groundwater is high; water coming in from the kitchen; washing machine water coming in;
    water coming in from the; tub water coming in; water running in the kitchen; water ${flowing} from the kitchen|tub|shower|laundry|washer|sink|toilet|house|hose|dishwasher;
    leaky faucet; leaking faucet; faucet 's|is dripping|leaking; water_heater 's drip; dripping faucet; roof leak;
    faucet drip; hose is leaking; toilet 's|is leaking|running; leaking toilet; roof is|'s leaking; gas leak;
    wet spot in|on the yard|lawn|driveway|grass|ground|basement|floor; groundwater is|was|table|level|problem|around|out|under|in_the|on_the|up|low|here_is; wet patch in|on the yard|lawn|grass; groundwater 's;
  `,
  misheard: [{ heard: 'infatuation|filtration|in filtration|inflation', said: 'infiltration', needs: 'nothing' }],
  examples: {
    says: [
      {
        text: "See that on the side there? That's ground water getting in at thirty three.",
        gives: { at: 33, position: 'side' },
      },
      { text: 'Twenty, mud coming up through the bottom.', gives: { at: 20, position: 'bottom' } },
      { text: "Soil that's washed into the pipe at twenty eight.", gives: { at: 28 } },
      { text: 'Soil has come in through the joint at sixteen.', gives: { at: 16 } },
      { text: 'Groundwater coming in on the left at 41.', gives: { at: 41, position: 'left' } },
      { text: 'Water dripping in at the joint at twenty five feet.', gives: { at: 25 } },
      { text: "It's weeping at nine o'clock, 30 feet.", gives: { at: 30, clock: 9 } },
      { text: 'Mud washing in at fifty two from the bottom.', gives: { at: 52, position: 'bottom' } },
      { text: "Water's squirting in at 39.", gives: { at: 39 } },
      { text: 'Clear water dripping from the crown at 39.', gives: { at: 39, position: 'top' } },
      { text: "There's a leak at 28 on the right.", gives: { at: 28, position: 'right' } },
    ],
    unsure: [
      { text: "There's inflation at twenty seven feet.", gives: { at: 27 }, flag: 'word-unsure' },
      { text: 'Maybe some infiltration at 17.', gives: { at: 17, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'She has water running in the kitchen.',
      'Clay lets groundwater in.',
      'No infiltration.',
      'The kitchen faucet is dripping.',
      'The basement leaks when it rains, she says.',
    ],
  },
  report: {
    meaning: 'Water or soil from outside comes into the pipe, so the wall or a joint is not tight.',
    next: 'Have a licensed plumber find and close the place where it comes in.',
    glossary: 'Infiltration: ground water or soil coming into the pipe from outside.',
  },
} as const satisfies Kind;
