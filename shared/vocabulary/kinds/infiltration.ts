import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const infiltration = {
  name: 'infiltration',
  group: 'defect',
  title: 'Infiltration',
  plural: 'infiltration',
  takes: ['to', 'position', 'clock', 'degree', 'inches'],
  words: spoken`
    infiltration; infiltrating; infiltrates; weeping; weeps; seeping; seepage; seep; ground water entering;
    groundwater entering; groundwater infiltration; runner; dripper; gusher; leaking in; inflow;
  `,
  signs: spoken`
    groundwater|ground_water coming|running|dripping|dribbling|leaking|pouring|seeping in on|from|at|through the left|right|top|side|bottom|joint;
    water|groundwater|ground_water|drip|trickle|moisture 's|is|are coming|running|dripping|dribbling|leaking|getting|pouring|trickling|seeping|weeping|streaming|entering|spraying|bubbling in;
    water|groundwater|ground_water coming|running|dripping|dribbling|leaking|getting|pouring|trickling|seeping|weeping|sweating|streaming|entering|spraying|bubbling in|through;
    groundwater dribbling|weeping|seeping|dripping|coming|leaking|getting;
    dripping|dribbling|weeping|seeping|sweating|trickling in|through; drips|dribbles|weeps|seeps|trickles in;
    mud|soil|dirt|earth|ground|silt|sand|clay|fines 's|is|are coming|washing|falling|pouring|leaking|getting|seeping|spilling|sifting|flowing|entering|oozing in|inside|through;
    mud|soil|dirt|earth|silt|sand|fines coming|washing|falling|pouring|leaking|getting|seeping|spilling|sifting|flowing|oozing in|inside|through|into;
    mud|soil|dirt|earth|silt|sand|ground|fines washes|comes|falls|pours|seeps|spills|sifts|come|wash|gets in|inside|through;
    soil|water|groundwater entering; water enters; that 's|is groundwater; groundwater weeping; soil 's coming;
    mud * coming in; dirt * coming in; water getting in; water gets in; wet hub; still dribbling; a wet streak;
    groundwater getting; ground come inside; the ground come; water running in; soil in; soil washing;
    soil intrusion; mud in the joint; mud squeezing in; mud pushing in; dirt pushing in; dirt sifting;
    dirt falling;
  `,
  notWords: spoken`
    if there 's groundwater; weeping willow; weep hole; weeping eyes; groundwater today; if groundwater;
    high groundwater; groundwater is high; water coming in from the kitchen; washing machine water coming in;
    water coming in from the; tub water coming in; water running in the kitchen;
  `,
  misheard: [{ heard: 'infatuation|filtration|in filtration|inflation', said: 'infiltration', needs: 'nothing' }],
  examples: {
    says: [
      { text: 'Groundwater coming in on the left at 41.', gives: { at: 41, position: 'left' } },
      { text: 'Water dripping in at the joint at twenty five feet.', gives: { at: 25 } },
      { text: "It's weeping at nine o'clock, 30 feet.", gives: { at: 30, clock: 9 } },
      { text: 'Mud washing in at fifty two from the bottom.', gives: { at: 52, position: 'bottom' } },
    ],
    unsure: [{ text: 'Maybe some infiltration at 17.', gives: { at: 17, status: 'suspected' }, flag: 'suspected' }],
    never: [
      'She has water running in the kitchen.',
      'Clay lets groundwater in.',
      'No infiltration.',
      'The basement leaks when it rains, she says.',
    ],
    notYet: [{ text: "There's inflation at twenty seven feet.", gives: { at: 27 }, flag: 'word-unsure' }],
  },
  report: {
    meaning: 'Water or soil from outside comes into the pipe, so the wall or a joint is not tight.',
    next: 'Have a licensed plumber find and close the place where it comes in.',
    glossary: 'Infiltration: ground water or soil coming into the pipe from outside.',
  },
} as const satisfies Kind;
