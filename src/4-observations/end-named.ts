/** A stretch ended by its own name: "Into a sag at twenty two. … Out of the sag at thirty.", "Scale ends, fifteen." */
import { textOf } from '../3-phrases/token/token.ts';
import type { Assertion } from './assert-claim.ts';
import { type Claim, kindTakes } from './claim.ts';
import { mentionAgain } from './items.ts';
import type { Placing } from './placing.ts';
import { currentRun, type Item, liveItems, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

const lead =
  /\b(out of|(end|last|bottom|edge|side|bit|part|clear) of|(done|through|finished) with|(we 're|i 'm|we are|get|got|come) (through|past|beyond|clear of)|leaving|past|that 's it for)( all)? (the|that|this|our)$/;
const tail =
  /^((just|finally|all|now|then|here|that|it) )*(ends?|ended|stops?|stopped|quits?|finish(es|ed)?|(is|'s|are) (over|gone|done|behind)|clears?( up)?|lets? up|gives out|peters out|thins out|tapers( off)?|fades( out)?|done|over|gone)\b/;

/** The known stretch that a claim only says the end of, now ended; or null. */
export function endNamed(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  assertion: Assertion,
  placing: Placing,
): Item | null {
  const run = currentRun(reading);
  if (!run || run.way === 'back' || reading.isSummary || sentence.isQuestion || assertion.isDenied) return null;
  if (!kindTakes(claim.kind, 'to') || claim.kind === 'pipe' || placing.to !== null) return null;
  const { tokens } = reading.phrases;
  const says =
    lead.test(textOf(tokens, Math.max(sentence.from, claim.from - 5), claim.from)) ||
    tail.test(textOf(tokens, claim.to, Math.min(sentence.to, claim.to + 5)));
  if (!says) return null;
  const feet = claim.place?.distance.feet ?? claim.fields.to ?? (placing.basis === 'nearby' ? placing.at : null);
  const open = liveItems(reading, run.n).findLast((item) => item.kind === claim.kind && item.at !== null);
  if (feet == null || !open || open.fields.to !== null || open.at === null || open.at >= feet) return null;
  open.fields.to = feet;
  reading.lastValue = { item: open, field: 'to', sentence: sentence.index };
  mentionAgain(reading, open, sentence.from, sentence.to);
  return open;
}
