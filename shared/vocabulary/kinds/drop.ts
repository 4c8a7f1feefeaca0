import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const drop = {
  name: 'drop',
  group: 'fitting',
  title: 'Drop',
  plural: 'drops',
  takes: ['to'],
  isSpot: true,
  words: spoken`
    vertical drop; drop pipe; drop section; drop down; drop fitting; drop leg; vertical section|leg|run;
    drop connection; outside drop; plunge;
  `,
  weakWords: ['drop'],
  signs: spoken`
    straight|right down we|i|she|it go|goes; the drop starts|begins|is|runs; falls|drops|goes|dives off? vertical;
    falls|drops|goes|dives|heads|plunges|turns off? vertically|steeply|plumb;
    drops|drop|goes|go|turns|turn|falls|dives|plunges|heads|shoots off? straight|right|plumb down;
    drops|goes|turns|falls|runs vertical; drops|turns|dives|plunges down; goes down , vertical;
    pipe go|goes down; drops vertically; goes vertically; it drops; straight down the stack; that is a drop;
    that 's a drop; drops off; falls|fall|falling straight; turns down into; straight down the wall;
    drops|goes|falls|heads|turns down the wall; pipe|line dives|plunges; pipe|line drops|falls|goes away|off|down|straight; over the edge;
    goes|go|falls|fall|comes|drops straight down|away; down a drop; drop of about? # feet|foot; takes|makes a drop;
    drops about? # feet|foot; drops about|maybe|like # feet|foot; goes|turns|drops|pipe|line vertical; # foot drop; drop to the basement|slab|lower;
    falls|fall|pitches|tips|dives|plunges|drops|goes|heads|dips|turns|disappears straight|right|away|steeply down|away|vertical|straight_down; pitches|tips over|straight_down|down; straight drop|fall|plunge; falls|drops|goes down|away|off the stack|riser|shaft|well|hole; falls|drops away; turns|drops into the stack;
    and|then|whoop|whoa|it_'s|she_'s , straight|right down $; and|then|it_'s|goes straight|right down $;
  `,
  notWords: spoken`
    a drop of; drop of water; it drops off the; drops down at the joint; drops off on the downstream; drop the;
    drop by; drop in the bucket; drop me; drop my; drop it; dropped; cough drop; drop cloth; drops out;
    drops in; drops into; drop in; drops in to; slight|little|small|minor|inch|sharp drop; drop at the joint; drop in the joint|pipe|line|temperature|pressure;
    drop of|off|a|me|you|us; drops down to a # inch; drop from the; drops from # inch; drop cord; drop light; drop ceiling; drop something; drop in grade|elevation;
    we dropped; water drops; goes|go down the road|street|list|line|drain; vertical crack; pick up and drop; i drop; i 'll drop; let me drop; gonna drop; going to drop; every drop; last drop; drop no; water drop; drop off; drops of; drops to;
    drop|drops|dropped|dropping into|onto the|a|in the|a; drop|drops|dropped|dropping in|into the|a|our|your; tips over backwards|the; heads down the road|street|hall|line; ground|yard|lawn|hill|land|street|bank|lot|driveway falls|drops|slopes|pitches away|off|down; goes over well; falls away from the house;
  `,
  examples: {
    says: [
      { text: 'Pitches straight down at thirty one.', gives: { at: 31 } },
      { text: 'It falls off straight down at a foot and a half.', gives: { at: 1.5 } },
      { text: 'It falls off vertically at ten.', gives: { at: 10 } },
      { text: 'At forty four feet it drops straight down.', gives: { at: 44 } },
      { text: 'Vertical drop here at sixty two.', gives: { at: 62 } },
      { text: 'The line goes over the edge at nineteen feet.', gives: { at: 19 } },
      { text: 'Twenty seven, the pipe dives.', gives: { at: 27 } },
      { text: 'Thirty eight feet, she turns straight down.', gives: { at: 38 } },
      { text: "There's a vertical drop at fifty one, goes down to fifty five.", gives: { at: 51, to: 55 } },
    ],
    never: [
      'A vertical drop like that is hard on the cable.',
      "I'll drop the camera in the other side after lunch.",
      "Don't drop that reel on the tile.",
    ],
    notYet: [{ text: 'The signal drops off out by the street.', gives: [] }],
  },
  report: {
    meaning: 'The line turns and falls steeply or straight down here.',
    next: 'Nothing to do.',
    glossary: 'Drop: a place where the line turns straight down to a lower level.',
  },
} as const satisfies Kind;
