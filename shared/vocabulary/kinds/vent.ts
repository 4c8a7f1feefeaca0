import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const vent = {
  name: 'vent',
  group: 'fitting',
  title: 'Vent',
  plural: 'vents',
  takes: ['position'],
  role: 'opening',
  mayEnd: 'vent',
  words: spoken`
    vent; vent pipe; vent stack; vent connection; vent line; vent tie in; dry vent; wet vent; re vent; revent; fresh air inlet; fresh air intake; fresh air vent; air inlet; air vent; vent takeoff; stack vent;
  `,
  notWords: spoken`
    vent your; to vent; roof vent; dryer vent; vent the; through the vent; down the vent; in the vent;
    from the vent; main vent; vent cap; plumbing vent; the vent over; the big vent; the vent on the roof;
    off the vent; up the vent;
  `,
  examples: {
    says: [
      { text: "There's a vent at nine feet, straight up top.", gives: { at: 9, position: 'top' } },
      { text: 'Vent connection at twenty seven.', gives: { at: 27 } },
      { text: 'At 14.5 I see a dry vent on the right.', gives: { at: 14.5, position: 'right' } },
    ],
    unsure: [
      { text: 'I think that is a vent at thirty three.', gives: { at: 33, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'Her office is on Vent Street.',
      'Last time we dropped it down the roof vent.',
      'The dryer vent was full of lint.',
      'Every stack needs a vent or the traps get sucked dry.',
      'She had to vent about the sellers for ten minutes.',
    ],
  },
  report: {
    meaning: 'This pipe lets air into the line so that the traps under the fixtures keep their water.',
    next: 'Nothing to do.',
    glossary: 'Vent: a pipe to the open air, usually through the roof, that keeps drains from being sucked dry.',
  },
} as const satisfies Kind;
