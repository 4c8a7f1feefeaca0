/** The words by which one pipe is said to become another. They hold no material: "goes to", "quits and", "gives way to". */

/** Every form of regular verbs: "change" gives changes, changed, changing. */
const formsOf = (verbs: string): string[] =>
  verbs.split(/\s+/).flatMap((verb) => {
    const stem = verb.replace(/e$/, '');
    return [verb, /(?:s|x|ch|sh)$/.test(verb) ? `${verb}es` : `${verb}s`, `${stem}ed`, `${stem}ing`];
  });

const changing = [
  ...formsOf(
    `turn change switch transition convert swap adapt trade finish enter cross splice join connect butt replace start
    end stop follow transfer transform revert`,
  ),
  ...'go goes going gone went become becomes becoming became give gives gave given take takes took tie ties tied'.split(
    ' ',
  ),
  ...'quit quits begin begins began leave leaves leaving left flip flips flipped meet meets meeting met'.split(' '),
  ...'swaps swapped swapping run_out runs_out ran_out pick_up picks_up picked_up picking_up hand_off hands_off'.split(
    ' ',
  ),
  ..."cut_over over_to is_done 's_done all_done is_over 's_over is_through peters_out petered_out dies_out".split(' '),
].map((word) => word.replaceAll('_', ' '));

const listed = (words: readonly string[]): string => words.join('|');

/** Between two materials: the first becomes the second. */
export const changesBetween = new RegExp(
  `(?:^|\\b)(?:${listed(changing)}|over|then|drops into|jumps|moves|comes off|come off|shifts|hits|into|onto|to|and (?:now |then |right )?in(?: the)?)\\b`,
);
/** Before or after both. */
export const changesAround = new RegExp(`(?:^|\\b)(?:${listed(changing)}|where)\\b`);

/** Between two materials: they are compared or told apart, and neither becomes the other. */
export const comparesBetween =
  /\b(not|isn't(?! (?:that|it))|instead of|rather than|or|than|like|unlike|without|never|ain't|wasn't)\b/;

/** What may stand between "into" and the material: "into an old six inch clay". */
const adjectives =
  "(?: (?:a|an|the|some|old|new|older|newer|original|that|this|our|your|section|piece|length|run|stretch|bit|of|\\d+|inch|what|looks|like|size|gray|grey|in|to|now|it|'s|is|um|uh|here|there))*";
const arriving = formsOf('enter reach pick_up cross').concat(
  'meet',
  'meets',
  'hit',
  'hits',
  'met',
  'picks up',
  'picked up',
  'picking up',
);
const moving = formsOf(
  'drop run break move pass feed dump land jog slip step empty tie butt transition cross switch change slide',
).concat(
  'get',
  'gets',
  'got',
  'getting',
  'come',
  'comes',
  'came',
  'coming',
  'goes',
  'go',
  'going',
  'out',
  'off',
  'tied',
  'right',
  'straight',
  'dropped',
  'stepped',
);
/** The end of what stands before a material: it is what the pipe is. */
export const saysIs = new RegExp(
  `(?:^|\\b)(?:it 's|it is|that 's|this is|we 're in|i 'm in|becomes|now|here|here 's|must be|pipe is|line is|rest is|we 've got|you 've got|you got|we have|you have|there 's|then|and|comes)${adjectives}$`,
);
/** The end of what stands before a material: the pipe goes over into it. */
export const goesInto = new RegExp(
  `\\b(?:(?:${listed(arriving)})|(?:joined|joins|soldered|spliced|coupled|connected|glued|married|fitted|threaded|leaded|caulked|succeeded|replaced)(?: [\\w']+){0,3}? (?:to|onto|on to|into|by|with)|(?:${listed(moving)})(?: [\\w']+){0,3}? (?:into|onto|in to|on to|over to))${adjectives}$`,
);
const turningInto =
  /\b(goes|go|going|went|turns|turned|turning|changes|changed|changing|switches|switched|transitions|transition|converts|becomes|become|over|gives way|adapts|swaps|cut over|flips|ties|tied|tie|turn|change|switch|shifts|moves|jumps|trade|trades)[\w' ]{0,32}$/;
/** Whether what stands before a material says that the pipe turns into it. */
export const leadsInto = (before: string): boolean =>
  (turningInto.test(before) || goesInto.test(before)) && !/\bgoing (up|down|out)$/.test(before);

/** Right after a material: it begins here. */
export const beginsAfter =
  /^(pipe |tile |stuff |section )?(starts|begins|picks up|takes over|start|begin|now starts|starting|beginning|follows|comes next|comes in here|from there$|after that$)\b/;
/** Right before a material: it begins here. */
export const beginsBefore =
  /\b(start|starts|begins|beginning|start of|beginning of|comes|then comes|followed by|picking up)( the| our| your| some)?$/;

/** Right after a material: it ends here, and what follows is named next. */
export const endsAfter =
  /^(pipe |tile |stuff |section )?(stops|ends|quits|finishes|(?:is|'s) (?:done|over|finished|through|gone)|gives out|runs out|peters out|comes to an end)\b/;

/** What the pipe is from here on, with no word of a change. */
export const fromHere =
  /\b(from here|from there|from that point|from this point|from then on|here on|there on|from now on|we 're in|i 'm in|we are in|we 're now in|in here|back in|back to|back into|the rest|rest of the way|on out|onward|all the way (?:to|out|up|down)|again|on it 's|on it is|(?:from|past) \d+(?:\.\d+)?(?: and a half)?(?: feet)? (?:on|out|onward|onwards))\b/;
