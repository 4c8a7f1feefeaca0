/** What is named without a place once a run has come to its end is talk about it, and nothing met at the end. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { endKinds, limitKinds, openingKinds } from './kind-roles.ts';
import { currentRun, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** What holds a camera up is told of in the sentences after; where it came out there is little more to tell. */
const TOLD_SENTENCES = 3;
const REACHED_SENTENCES = 1;

export function isAfterEnd(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): boolean {
  const run = currentRun(reading);
  if (!run?.end || claim.place !== null || claim.relative !== null || assertion.isPointedAt) return false;
  if (endKinds[claim.kind] !== undefined || limitKinds.has(claim.kind)) return false;
  const end = reading.items.findLast(
    (item) => item.run === run.n && !item.isWithdrawn && endKinds[item.kind] !== undefined,
  );
  if (!end) return false;
  const told = openingKinds.has(end.kind) ? REACHED_SENTENCES : TOLD_SENTENCES;
  if (sentence.index - end.sentence <= told) return false;
  // A place said since then: the camera went on, or what is named lies there.
  return !reading.sentences
    .slice(end.sentence + 1, sentence.index + 1)
    .some((other) => phrasesOf(other.phrases, 'distance').length > 0);
}
