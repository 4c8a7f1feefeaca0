/** Going over it all once more: nothing in it is new, and what differs is a doubt. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { mentionAgain } from './items.ts';
import { makeItem } from './make-item.ts';
import type { Placing } from './placing.ts';
import { currentRun, type Ending, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

const sumsUp =
  /^(so|okay so|alright so|ok so|well so|altogether|all told|that 's your|that 's the|so that 's|there you have|your list|my list|what you 've got|what we 've got|you 've got|tell them|tell him|tell her)\b/;

/** How much talk, in tokens, may be the close of it. */
const CLOSE_TOKENS = 150;
/** A thing is named at most this many sentences after its place. */
const NAMED_AFTER_SENTENCES = 2;

/** Finds where the talk draws to its close: a last stretch, not too long, in which no run begins. */
export function findEnding(sentences: readonly Sentence[]): Ending {
  const last = sentences.at(-1)?.to ?? 0;
  const lastStart = sentences.findLastIndex((sentence) =>
    phrasesOf(sentence.phrases, 'camera').some((phrase) => /^(zero|next-run|same-access)$/.test(phrase.cue)),
  );
  const close = sentences.findIndex((sentence) => last - sentence.from <= CLOSE_TOKENS);
  return {
    from: Math.max(lastStart + 1, close),
    lastPlace: sentences.findLastIndex((sentence) => sentence.phrases.some((phrase) => phrase.family === 'distance')),
  };
}

/** No place is said any more: what is named now without one was found before. */
export const isClosing = (reading: Reading, sentence: Sentence): boolean =>
  sentence.index >= reading.ending.from && sentence.index > reading.ending.lastPlace + NAMED_AFTER_SENTENCES;

/** At the end of a run, a sentence that lists several known things without pointing at any goes over it all again. */
export function noticeSummary(reading: Reading, sentence: Sentence, claims: readonly Claim[]): void {
  const run = currentRun(reading);
  const isLast = isClosing(reading, sentence);
  if (!run || reading.isSummary) return;
  const isKnown = (claim: Claim): boolean =>
    reading.items.some((item) => !item.isWithdrawn && item.kind === claim.kind);
  const known = claims.filter(isKnown).length;
  if (isLast && known >= 2) reading.isSummary = true;
  // Three things in a row without a place, once the last place was said.
  const isList =
    claims.length >= 3 && known >= 2 && claims.every((claim) => claim.place === null && claim.relative === null);
  if (isList && sentence.index >= reading.ending.from && sentence.index > reading.ending.lastPlace)
    reading.isSummary = true;
  if (reading.isSummary || claims.length < 2 || (run.way !== 'back' && run.end === null && !isLast)) return;
  if (/\b(there 's|here 's|i see|we 've got|look)\b/.test(sentence.text) && !sumsUp.test(sentence.text)) return;
  const places = phrasesOf(sentence.phrases, 'distance');
  const isAllKnown =
    known === claims.length &&
    places.every((place) =>
      reading.items.some(
        (item) =>
          item.at !== null &&
          !item.isWithdrawn &&
          (Math.abs(item.at - place.distance.feet) <= 1.1 ||
            (item.fields.to !== null && Math.abs(item.fields.to - place.distance.feet) <= 1.1)),
      ),
    );
  if (sumsUp.test(sentence.text) ? known >= 2 : isAllKnown && claims.length >= 3) reading.isSummary = true;
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
