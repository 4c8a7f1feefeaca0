import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const breakKind = {
  name: 'break',
  group: 'defect',
  title: 'Break',
  plural: 'breaks',
  takes: ['to', 'position', 'clock', 'inches'],
  signsYield: true,
  words: spoken`
    break; broken; broke; busted; broken pipe; broken section; bust; shattered; broken out; snapped; busted out;
  `,
  signs: spoken`
    piece|pieces|chunk|chunks|section|hunk|shard|wedge|slab|bit 's|is|are missing|gone;
    piece|pieces|chunk|chunks|section|hunk|shard|wedge|slab * missing|gone;
    piece|chunk|section|hunk|shard|wedge missing|gone|out; missing piece|pieces|chunk|section;
    piece|chunk|hunk out of|outta the; piece out of the; missing a piece|chunk|section;
    side|top|bottom|crown|wall|invert 's|is missing; side|top|crown is blown out; wall of the pipe is missing;
    wall is missing; sheared off; sheared; blown out; bell is broken; bell 's broken; snapped off; in pieces;
    broke off;
  `,
  notWords: spoken`
    break for lunch; lunch break; coffee break; take a break; took a break; give me a break; gimme a break;
    break it down; breaking news; break the news; broke down; breaks down; break down; broken english; broke my;
    broken my; broken heart; breaks my; break my; broke the; tax break; smoke break; break even; breaking it;
    broken arm; broke a; broke his; broke her; broke off a; spring break; a quick break; break in the weather;
    break a sweat; break your; breaks your; break the bank; broke ground; break in; go broke; flat broke;
    line break; break up; bust my; busted my; or bust; on a break; need a break; without breaking;
    break the cap; lucky break; break the ice; the break of; break ground; break a; bust a; broke off work;
    bathroom break; break time; broken clock; record broken; broken record; breaks the; busted knee; broken cap;
    cap is broken; break loose; breaks loose; broke loose; brake on; broken the; break out of; broke through;
    break through; water break; no pieces missing in;
  `,
  misheard: [{ heard: 'brakes|brake|breaks|brick|bricks', said: 'breaks', needs: 'distance' }],
  examples: {
    says: [
      { text: 'Broken pipe at twenty nine feet, on the bottom.', gives: { at: 29, position: 'bottom' } },
      { text: "There's a piece missing out of the crown at forty two.", gives: { at: 42, position: 'top' } },
      { text: 'Bell is broken at sixteen.', gives: { at: 16 } },
      { text: 'The pipe is busted from 50 to 52.', gives: { at: 50, to: 52 } },
    ],
    unsure: [
      { text: "There's a brake at thirty seven feet.", gives: { at: 37 }, flag: 'word-unsure' },
      { text: "I think it's broken at 21.", gives: { at: 21, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      "Let's take a break.",
      'No breaks through here.',
      "It'll break if they drive on it.",
      'My other reel broke last week.',
      'He said it was broken once and they fixed it.',
    ],
  },
  report: {
    meaning: 'The pipe is broken here; sewage can leave it and soil can enter.',
    next: 'Have a licensed plumber repair or replace this length.',
    glossary: 'Break: a place where the pipe wall is broken through, often with a piece missing.',
  },
} as const satisfies Kind;
