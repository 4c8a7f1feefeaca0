/**
 * Words that take something back. A strong cue replaces the value and keeps the old one on record; a weak cue
 * needs a second value of the same sort close by, and then keeps both. Cue precision was counted on half a million words
 * of mixed English: "scratch that", "make that", "no wait", "correction" are safe; "I mean", "sorry", "actually" are not.
 */
import { spoken } from '../../../shared/vocabulary/spoken.ts';
export interface CorrectionCue {
  readonly act: 'replace' | 'withdraw';
  readonly strength: 'strong' | 'weak';
}

const strong: CorrectionCue = { act: 'replace', strength: 'strong' };
const weak: CorrectionCue = { act: 'replace', strength: 'weak' };
const withdraw: CorrectionCue = { act: 'withdraw', strength: 'strong' };

export const correctionCues: readonly { readonly cue: CorrectionCue; readonly words: readonly string[] }[] = [
  {
    cue: strong,
    words: spoken`
      make that; make it; correction; no wait; wait no; no , wait; wait , no; no sorry; no , sorry; sorry , no;
      or rather; i take that back; let me correct that; correct that; amend that; strike the; i misread;
      i misspoke; i misspeak; let me fix that; change that to; change it to; that|those|number|footage|distance|reading|one|really should be; should say; should read;
      amendment; one last amendment; i amend; to amend; should have been; i meant; i said * but; let 's say;
      let 's call it; call it; i 'll say; that 's not; closer to; no , less; no , more; no hang on;
      no , hang on; no hold on; no , hold on; check that; revise that; fix that; read that wrong; misread that;
      not * but; it really; excuse me; pardon me; i should say; my mistake; wrong number; i stand corrected;
      let me restate; let me rephrase; beg pardon; beg your pardon; oops; whoops; my bad; my error; should 've been;
      i was wrong; i was mistaken; i got|had|read|said|called|gave it|that|you wrong; i|i've read|misread * wrong|bad|badly;
      gave you|him|her the wrong; got the * wrong; wrong footage; wrong reading; correct|fix myself; i'm sorry; i'll give it; i'd give it; i lied; on second thought|look|glance; on a|the? second|closer look|inspection; looking closer|again; looking at it|that again|closer; now|when i|we look at it|that again|closer|better; better say; misread it; misread the;
      let me correct; permit me to correct; allow me to correct; i need to correct; i have to correct; better make it;
    `,
  },
  {
    cue: weak,
    words: spoken`
      sorry; i mean; actually; well; no; rather; wait; hang on; hold on; more like; uh no; or; say; nah; nope; naw;
    `,
  },
  {
    cue: withdraw,
    words: spoken`
      scratch that; scratch it; scratch the; scratch both; scratch those; forget that; forget that one;
      forget it; forget the; forget what i said; strike that; never mind that; nevermind that; never mind;
      disregard; disregard that; delete that; take it back out; take that out; take that back out; take it out;
      i retract; withdraw that; was nothing; ignore that; ignore it; cross that off; cross that out;
      drop that one; take that one off; take that off; throw that out; leave that out; leave it out; erase that;
      void that; was a false alarm; false alarm; take it off the list; take that off the list; strike it;
      leave|rub out the; don't count that; don't count it; i take it back; scrap that; cancel that;
      delete the|those|them|my; remove the|those|them|my; ignore the|those; disregard the|those; erase the|those; cross off|out the|those;
      strike|delete|drop|remove|withdraw|scratch|omit|disregard item|entry|finding;
      take the * off|out; take those * off|out; leave the * off|out; strike those; forget those; forget about;
    `,
  },
];

/** Stretches that hold one of these words and take nothing back. */
export const notCorrections: readonly string[] = spoken`
  nothing too|very|real|really|major|serious|heavy|bad|terrible|severe|big|crazy|dramatic|more|but|like|compared|much;
  it|that|this 's|is|was nothing too|very|real|really|major|serious|heavy|bad|terrible|severe|big|crazy|dramatic|more|but|like|compared|much;
  nothing to worry|write|lose; it|that|this 's|is|was nothing to worry|write|lose;
`;
