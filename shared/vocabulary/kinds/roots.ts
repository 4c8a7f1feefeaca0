import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { plants } from '../word-groups.ts';

export const roots = {
  name: 'roots',
  group: 'defect',
  title: 'Roots',
  plural: 'roots',
  takes: ['to', 'position', 'clock', 'degree', 'percent'],
  words: spoken`
    spaghetti coming|hanging|poking; spaghetti in|through|at the joint;
    root; roots; root ball; root mass; rootlet; root hair; tree root; feeder root; root intrusion; hair roots;
    root curtain; root growth; root infestation; rooty; root mat; root tendril; root tips; root clump;
    root fibers; root wad; root beard; rootball; taproot; tap root; root ingress; root penetration; root activity;
    root bound; rootbound; root nest; root bundle; root plug; root system; root strand; root fibre;
    feeders; hair root; vegetation; fibrous mass|growth|roots; plant|tree growth; root whisker|thread|beard|curtain; rooting at|in|through|from|here; beard of roots;
  `,
  signs: spoken`
    stringy stuff; tree hair; little hairs; root coming; tendrils; fox tail; foxtail; hairs coming in;
    hair coming in; hair in the joint; hairs in the joint; rooted up|over|in; all rooted;
    tree 's|has|have found|got|gotten|grown|worked|pushed * in|into|through|way|pipe;
    ${plants} 's|has|have|is|are just? found|got|gotten|grown|worked|pushed|sent|reached|made|put|broken|come|coming|growing * in|into|through|way|pipe|joint|inside; ${plants} 's|has|have found it|us|this|that|the; ${plants} 's|is|are in|inside the? pipe|line|joint|here|there; tree living|growing|sitting in; hairs|threads|whiskers|fibers|fibres|feelers|strands|tentacles|fingers coming|growing|hanging|poking|reaching|creeping|dangling in|through|down|from|out|off; sent some|a|its? hair|hairs|feelers|fingers through|into|in;
  `,
  weakWords: spoken`
    whiskers; horse tail; horsetail; hairy; beard; fuzz; fuzzy; spiderweb of; tendril;
  `,
  doubtfulWords: spoken`
    a? big|huge|great|giant|massive|solid ball; ball|wad|curtain|tangle|nest|mat of it|them; hairs; stringy;
  `,
  notWords: spoken`
    roots|root * sidewalk|driveway|patio|yard|lawn; root of the problem|matter|issue;
    root cause; root of the problem; root beer; root for; rooting for; rooted in the community; deeply rooted; rooted out; root canal; en route;
    scenic route; square root; grass roots; root of it; whisker away; beard on; his beard; my beard;
    cat whiskers; roots here in; roots run deep; roots will|would; put down roots;
    rooting for|around|through_the; feeders of|for|in_the_yard; bird feeders; feed; big ball of wax|string|yarn;
  `,
  misheard: [
    { heard: "routes|route|ruts|rootes|rudes|roofs|rutes|root's|boots|rutz|rootz", said: 'roots', needs: 'distance' },
    { heard: 'route_ball|rude_ball|root_bull|root_bowl|route_mass|root_mast', said: 'root ball', needs: 'nothing' },
    { heard: 'fruits|fruit', said: 'roots', needs: 'distance' },
    { heard: 'reads at the joint', said: 'roots at the joint', needs: 'nothing' },
  ],
  examples: {
    says: [
      {
        text: "Roots up in the crown, twenty two feet. There's a fair few, I'd say moderate.",
        gives: { at: 22, position: 'top', degree: 'moderate' },
      },
      { text: "Roots at nineteen feet. I wouldn't call them heavy.", gives: { at: 19 } },
      { text: 'Roots at nineteen feet, nowhere near severe.', gives: { at: 19 } },
      { text: 'You asked about roots. Here are some, at fifteen.', gives: { at: 15 } },
      { text: "Roots at sixteen. They're coming in from the top.", gives: { at: 16, position: 'top' } },
      {
        text: "Sixteen feet. Roots. I'd call that moderate, coming in on the left hand side.",
        gives: { at: 16, position: 'left', degree: 'moderate' },
      },
      { text: 'Hairs are coming through the joint at nine.', gives: { at: 9 } },
      { text: "The elm's found its way in at twenty one.", gives: { at: 21 } },
      { text: 'Eight feet, between nine and ten on the clock, a root ball.', gives: { at: 8, clock: 9 } },
      { text: 'You asked me about roots, well there they are at fifteen.', gives: { at: 15 } },
      {
        text: 'Roots at nine feet, mostly on the left side, nothing on the right.',
        gives: { at: 9, position: 'left' },
      },
      {
        text: 'Roots at nineteen feet, light, and at twenty five, heavy.',
        gives: [
          { at: 19, degree: 'light' },
          { at: 25, degree: 'heavy' },
        ],
      },
      { text: 'Roots at nine feet, half the pipe, no, more like sixty percent.', gives: { at: 9, percent: 60 } },
      {
        text: 'Twelve feet, roots at the top, fifteen feet, roots on the left.',
        gives: [
          { at: 12, position: 'top' },
          { at: 15, position: 'left' },
        ],
      },
      { text: 'Eighteen feet and a half, roots.', gives: { at: 18.5 } },
      {
        text: 'Roots at the joint at twenty three feet, coming in from the top, about a third of the pipe.',
        gives: { at: 23, position: 'top', percent: 33 },
      },
      { text: 'Heavy roots from thirty one to thirty four.', gives: { at: 31, to: 34, degree: 'heavy' } },
      { text: "At 17.5 I've got a root ball.", gives: { at: 17.5 } },
      { text: 'Tendrils coming in at eleven feet, left side.', gives: { at: 11, position: 'left' } },
      { text: 'Fine roots all the way around the joint, 46 feet.', gives: { at: 46, position: 'all-around' } },
      { text: "Thirty eight feet, it's all rooted up in here.", gives: { at: 38 } },
      { text: 'At nineteen the tree has found its way in.', gives: { at: 19 } },
      { text: 'A beard hanging from the crown at 46.', gives: { at: 46, position: 'top' } },
      { text: "Roots at 52, it's about forty percent blocked.", gives: { at: 52, percent: 40 } },
      { text: 'Roots at 25, coming from 11:00.', gives: { at: 25, clock: 11 } },
      { text: 'Roots from ten to two, 33 feet.', gives: { at: 33, clock: 10 } },
    ],
    unsure: [
      {
        text: 'Big ball at thirty one, sixty percent of the pipe.',
        gives: { at: 31, percent: 60 },
        flag: 'word-unsure',
      },
      { text: "There's routes at the joint at twenty eight feet.", gives: { at: 28 }, flag: 'word-unsure' },
      { text: 'Possible roots at forty one.', gives: { at: 41, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'I was rooting around in the truck for a spare bulb.',
      'What looks like a root at twelve is actually a strand of glue.',
      "The seller's report mentions roots at forty.",
      'Roots love a clay joint.',
      'No roots in this section.',
      'He had roots cut out two years ago.',
      "Let's get to the root cause of this.",
      'This is getting hairy.',
      'A little fuzz on the lens, hang on.',
      "I'd have the roots cut every spring.",
    ],
    notYet: [],
  },
  report: {
    meaning:
      'Roots get in where a joint or the wall is not tight, catch paper and grow back after cutting for as long as the way in stays open.',
    next: 'Have the roots cut out by a licensed plumber, and the place looked at again afterward.',
    glossary: 'Roots: tree or shrub roots that have grown into the pipe.',
  },
} as const satisfies Kind;
