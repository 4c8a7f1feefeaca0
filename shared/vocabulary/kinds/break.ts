import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { is, parts, roof } from '../word-groups.ts';

export const breakKind = {
  name: 'break',
  group: 'defect',
  title: 'Break',
  plural: 'breaks',
  takes: ['to', 'position', 'clock', 'inches'],
  isSpot: true,
  signsYield: true,
  outgrows: ['crack', 'fracture'],
  words: spoken`
    break; broken; broke; busted; broken pipe; broken section; bust; shattered; broken out; snapped; busted out; smashed; smashed up;
    broken up; broken off; broken away; in pieces|bits; come|came|fallen|gone|smashed|broken to pieces|bits; broken|snapped|sheared|cracked|split|busted|broke clean|clear|right? in two|half; 
  `,
  signs: spoken`
    side|top|roof|crown|wall|corner|half|bottom of_the_pipe|of_it gone|missing|out; ${roof}|side|wall 's|is? out , #; ${roof}|side|wall|whole_side 's|is out; ^ side|top|crown|wall out ,; flaked|broke|chipped|busted off and fell|dropped|gone;
    ${parts}|bit|part|half|corner * missing|gone; missing a? ${parts}|bit|part|wall|crown|bell; missing pipe at|from|here|on; ${parts}|part|half of the|this pipe|wall|bell|hub|crown|top ${is}? missing|gone|out;
    bell|hub|rim|lip|edge|spigot ${is} chipped|broken_off|cracked_off;
    ${parts}|bit|part * dropped|fallen|fell|dropping|falling|falls|come|came|knocked|popped|busted|broke|broken|blown out|away|off;
    ${parts} * out_of the|it|this|that; ${parts} out; is missing a|one ${parts};
    side|top|roof|crown|wall|bell|hub|spigot|rim|corner 's|is|are|has|was|been gone|missing|blown_out|broken;
    side|crown|top|wall 's|is missing; no top|crown|roof|wall to|left; wall of the pipe is missing;
    cracked off; sheared off; sheared; blown out; snapped off; broke off;
    lost * of the|its wall|crown|top|pipe|bell;
    ${parts}|bit|part|half|corner|most|much of the|this|its|that|our pipe|wall|bell|hub|crown|top|side|bottom|roof|rim|socket|spigot|collar|joint ${is}? missing|gone|out|absent; ${parts}|bit|part|half|corner of the|this|its pipe|wall|bell|hub|crown|top|side|bottom|roof|rim|socket|collar ${is}? fallen|dropped|knocked|broken|come off|out|away|in; ${parts}|bit|corner|slab|lump out|gone|missing|broken|knocked|bitten|chipped of|from|out_of|off the|it|this|that|one|its; ${parts}|slab|bit of it|pipe|clay|the_pipe|iron missing|gone|out|absent; ${parts} absent; bell|hub|rim|lip|edge|spigot|collar|socket|shoulder|end|corner ${is} * knocked|broken|snapped|sheared|busted|chipped|smashed|cracked|blown|torn off|away; wall|side|top|crown|roof isn't|is_not|ain't|not there|here anymore|any_more?; missing half|most|part of; out of the bell|hub|crown|wall|top|side|roof|rim is|'s a|an ${parts};
    no top|roof|crown|side|wall on|to|over|there this|the|that|it? pipe?; triangle|strip|square|half_moon|v|shard|bit|flake|piece|chunk of the? clay|pipe|iron|wall|bell|hub|concrete|it ${is}? gone|missing|out|off|away; lip|edge|rim|shoulder|end of the|this|its bell|hub|pipe|socket|spigot|joint ${is}? broken|knocked|chipped|snapped|gone|busted|cracked off|out|away?;
  `,
  weakWords: spoken`
    chipped; chip out of; jagged;
  `,
  doubtfulWords: spoken`
    bite|notch|nick out|missing|gone;
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
    break through; water break; pieces|piece * gone and; jagged crack|hole|edge; joint|joints|seam * gone; no pieces missing in;
    ${parts} of it gone and; in pieces of; end|corner 's broken; part of it * missing from; fallen to pieces over;
    that|it|they|which 's|is|takes|has|have about|nearly|almost|maybe? half|most|third|quarter of? the|a pipe|bore|line gone|taken|lost;
    snake|auger|cable|rod|cutter|bit|tip * broken|snapped|busted|broke off;
    let_'s|let_us|we_'ll|gonna break here|for|there|now;
  `,
  misheard: [{ heard: 'brakes|brake|braked', said: 'breaks', needs: 'distance' }],
  examples: {
    says: [
      { text: 'A side of the pipe gone, twenty four.', gives: { at: 24 } },
      {
        text: 'Broken pipe at 29. The dark bit ahead looks like another break, but it is only a shadow.',
        gives: { at: 29 },
      },
      { text: 'Snapped clean in two at fourteen.', gives: { at: 14 } },
      { text: 'At twenty six a corner of the bell is missing.', gives: { at: 26 } },
      { text: 'Broken pipe at twenty nine feet, on the bottom.', gives: { at: 29, position: 'bottom' } },
      { text: "There's a piece missing out of the crown at forty two.", gives: { at: 42, position: 'top' } },
      { text: 'Bell is broken at sixteen.', gives: { at: 16 } },
      { text: 'The pipe is busted from 50 to 52.', gives: { at: 50, to: 52 } },
      { text: 'A piece has dropped out of the crown at 47.', gives: { at: 47, position: 'top' } },
      { text: 'Cracked at 38, and a chunk is gone.', gives: { at: 38 } },
      { text: "There's no top to the pipe at 21.", gives: { at: 21, position: 'top' } },
      { text: 'A chip out of the bell at 12.', gives: { at: 12 } },
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
      'I lost a piece of tape somewhere.',
      'The brick at the bottom of the steps is loose.',
      'He said it was broken once and they fixed it.',
    ],
  },
  report: {
    meaning: 'The pipe is broken here; sewage can leave it and soil can enter.',
    next: 'Have a licensed plumber repair or replace this length.',
    glossary: 'Break: a place where the pipe wall is broken through, often with a piece missing.',
  },
} as const satisfies Kind;
