import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';
import { is, roof } from '../word-groups.ts';

export const collapse = {
  name: 'collapse',
  group: 'defect',
  title: 'Collapse',
  plural: 'collapses',
  takes: ['to', 'percent'],
  isSpot: true,
  endsWhenLast: 'stopped',
  implies: 'stopped',
  outgrows: ['crack', 'fracture', 'break', 'deformation'],
  words: spoken`
    collapse; collapsed; collapsing; cavein; caved in; cave in; caving in; fallen in; fell in; falling in;
    crushed; pancaked; folded in; fall down;
  `,
  signs: spoken`
    there 's no pipe there|here|left|anymore; it 's|is|'s_just|all just? closed completely|right_up; ^ gone|caved|fallen|come in $;
    folded right down; folded down; top of the pipe lying; caved; flat as a; given way; gave way; imploded;
    ${roof}|it_all|whole_thing|everything|walls ${is}? come|came|fallen|fell|dropped|dropping|gone|coming|falling right? down|in;
    smashed|mashed|squashed|crushed|flattened|pinched|squeezed completely|all_the_way|totally? flat|shut|closed;
    roof down; fallen down;
    top of the pipe is lying; nothing left of the pipe; there is no pipe left; no pipe left; is fall down;
    pipe|line|it|section|whole_thing|roof|everything 's|is|has gone|come|fallen|folded|dropped|collapsed down? in|down|up on itself|it_self; pipe|line 's|is|has come|gone down; isn't|is_not|ain't|no_longer a|any|much_of_a pipe anymore|any_more|left|here|there?; folded|flattened|mashed|pressed|crushed flat; flat as; walls|top_and_sides ${is} fallen|caved|come|dropped|crashed in|down; fallen in on itself; pinched|crushed|squashed shut; nothing but dirt|rubble|soil left|where;
  `,
  notWords: spoken`
    collapse on the couch; collapsed on the; collapsed in bed; i collapse; crushed stone; crushed rock;
    crushed gravel; fell in love; falling in love; crushed it; crushed ice; collapse in my; i almost collapsed;
    fell in the; about|ready|fixing|going|wanting|waiting|liable|likely to collapse|cave_in|fall_in; on its|the way to a? collapse; close|next|near|short to|of? a|being|full|total? collapse; before|until|till it|that|this|they collapses|caves_in|falls_in; won't|not going_to|gonna? collapse; would|will have? collapse|collapsed|cave_in|caved_in;
    liner|lining|sleeve|belly|roof_of_the_house|ceiling_in 's|is|are|has|have gone|come|fallen|dropped down|in|off; pipe gone down|in|out|up the|to|into|that|a; pipe|line is|'s down by|about|here|there|to|at|in_the|low|under|deep;
    like|of|in a cave in;
  `,
  misheard: [
    { heard: 'co_laps|co_lapsed|co_lapse|call_apse', said: 'collapse', needs: 'nothing' },
    {
      heard: 'clots|claps|clapse|collabs|collapsible|clubs|class|collab|kolaps|colapse|colaps',
      said: 'collapse',
      needs: 'article',
    },
    { heard: 'collect|callous', said: 'collapse', needs: 'article' },
  ],
  examples: {
    says: [
      { text: 'The pipe has come down on itself at thirty five.', gives: { at: 35 } },
      { text: "It's collapsed at forty three feet.", gives: { at: 43 } },
      { text: 'Caved in at 31.5.', gives: { at: 31.5 } },
      { text: 'Total collapse from sixty to sixty four.', gives: { at: 60, to: 64 } },
      { text: "The roof's come down at 25, maybe eighty percent.", gives: { at: 25, percent: 80 } },
      { text: 'The pipe has given way at 51.', gives: { at: 51 } },
      { text: "It's out of round at 29 and then it's squashed completely shut.", gives: { at: 29 } },
    ],
    unsure: [
      { text: "There's a collab at forty feet.", gives: { at: 40 }, flag: 'word-unsure' },
      { text: 'Could be a collapse at 51.', gives: { at: 51, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'It is on its way to a collapse.',
      'Orangeburg always collapses in the end.',
      "It hasn't collapsed.",
      "If it caves in they'll be digging up the yard.",
    ],
    notYet: [{ text: 'That whole market collapsed this year.', gives: [] }],
  },
  report: {
    meaning: 'The pipe has lost its shape and no longer carries sewage as it should.',
    next: 'Have a licensed plumber replace this length without delay, and use as little water as possible until then.',
    glossary: 'Collapse: a place where the pipe has caved in.',
  },
} as const satisfies Kind;
