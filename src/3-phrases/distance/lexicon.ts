/** The words around a counter reading. Each list is one frame; the longer match wins. */

import { spoken } from '../../../shared/vocabulary/spoken.ts';
/** Before a number: it is a place. */
export const placeBefore: readonly string[] = spoken`
  was; that was; were; is really; really at; should say; should read; should be; should be at; reads more like;
  more like; at; at about; at around; at like; at maybe; at roughly; at approximately; at just past;
  at just over; at just under; at say; over at; down at; up at; out at; right at; back at; here at; there at;
  in at; on at; and at; also at; again at; at exactly; at um; at uh; that at; at almost; at nearly; at , um ,;
  at , uh ,; at like , uh ,; at , like ,; at , let me see ,; at , let s see ,; at , let 's see ,; on; on about;
  around; up around; out around; down around; near; past; just past; before; passing; coming up on;
  coming up to; up to; out to; we are at; we 're at; i 'm at; that 's at; that 's; it is; it 's; call it;
  call that; say; let 's call it; let 's say; make that; make it; station; footage; footage is; mark; by; reads;
  reading; until; till; past about; to; to station; to about; from; from about; from around; starting at;
  starts at; starts; starting; begins at; beginning at; begin at; start at; ends at; end at; ending at;
  stops at; stopping at; quits at; quit at; clears at; clears up at; between; closer to; hit; hits; reached;
  about; through; thru; is; roughly; is at; 's at; are at; was at; were at; were; be at; around about;
  approximately; commencing at; commences at; terminating at; terminates at; on out to; and; now; comes in at;
  is about; on to; onto; say about; like; maybe; be; turns; turned; reading of; mark at; says; then; okay;
  number; after; beyond; farther|further than; farther|further along than; as of; further|farther than; get|got|gets to; is past; somewhere around; somewhere near; somewhere about;
`;

/** Before a number: it is what the counter shows, whatever else the sentence is about. */
export const counterBefore: readonly string[] = spoken`
  distance; distance ,; location ,; footage ,; counter ,; chainage; run distance; at station ,; station;
  footage; footage is; footage of; counter says; counter has; counter gives; counter showing; counter reads; counter shows; counter at; counter is at;
  counter 's at; counter 's on; counter reading; reading is; screen says; says; reads; number is;
  the counter says; it says; counter; marker; the meter says; dial says; monitor says; display says;
  what 's that say; reel says; footage says; footage reads; foot marker; tape says; on the counter at; count is;
  count says; odometer says; odometer reads; sits at; tracks at;
`;

/** Between two numbers: a stretch. */
export const rangeBetween: readonly string[] = spoken`
  to station; and running along to; runs along to; , runs along to; , running to; , runs to; , and it runs to;
  and along to; , on to; to; to about; to around; to maybe; to roughly; to almost; to like; to just past;
  to , um ,; to , uh ,; through; thru; until; until about; till; till about; out to; out to about; up to;
  up to about; on out to; on to; on up to; on down to; on through; on through to; over to; down to;
  all the way to; all the way out to; all the way up to; clear to; clear out to; clean out to; clear through;
  going to; goes to; running to; runs to; running out to; runs out to; extending to; extends to; continuing to;
  continues to; right through to; right up to; right out to; and goes to; and goes out to; and it goes to;
  and it goes out to; and goes on to; and it runs to; and runs to; and running to; and it runs out to;
  and runs out to; and ends at; and it ends at; and ending at; and quits at; and quitting at; and it quits at;
  and stops at; and stopping at; and it stops at; and clears at; and clears up at; and it clears up at;
  and it clears at; and out at; and out of it at; and i 'm out of it at; and we 're out of it at;
  and i come out of it at; and we come out of it at; and comes out at; and it comes out at; and come out at;
  and lets go at; and it lets go at; and lasts to; and lasts till; and lasts until; and holds to;
  and it holds to; and continues to; and it continues to; and carries on to; and carries to; and terminating at;
  and terminates at; , out at; , out by; , ends at; , out of it at; , ending at; , done at; , done by;
  , gone by; and done by; and done at; and gone by; and over by; and over at; and finished at; and finishes at;
  and back out at; and goes until; and goes till; and it goes till; and it goes until;
  and out the other side at; and out by; and it is done by; and it 's done by; and it 's gone by;
  and it 's over by; and it 's out by; and lifts at; and tapers off at; and tapers out at; and peters out at;
  and fades out at; and wraps up at; and finishing at; and clear by; and clean by; and dry by; and dry at;
  and goes|runs|carries back to; and it goes|runs|carries back to; goes|runs|running|going|on|all_the_way|clear back to; back up|down|out to; and clear at; and levels out at; and is gone by; and is done by; and it goes , let s see , to;
  and it goes out , let 's see , to; and it goes , let 's see , to; back to; then to; or; or maybe; or so to;
  , say , to; on out till; on till; on until; and ran to; and ran until; ran to; stretching to; stretches to;
  and stretches to; all the way till; and doesn t quit till; and doesn't quit till; and doesn't quit until;
  and doesn't let up till; and doesn't let up until; and it doesn't quit till;
`;

/** Before a number, with no thing of its own: where the stretch at hand ends. */
export const endBefore: readonly string[] = spoken`
  runs along to; along to; runs on to; runs clear to; running along to; stretches to; from there to;
  from here to; from there out to; from here out to; from there on to; from there to about; from there until;
  from here until; quitting at; terminating at; stopping at; clearing at; clearing up at; lets go by;
  running out at; and quitting at; dies out at; dying out at; fading at; fades at; tapering off at;
  out of it around; out of it about; comes back up at; come back up at; out the far end at; until about;
  till about; clear about; clear around; carries on until; stays like that to; stays that way to;
  straightens out at; cleans up at; cleans up by; better at; better by; back to good pipe at; good again at;
  good again by; out of it at; out of it by; come out of it at; comes out of it at; came out of it at;
  i 'm out of it at; out of the water at; out of it , at; out the other side at; out the far side at;
  clears up at; clears at; clears by; cleared at; clear again at; clear at; clear by; ends at; it ends at;
  ending at; ends; quits at; quit at; stops at; lets go at; lets up at; come up out of it at; come up at;
  comes up at; back out at; back out of it at; tapers off at; tapers out at; peters out at; goes until;
  goes till; goes to; goes out to; goes on to; runs to; runs out to; runs till; runs until; carries on to;
  carries to; continues to; all the way to; all the way out to; all the way till; until; till; out by; over by;
  gone by; done by; done at; comes out at; come out at; dry again at; dry at; out at; through to;
  clear through to; keeps going to; keeps on to; holds to; holds until; lasts to; lasts till; lasts until;
  finishes at; over at; and out at; that ends at; extends to; extending to; levels out at; climbs out at;
  climb out at; rise out of it at; rises out of it at; back to normal at; back to normal by; terminates at;
  terminating at; end of it at; end of it 's at; end of it is; out to; far end at; far end is at; far end 's at;
  exit at; exits at; out again at; free of it at; get out at; get out of it at; got out of it at; wraps up at;
  break out at; come up for air at; up for air at; surface at; surfaces at; comes clear at; come clear at;
  lens clears at; as far as; as far out as; up as far as; right up to; not out until; not out till; not out of it until;
  out toward|towards; running toward|towards; deeper toward|towards; worse toward|towards; on toward|towards;
  through to about|around; gone at; gone again at; gone again by; dry again by; dry by; clear of it at|by;
`;

/** After a number with a foot unit: the number is the way from somewhere, forwards. */
export const relativeAfter: readonly {
  readonly sign: 1 | -1;
  readonly needsAnchor: boolean;
  readonly words: readonly string[];
}[] = [
  {
    sign: 1,
    needsAnchor: false,
    words: spoken`
      on; further; further on; further along; further down; further out; further in; further up; farther;
      farther on; farther along; farther down; later; along; down the line; down the pipe; up the line;
      up the pipe; down from there; on from there; ahead; beyond; past; past it; past that; past there;
      past this; after; after that; after it; on past; on from that; from there; out from there; on down; more;
      downstream; downstream of that; downstream of it; beyond that; beyond it; from that; away; on beyond;
      down; deeper; past the last one; after the last one; down from that; up from that; up from there; on out;
      past where; in from there; outboard; up ahead; further than that; lower; lower down; higher; higher up;
      further in; down from it; up from it; nearer the street; closer to the street; nearer the house;
    `,
  },
  {
    sign: 1,
    needsAnchor: true,
    words: spoken`
      past; beyond; after; downstream of; downstream from; on from; out from; from; down from; off; past where;
      on the far side of; on the street side of; further on than; up from; to the street side of;
      the far side of; the other side of; out the other|far side of; on|to the other side of; outside of; further than; along from;
    `,
  },
  {
    sign: -1,
    needsAnchor: true,
    words: spoken`
      short of; before; shy of; upstream of; upstream from; ahead of; this side of; on the house side of;
      in front of; back from; the near side of; on this side of; on the near side of; prior to; inside of;
      in from; to the house side of;
    `,
  },
  {
    sign: -1,
    needsAnchor: false,
    words: spoken`
      back; before that; before it; short of that; short of it; earlier; back from there; back from that;
      shy of that; upstream of that; upstream of it; ago; this side of that; back toward me; sooner;
    `,
  },
];

/** After a number with a foot unit and before a thing that has a beginning: so far inside it. */
export const insideAfter: readonly string[] = spoken`into; inside; into it; into that; into this; in from the start of;`;

/** A bare number may be a place when one of these follows. */
export const afterBarePlace: ReadonlySet<string> = new Set([
  'about',
  'also',
  'too',
  'again',
  'may',
  'might',
  'could',
  'will',
  'would',
  'cut',
  'cuts',
  'fill',
  'fills',
  'block',
  'blocks',
  'take',
  'takes',
  'narrow',
  'narrows',
  'roughly',
  'mostly',
  'almost',
  'nearly',
  'mainly',
  'was',
  'until',
  'till',
  'thru',
  'straight',
  'not',
  'what',
  'if',
  'your',
  'our',
  'these',
  'this',
  'those',
  'her',
  'his',
  'make',
  'call',
  'starts',
  'begins',
  'ends',
  'pulling',
  'turns',
  'drops',
  'after',
  'before',
  'past',
  'another',
  'nothing',
  'clean',
  'clear',
  'water',
  'looking',
  'there',
  "there's",
  'here',
  "here's",
  'i',
  'we',
  'it',
  'that',
  "that's",
  'this',
  'the',
  'a',
  'an',
  'another',
  'some',
  'and',
  'is',
  "'s",
  'now',
  'on',
  'in',
  'with',
  'where',
  'has',
  'got',
  'looks',
  'more',
  'same',
  'then',
  'so',
  'but',
  'again',
  'um',
  'uh',
  'okay',
  'oh',
  'yeah',
  'we',
  'you',
  'she',
  'they',
  'my',
  'no',
  'still',
  'just',
  'right',
  'left',
  'maybe',
  'possible',
  'possibly',
  'definitely',
  'also',
  'big',
  'small',
  'little',
  'first',
  'second',
  'old',
  'good',
  'bad',
  'comes',
  'goes',
  'coming',
  'going',
  'to',
  'through',
  'somebody',
  'someone',
  'something',
  'out',
  'up',
  'down',
  'well',
  'see',
  'even',
  'exactly',
  'thereabouts',
  'ish',
  'give',
  'or',
  'as',
  'for',
  'at',
  'only',
  'all',
  'every',
  'hairline',
  'fine',
  'heavy',
  'light',
  'moderate',
  'minor',
  'slight',
  'severe',
  'open',
  'nice',
  'dead',
  'hello',
  'boom',
  'bang',
  'bingo',
]);

/** After a number: so many more, counted from the last place. */
export const moreAfter: readonly string[] = [
  'more feet',
  'more foot',
  'more feet on',
  'more and',
  'more after',
  'more past',
  'more beyond',
  'more on from',
  'further on and',
  'feet more',
  'additional feet',
];

/** After a number: a little more than that. */
export const changeAfter: readonly string[] = [
  'and change',
  'and some change',
  'and a little change',
  'something',
  'and some',
  'ish',
  'or so',
  'and a bit',
  'and a hair',
  'and a little',
  'or thereabouts',
  'point something',
  'and something',
];

/** Before a number: how often something comes, or which of several it is. */
export const rateBefore: readonly string[] = [
  'every|each|first|last|next|some|another',
  'about every',
  'every couple',
  'the first|last|next',
  'a good',
];

/** Before a number: how long something lasts. */
export const spanBefore: readonly string[] = [
  'every|each|next|plus',
  'the last|next',
  'for about|maybe|roughly|around|nearly|almost|only|just',
];
