/** Questions about a thing and their answers. */
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { makeItem } from './make-item.ts';
import type { Placing } from './place-claim.ts';
import { own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

export const asksDoubtfully = (reading: Reading, sentence: Sentence, claim: Claim): boolean => {
  const { tokens } = reading.phrases;
  if (sentence.isQuestion || tokens[sentence.to - 1]?.breakAfter !== 'question') return false;
  return !tokens
    .slice((claim.things[0]?.to ?? claim.to) - 1, sentence.to - 1)
    .some((token) => token.breakAfter === 'comma');
};

export const answersNo = /^(no|nope|nah|naw|not|negative)\b/;
export const answersYes =
  /^(yes|yeah|yep|yup|sure is|it is|okay yeah|oh yeah|that 's right|correct|uhhuh|sure enough)\b/;

export function answerQuestion(reading: Reading, sentence: Sentence): void {
  const asked = reading.asked.filter((question) => sentence.index - question.sentence <= 2);
  reading.asked = asked;
  if (asked.length === 0) return;
  if (answersYes.test(sentence.text)) {
    for (const question of asked) if (question.item) question.item.isWithdrawn = false;
    reading.asked = [];
  } else if (answersNo.test(sentence.text)) reading.asked = [];
}

export function ask(reading: Reading, sentence: Sentence, claim: Claim, placing: Placing, assertion: Assertion): null {
  const item = makeItem(reading, sentence, claim, [claim], assertion, placing);
  item.isWithdrawn = true;
  item.evidence.notes.push('asked');
  reading.asked.push({ kind: claim.kind, item, sentence: sentence.index });
  own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'question' });
  return null;
}
