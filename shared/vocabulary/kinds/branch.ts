import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const branch = {
  name: 'branch',
  group: 'fitting',
  title: 'Branch',
  plural: 'branches',
  takes: ['position', 'clock', 'serves', 'diameterIn', 'material'],
  signsYield: true,
  words: spoken`
    branch; branch line; branch drain; branch connection; branch arm; side line; lateral connection;
    side connection; service connection; third connection; side branch; reopened connection;
    reinstated connection; reinstatement; tie in; incoming line; incoming pipe; incoming drain;
  `,
  signs: spoken`
    drain|line|pipe|lateral|arm coming|comes|come|came in;
    drain|line|pipe|lateral|arm joins|joining|enters|entering;
    drain|line|pipe|lateral|arm * coming|comes|come in; ties in; tied in; tying in;
    drain|line|pipe ties|tie|tying; drops in|into from; something coming in from; dumps|dumping in|into;
    opening on|at; opening in the liner; opening they|he|she cut; second|third|first|next opening;
    first connection; second connection; fourth connection; coming in on|from the left|right|top|side;
    come|comes one|a|another pipe|line|drain|branch from; one|old|another pipe|line is coming|comes from;
    coming from the left|right side; pipe is coming|comes from; comes in from the left|right|top;
    comes in on the left|right|top; connection on the left|right|top;
    line|drain|pipe off the|to_the|on_the left|right; inlet on|from the left|right|top; teeing in; feeds in;
    feeds into; feeding in; empties in; <service> coming|comes in;
    <service> ties|drains|drops|dumps|joins|joining|tying|draining in|into;
    <service> line|drain|arm coming|comes in|on; someone tied|tapped into|in; hooks in; hooked in;
    reinstated at; has been reinstated;
  `,
  notWords: spoken`
    tree branch; branch of the tree; branches of the; olive branch; city main ties; branch off;
    ties into the main|city; ties in to the main|city; ties into my; branch office;
    tied in to the old|clay|cast; tied into the; where they tied;
  `,
  examples: {
    says: [
      { text: 'A branch comes in on the right at twenty two feet.', gives: { at: 22, position: 'right' } },
      {
        text: "Thirty five feet, drain coming in from the left, that'd be the bathroom.",
        gives: { at: 35, position: 'left', serves: 'bath' },
      },
      { text: 'The laundry ties in at 41.', gives: { at: 41, serves: 'laundry' } },
      {
        text: "There's a two inch line coming in at the top at fourteen.",
        gives: { at: 14, position: 'top', diameterIn: 2 },
      },
    ],
    unsure: [
      {
        text: 'Could be a branch at nineteen, all I get is a dark spot.',
        gives: { at: 19, status: 'suspected' },
        flag: 'suspected',
      },
    ],
    never: ['A branch that ties in flat like that always runs slow.', 'No branches in this stretch.'],
    notYet: [
      { text: "Side connection at three o'clock, 28 feet.", gives: { at: 28, clock: 3 } },
      { text: 'There was a big branch down across the driveway.', gives: [] },
      { text: 'His brother tied in a second kitchen without a permit, so he says.', gives: [] },
    ],
  },
  report: {
    meaning: 'Another drain joins the line here.',
    next: 'Nothing to do.',
    glossary: 'Branch: a smaller drain that joins the line being looked at.',
  },
} as const satisfies Kind;
