/** "Somebody tied a downspout in. It comes in on the left at eight.": what a drain serves, told in the sentence before the drain. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import { type Item, own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { idleServices } from './serves-words.ts';

/** A sentence of so few tokens that names a fixture says nothing else. */
const ALONE_TOKENS = 3;

const presents =
  /^((and|so|okay|now|oh|then|well|alright) )*((there|here|that|this) ('s|is)|((some|any)body|someone|they|he|she|you|we) ('ve|'s|have|has)?)\b/;

export function takeServiceSaidBefore(reading: Reading, sentence: Sentence, touched: readonly Item[]): void {
  const before = reading.sentences[sentence.index - 1];
  const item = touched.find(
    (made) => made.sentence === sentence.index && kindTakes(made.kind, 'serves') && made.fields.serves === null,
  );
  if (!before || !item || before.isQuestion || reading.isSummary) return;
  const isAboutOther = before.phrases.some((phrase) => phrase.family === 'thing' && phrase.source !== 'weak');
  const named = phrasesOf(before.phrases, 'service');
  const idle = idleServices(before, reading.phrases.tokens);
  const service = named[0];
  if (!service || named.length > 1 || isAboutOther || idle.has(service)) return;
  // What a sentence said of the thing before it is not of this one.
  const owner = reading.owners[service.from];
  if (owner !== null && owner !== undefined && owner.sort === 'item') return;
  const isAlone = before.to - before.from <= ALONE_TOKENS;
  if (!isAlone && !presents.test(before.text)) return;
  item.fields.serves = service.service;
  item.evidence.notes.push('serves said later');
  own(reading, service.from, service.to, { sort: 'item', item, isAgain: true });
}
