/**
 * What a drain serves is sometimes said by somebody who does not know ("maybe the laundry", "the bath, but I can't swear to it"):
 * then the inspector should look. "The laundry, I'd guess" is how many say it who do.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Item, Reading } from './reading.ts';

/** How many sentences after a fitting it may be said what it serves. */
const AFTER = 2;
const guesses =
  /\b(maybe|possibly|perhaps|likely the|(could|might|may)( well)? be|not (sure|certain)|no idea|(can't|couldn't|won't) (swear|say|tell|be sure)|don't know|unknown|used to be)\b/;

/** Flags fittings whose service was said as a guess. */
export function flagGuessedServices(reading: Reading): void {
  for (const item of reading.items)
    if (!item.isWithdrawn && item.fields.serves !== null && item.flags.length === 0 && isGuessed(reading, item))
      item.flags.push({ reason: 'hedged', about: 'serves', detail: 'what it serves was said as a guess' });
}

const isGuessed = (reading: Reading, { sentence, fields }: Item): boolean =>
  reading.sentences
    .slice(Math.max(0, sentence - 1), sentence + AFTER + 1)
    .some(
      ({ phrases, text }) =>
        guesses.test(text) && phrasesOf(phrases, 'service').some(({ service }) => service === fields.serves),
    );
