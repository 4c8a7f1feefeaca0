/** Questions about a thing and their answers. */

import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { endRun, makeItem } from './make-item.ts';
import type { Placing } from './placing.ts';
import { currentRun, isPlaceGuessed, own, PLACE_AFTER, PLACE_GUESSED, type Reading } from './reading.ts';
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
  /^(oh |well |okay |and |why )*(yes|yeah|yep|yup|aye|sure is|sure are|sure do|sure enough|it is|it does|they are|there is|there are|we do|we have|i do|okay yeah|that 's right|that 's it|that 's (the |your )?\w+ all right|correct|affirmative|uhhuh|you bet|plenty|lots|loads|a few|a couple|some|several|one|there (it|she|he|they|we) (is|are|goes|go|sits|be)|here (it|she|we) (is|are|comes)|right there|right here|dead ahead|(there|here) ('s|is|are) (some|one|a few|a couple|plenty|lots|a bit)|(i|we) (see|have|got|'ve got|do see) (some|one|a few|a couple|plenty))\b/;

/** A question of so few tokens only names what is looked for. */
const NAMING_TOKENS = 4;

/** "And the main? Yep, there it is, fifty one on the counter.", "Roots? Twenty two feet." */
export function answerQuestion(reading: Reading, sentence: Sentence): void {
  const asked = reading.asked.filter((question) => sentence.index - question.sentence <= 2);
  reading.asked = asked;
  if (asked.length === 0) return;
  if (answersNo.test(sentence.text)) {
    reading.asked = [];
    return;
  }
  const place = phrasesOf(sentence.phrases, 'distance').at(-1)?.distance ?? null;
  const names = sentence.phrases.some(({ family }) => family === 'thing' || family === 'material');
  const isNext = asked.every((question) => {
    const whole = reading.sentences[question.sentence];
    return question.sentence === sentence.index - 1 && whole !== undefined && whole.to - whole.from <= NAMING_TOKENS;
  });
  const isPlace = place !== null && !names && isNext && sentence.to - sentence.from <= 2 * NAMING_TOKENS;
  if (!answersYes.test(sentence.text) && !isPlace) return;
  const found = asked.flatMap(({ item }) => (item ? [item] : []));
  for (const item of found) {
    item.isWithdrawn = false;
    item.isWithheld = false;
    if (place && !names) {
      item.at = place.feet;
      item.fields.to ??= place.toFeet;
      item.basis = 'nearby';
      item.evidence.placeRule = PLACE_AFTER;
      item.evidence.notes = item.evidence.notes.filter((note) => note !== PLACE_GUESSED);
    } else if (isPlaceGuessed(item) && reading.pending === null) {
      item.at = null;
      item.basis = null;
    }
    endRun(reading, item);
  }
  if (found.length > 0) {
    reading.focus = found;
    reading.focusSentence = sentence.index;
    reading.lastValue = { item: found.at(-1)!, field: 'at', sentence: sentence.index };
    own(reading, sentence.from, sentence.to, { sort: 'item', item: found.at(-1)!, isAgain: true });
  }
  reading.asked = [];
}

export function ask(reading: Reading, sentence: Sentence, claim: Claim, placing: Placing, assertion: Assertion): null {
  const run = currentRun(reading);
  const end = run?.end ?? null;
  const item = makeItem(reading, sentence, claim, [claim], assertion, placing);
  // Asked for, it ends no run yet.
  if (run) run.end = end;
  item.isWithdrawn = true;
  item.isWithheld = true;
  item.evidence.notes.push('asked');
  reading.asked.push({ kind: claim.kind, item, sentence: sentence.index });
  own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'question' });
  return null;
}
