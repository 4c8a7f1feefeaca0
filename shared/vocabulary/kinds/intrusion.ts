import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { is } from '../word-groups.ts';

export const intrusion = {
  name: 'intrusion',
  group: 'defect',
  title: 'Intrusion',
  plural: 'intrusions',
  takes: ['to', 'position', 'clock', 'inches', 'percent'],
  isSpot: true,
  signsYield: true,
  words: spoken`
    cutout 's|is|still hanging|sticking|attached;
    intrusion; intruding; intrudes; intruded; intruding tap; protruding; protrudes; protrusion; break in tap;
    hammer tap; protruding tap; screw; drywall screw; deck screw; nail; rolled gasket; gasket; bolt; rebar;
    metal stake; form stake; wooden stake; ground rod; wood screw; roofing nail; staple; lag bolt;
    concrete nail; lag screw; anchor bolt; sheet metal screw; strap screw; finish nail; rubber ring; sealing ring;
    o ring; crossbore; cross bore; rubber seal; joint seal; seal ring; protruding lateral; sticking in;
    anchor; tap stub; stubbed in tap; fence picket; protruding tap|branch|pipe|connection|service|gasket|seal|rubber; projecting tap|branch|lateral|pipe; projects|projecting into|in; through bolt; pipe end|stub sticking|poking|protruding;
  `,
  signs: spoken`
    duct|ducts|conduit|conduits|cable|cables|telephone_duct|phone_line|service_line comes|come|came|run|runs|goes|go|pass|passes through|thru|across;
    going|driven inside through the? pipe|wall; drilled|driven|bored|pounded|screwed|nailed right|clean|straight? through the|our|this? pipe|wall|line;
    pipe|conduit|tube|rod|stake|post|bolt goes|runs|comes|passes|is|'s|was|stuck|driven|pushed|shoved? right|straight|clean? through ours|the_pipe|our_pipe|this_pipe|it|us|the_line|the_sewer; stake|post|rod|pole|spike|peg is|'s stuck|driven|pushed|hammered|pounded|knocked through|into;
    sticking|sticks|stuck|poking|pokes|poked|hanging|hangs|jutting|juts|jammed|punched|driven|shoved|stabbed|stubbed in|into|through|out|down;
    sticking|poking|hanging|jutting * in|into|through|out|down; drooping|droops|dangling|dangles from|down|into|in|off; sticks up; sticking up; poking up;
    pipe * poking|sticking|punched; extending * into the bore|pipe; extends * into the bore|pipe; into the bore;
    extending into; gasket * hanging|rolled|sticking|pushed; rolled into the pipe; tap sticking;
    tap is intruding; driven right through; pipe is punched; pushed in too far; shoved in too far;
    gas|water|electric|electrical|power|phone|fiber|cable|irrigation|sprinkler|utility line|pipe|main|service|wire * through|across the|our|this|your? pipe|line|sewer|lateral|drain|bore|middle|center;
    stake|post|rod|bar|pole|spike|tap|conduit|cable|wire|bolt|tubing|tube|line driven|run|pushed|punched|poked|bored|drilled|hammered|pounded|going|coming|running|passing|passes|runs|comes|goes|come|right|straight|clean * through|across;
    drove|driven|put|ran|run|shot|drilled|bored * stake|post|rod|bar|pole|spike|conduit|cable|wire|bolt|screw|nail|line * through|into|across;
    bored|drilled|punched right|straight|clean? through|across the|our|this pipe|line|sewer|lateral|drain; seal|gasket|ring * out_of_its|come_out|dropped|loose|displaced;
    seal|ring ${is}? hanging|drooping|dangling|dropped|sticking|pushed down|out|in|into|through|from;
    rubber|gasket|seal|o_ring|ring|grommet|boot 's|is|has|'s_been been? squeezed|squished|bunched|pushed|rolled|folded|looping|looped|flopped|slipped|dropped|bulging|dangling|drooping out|down|into|in|up|over|off|through|loose of|from|into? the? joint|pipe|bore|seat|groove?; pokes|poking|sticks|sticking|juts|jutting|hangs|comes|protrudes|pushes|pushed|stuck|shoved|extends in|into|out|through too far|the_pipe|the_bore|past_the_wall|a_ways; drilled|bored|driven|punched|rammed|gone|went right|straight|clean|slap|smack? through us|it|the_pipe|our_pipe|the_sewer|the_line|the_lateral|the_drain|this; jammed|wedged|stuck|lying|running|sitting across the? pipe|bore|line; into our|the|this bore|pipe from|through the? left|right|top|side|bottom|wall|crown|roof; bunched|squeezed|rolled|pushed up|out|down some|and|into and|it * poking|sticking|hanging|pushed into; steel|metal|star|fence|wooden|iron picket|post|rod|bar|spike|pin through|sticking|in_the|right|driven;
    something|somebody_'s_pipe|someone_'s_pipe 's|has|is|that_'s come|comes|coming|came|stuck|sticks|poking|pokes|punched|gone|driven through|out_of|in_through the? wall|side|top|bottom|crown|roof|pipe|joint;
  `,
  notWords: spoken`
    root intrusion; screw up; screwed up; screw it; screw the; screw cap; screwdriver; screw that;
    nail on the head; nail it; nailed it; nail salon; nail down; nail polish; sticking point; fingernail;
    my nails; hanging out with; hang out; stuck in traffic; sticking around; bolt the; bolted; bolt cutters;
    nut and bolt; nuts and bolts; stick out like; sticks out in; gasket looks; gaskets look; gaskets seated;
    gasket seated; gasket is seated; gasket 's seated; gaskets are; gaskets; hanging in there; tongue hanging;
    hanging on by; hanging down the; hanging over the; blow a gasket; blew a gasket; staple gun; loose screw;
    screws in the wall of; tap water; screws loose; nail biter; wall hanging; hang in there; stuck in the;
    stuck in my; stuck in a; nail file; nails done; hanging in the air; sticking in the mud; seal 's good; ran|run a|the cable|camera|snake|line through;
    cable going through; cable through; sticking in my;
    anchor the|it|bolt_in|to; rebar lying|laying|just|loose|is_lying; piece|chunk|bit|length of rebar; hangs|comes|pushes in|out the_back|on_the_wall|in_the_garage|here|there|to|a|and|fine|easy|good; pushes|pushed|pokes|comes|come into|in the main|manhole|tank|city|house|street|lateral|line_from;
  `,
  misheard: [
    { heard: "casket|casket's|gas_kit|gasket's|gas_get|basket|gaskin", said: 'gasket', needs: 'distance' },
    { heard: 'crew', said: 'screw', needs: 'article' },
    { heard: 'snail', said: 'nail', needs: 'distance' },
  ],
  examples: {
    says: [
      { text: 'Telephone ducts come through the top at eighteen.', gives: { at: 18, position: 'top' } },
      { text: "Fifteen feet, and a nail's come up through the floor.", gives: { at: 15, position: 'bottom' } },
      { text: "Something's come through the wall at nineteen.", gives: { at: 19 } },
      { text: 'The rubber has squeezed out of the joint and into the pipe at sixteen.', gives: { at: 16 } },
      { text: 'A screw at ten feet. I can squeeze by on the left.', gives: { at: 10 } },
      { text: "There's a screw through the top at twenty nine feet.", gives: { at: 29, position: 'top' } },
      { text: 'Tap sticking in about an inch at 44 on the left.', gives: { at: 44, position: 'left', inches: 1 } },
      { text: 'Rolled gasket at thirty six.', gives: { at: 36 } },
      { text: "Something's poking through at twelve o'clock, 50 feet.", gives: { at: 50, clock: 12 } },
      { text: "There's a gas line running straight through the pipe at 27.", gives: { at: 27 } },
      { text: 'Somebody drove a stake through the top of it at 33.', gives: { at: 33, position: 'top' } },
      { text: 'The seal is hanging down at 41.', gives: { at: 41 } },
    ],
    unsure: [
      { text: "There's a casket hanging down at 18 feet.", gives: { at: 18 }, flag: 'word-unsure' },
      { text: 'Could be a nail at 23.', gives: { at: 23, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "I've got a screw loose on the reel.",
      "I thought there might be a nail at six, but it's a shadow.",
      'No intrusions.',
      'We need to nail down a time with the buyer.',
    ],
    notYet: [{ text: 'They hammer taps in like that all over town.', gives: [] }],
  },
  report: {
    meaning: 'Something comes through the wall or a joint and stands in the way of what runs down.',
    next: 'Find out what it is before any cutting tool goes in; it may belong to another utility.',
    glossary: 'Intrusion: something that sticks through the pipe wall into the bore.',
  },
} as const satisfies Kind;
