/**
 * Numbers said anew without a word of correction: "At three. Four. It's four feet.", "Twelve, really.", "Put down twenty for
 * that.", "I said twenty, that's twenty two." The one said last stands, and most of them are left for the inspector to see.
 */
import { numbersWithin } from '../3-phrases/number/numbers-within.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { confusable } from './check-track.ts';
import { letterNumbers } from './lettered-numbers.ts';
import type { Item, Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { endTold } from './tell-ends.ts';

/** A number is said anew at most so many sentences after the first. */
const SENTENCES = 3;
/** Nobody mistakes the counter by more, in feet, unless two numbers sound alike. */
const MISREAD_FEET = 3;
const SHORT_TOKENS = 9;
const DISOWN_TOKENS = 12;
const LONG_TOKENS = 18;

const lead = "(oh |okay |well |um |uh |hmm |no |yeah |yep |and |so |now |actually |let 's |i 'd |i 'll |wait |the )*";
const unit =
  '( feet| foot| ft)?( even| there| here| now( that i \\S+ (it|that))?| then| for that( one)?| in fact| i think| really| actually| sorry)*';
const saysAnew = new RegExp(
  `^${lead}(it 's|that 's|it is|that is|it was|i make it|i mean|i meant|call (it|that)|make (it|that)|put( it| that)?( down)?( as| at)?|(mark|log|write|note) (it|that)( down)?( as| at)?|say|give it|looks( more)? like|better (say|make it)|(move|change|shift|bump|push|fix) (it|that|this|that one) to|(it|that|counter|the counter|screen|the screen|display|number) (says|reads|shows)|(i 'm|we 're|i am) (really |actually )?(at|on))( at| about| more like)? N${unit}$`,
);
const saysAfter =
  /^(\S+ )?N( feet| foot)? (really|actually|in truth|in fact|rather|if i 'm (being )?(honest|fussy|exact|precise|picky)|to be (honest|exact|precise|fair)|i mean|i meant|i 'd say|i should say|on second (look|thought)|not \S+( \S+)?)$/;
const slipped =
  /\b(counter|number|wheel|reel|display|cable|encoder|meter)( 's| has| had| was| is| been| just| only| still)* (moved|moving|slipped|slipping|ticked|jumped|changed|lagged|lagging|lags|settled|rolled|rolling|turning|slow|off|wrong|behind|caught up|catching up|got slack|slack)\b.*N$/;
const recalls =
  /\b(i|we|you) (said|had|called|gave|put|told|wrote|read) .*\b(that 's|it 's|is|should be|make it|i meant|meant|but|actually) (really |actually )?N$/;
/** "It isn't twenty six, it's twenty five." */
const disownsFor =
  /\b(not|isn't|wasn't|ain't|never)( at)? N( feet| foot)?( but| no)?( (it|that|this|i) ('s|is|was|'m|meant))?( really| actually| more like| at)* N( feet| foot)?$/;
const denies = /\b(not|isn't|wasn't|never)\b/;
const disowns = /\b(not|isn't|wasn't|never) (at )?N( feet| foot)?($| (i|we|that|it|but) )/;
/** "Hang on, I was still rolling.", "Let me back up.": what follows is read anew. */
const hesitates =
  /^(oh |no |uh |um |well |okay )*(hang on|hold on|wait|let me|lemme|hmm|hm|whoa|i lied|on second (thought|look)|better|let 's)\b/;

/** How plainly a sentence that names nothing gives the last place anew: 'strong', 'weak', or null. */
export function restatesPlace(reading: Reading, sentence: Sentence): 'strong' | 'weak' | null {
  const places = phrasesOf(sentence.phrases, 'distance');
  const place = places.at(-1);
  const last = reading.lastValue;
  if (!place || !last || last.item.isWithdrawn || sentence.index - last.sentence > SENTENCES) return null;
  if (sentence.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'material')) return null;
  if (sentence.isQuestion || place.distance.toFeet !== null || sentence.to - sentence.from > LONG_TOKENS) return null;
  if (/next|both/.test(reading.plan.lone.get(sentence.index) ?? '')) return null;
  if (endTold(reading.sentences, sentence) !== null) return null;
  const was = last.item.fields.to ?? last.item.at;
  const { feet } = place.distance;
  if (was === null || was === feet || last.item.at === feet) return null;
  const text = withNumber(reading, sentence, place);
  if (recalls.test(text) && namesNumber(reading, sentence, last.item)) return 'strong';
  if (disownsFor.test(withNumbers(reading, sentence)) && namesNumber(reading, sentence, last.item)) return 'strong';
  if (sentence.to - sentence.from > SHORT_TOKENS) return null;
  if (/ not \S+/.test(text) && saysAfter.test(text) && namesNumber(reading, sentence, last.item)) return 'strong';
  const isNear =
    Math.abs(feet - was) <= MISREAD_FEET ||
    confusable(was, feet, feet) === feet ||
    (last.item.at !== null && Math.abs(feet - last.item.at) <= MISREAD_FEET);
  if (!isNear) return null;
  const isSaid = saysAnew.test(text) || saysAfter.test(text) || slipped.test(text);
  const before = reading.sentences[sentence.index - 1];
  const isAfterHesitation =
    text === 'N' &&
    before !== undefined &&
    (/ (uh|um|er|hmm)$/.test(before.text) ||
      (hesitates.test(before.text) &&
        !before.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'distance')));
  return isSaid || isAfterHesitation || isSaidTwice(reading, sentence, feet) ? 'weak' : null;
}

/** "That's not twelve.": what was given last is taken back, and another is to come. */
export function disownsPlace(reading: Reading, sentence: Sentence): boolean {
  const last = reading.lastValue;
  if (!last || sentence.index - last.sentence > SENTENCES || sentence.to - sentence.from > DISOWN_TOKENS) return false;
  if (!denies.test(sentence.text) || sentence.phrases.some((phrase) => phrase.family === 'thing')) return false;
  const number = numbersWithin(reading.phrases.numbers, sentence.from, sentence.to)[0];
  if (!number || !namesNumber(reading, sentence, last.item)) return false;
  return disowns.test(letterNumbers(reading.phrases.tokens, sentence, [number]));
}

/** The sentence with N for its last place. */
function withNumber(
  { phrases: { tokens, numbers } }: Reading,
  sentence: Sentence,
  place: { from: number; to: number },
): string {
  const { from, to } = numbersWithin(numbers, place.from, place.to)[0] ?? place;
  return letterNumbers(tokens, sentence, [{ from: Math.max(sentence.from, from), to }]);
}

/** The sentence with N for each of its numbers. */
const withNumbers = ({ phrases: { tokens, numbers } }: Reading, sentence: Sentence): string =>
  letterNumbers(tokens, sentence, numbersWithin(numbers, sentence.from, sentence.to));

/** Whether a sentence holds the number an item was placed by. */
const namesNumber = (reading: Reading, sentence: Sentence, item: Item): boolean =>
  numbersWithin(reading.phrases.numbers, sentence.from, sentence.to).some(
    ({ value }) => value === item.at || value === item.fields.to,
  );

/** "Thirty one? Thirty one.": the same number again in the sentence beside it, and nothing else in either. */
function isSaidTwice(reading: Reading, sentence: Sentence, feet: number): boolean {
  const isOnly = (other: Sentence | undefined): boolean =>
    other !== undefined &&
    other.to - other.from <= SHORT_TOKENS / 2 + 1 &&
    phrasesOf(other.phrases, 'distance').some((place) => place.distance.feet === feet) &&
    !other.phrases.some((phrase) => phrase.family === 'thing');
  return (
    isOnly(sentence) && (isOnly(reading.sentences[sentence.index - 1]) || isOnly(reading.sentences[sentence.index + 1]))
  );
}
