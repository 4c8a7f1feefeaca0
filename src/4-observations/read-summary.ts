/** Going over it all once more: nothing in it is new, and what differs is a doubt. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { mentionAgain } from './items.ts';
import { makeItem } from './make-item.ts';
import type { Placing } from './place-claim.ts';
import { currentRun, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

const sumsUp =
  /^(so|okay so|alright so|ok so|well so|altogether|all told|that 's your|that 's the|so that 's|there you have|your list|my list|what you 've got|what we 've got|you 've got|tell them|tell him|tell her)\b/;

/** At the end of a run, a sentence that lists several known things without pointing at any goes over it all again. */
export function noticeSummary(reading: Reading, sentence: Sentence, claims: readonly Claim[]): void {
  const run = currentRun(reading);
  if (!run || reading.isSummary || (run.way !== 'back' && run.end === null) || claims.length < 2) return;
  if (/\b(there 's|here 's|i see|we 've got|look)\b/.test(sentence.text) && !sumsUp.test(sentence.text)) return;
  const isKnown = (claim: Claim): boolean =>
    reading.items.some((item) => !item.isWithdrawn && item.kind === claim.kind);
  const places = phrasesOf(sentence.phrases, 'distance');
  const isAllKnown =
    claims.every(isKnown) &&
    places.every((place) =>
      reading.items.some(
        (item) =>
          item.at !== null &&
          !item.isWithdrawn &&
          (Math.abs(item.at - place.distance.feet) <= 1.1 ||
            (item.fields.to !== null && Math.abs(item.fields.to - place.distance.feet) <= 1.1)),
      ),
    );
  if (sumsUp.test(sentence.text) ? claims.filter(isKnown).length >= 2 : isAllKnown && claims.length >= 3)
    reading.isSummary = true;
}

/** A summary that names a thing nobody found is a doubt, never a silent finding. */
export function summaryDiffers(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  assertion: Assertion,
  placing: Placing,
): Item | null {
  const kinds = reading.items.filter((item) => !item.isWithdrawn && item.kind === claim.kind);
  if (kinds.length > 0) {
    const item = kinds.at(-1)!;
    mentionAgain(reading, item, sentence.from, sentence.to);
    return item;
  }
  const item = makeItem(reading, sentence, claim, [claim], assertion, placing);
  item.flags.push({ reason: 'maybe-repeat', about: 'kind', detail: 'named only in the summary' });
  return item;
}
