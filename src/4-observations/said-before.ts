/** What is told of a thing in the sentence before the one that names it: what a drain serves, where something sits. */
import { type Phrase, phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import { setField } from './assign-attributes.ts';
import { kindTakes } from './claim.ts';
import { type Item, own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { idleServices } from './serves-words.ts';

/** Points at something before it is named: "look at the bottom", "something's in here on the left", "see that at the top?". */
const points =
  /^((and|so|okay|now|oh|then|well|alright|hey|whoa) )*(look|looking|see|do you see|you see|can you see|what 's (that|this)|there 's (something|that)|here 's something|something|somebody|someone|i 'm looking at|i see (something|a line)|over)\b/;
/** The name comes: "it's a spoon", "there's a hole", "Wye." */
const names =
  /^((and|so|yeah|yep|oh|okay|well|no|it might be|i think|looks like) )*(it|that|this|there|those|they|these) ('s|is|are|'re|was|might|may|could|looks)\b/;
/** The name comes at the end of what is thought of it: "nobody is running anything, so that's ground water". */
const namesThen = /\b(so|then|and) (that|it|this|those) ('s|is|are|must be|has to be)( (a|an|the|some|just|your))*$/;
/** A sentence of so few tokens holds a place and a side at most. */
const POINTING_TOKENS = 8;

/** A sentence of so few tokens tells nothing new where no word of it is known. */
const EMPTY_TOKENS = 5;

/** Gives a side told in the sentence before to the thing named in this one. */
export function takeSideSaidBefore(reading: Reading, sentence: Sentence, touched: readonly Item[]): void {
  const last = reading.sentences[sentence.index - 1];
  // "What's that on the ceiling? It's a fitting. A tee.": a sentence of which nothing is known stands between.
  const isEmpty = last !== undefined && last.phrases.length === 0 && last.to - last.from <= EMPTY_TOKENS;
  const before = isEmpty ? reading.sentences[sentence.index - 2] : last;
  const item = touched[0];
  if (!before || !item || touched.length > 1 || item.sentence !== sentence.index || reading.isSummary) return;
  const { position, clock } = item.fields;
  if (!kindTakes(item.kind, 'position') || position !== null || clock !== null) return;
  const isOther = (phrase: Phrase): boolean =>
    phrase.family === 'material' ||
    (phrase.family === 'thing' && phrase.source !== 'weak' && phrase.kind !== item.kind);
  if (before.phrases.some(isOther)) return;
  const sides = before.phrases.filter((phrase) => phrase.family === 'position' || phrase.family === 'clock');
  const side = sides[0];
  if (!side || sides.length > 1) return;
  const owner = reading.owners[side.from];
  if (owner !== null && owner !== undefined && owner.sort === 'item') return;
  const { tokens } = reading.phrases;
  const isNamed =
    names.test(sentence.text) ||
    sentence.to - sentence.from <= ALONE_TOKENS ||
    namesThen.test(textOf(tokens, sentence.from, item.from));
  // "Eleven o'clock. Crack. Twenty two.": nothing but the side stands there.
  const isSideAlone =
    /^((and|okay|so|now|over|up|down|on|at|in|along|the|from) )*$/.test(
      `${textOf(tokens, before.from, side.from)} `.trimStart(),
    ) && side.to === before.to;
  const isBare =
    before.to - before.from <= POINTING_TOKENS &&
    (isSideAlone || before.phrases.some(({ family }) => family === 'distance'));
  if (!isNamed || !(points.test(before.text) || (isBare && !before.isQuestion))) return;
  setField(item.fields, side, item.kind);
  item.evidence.notes.push('position said later');
}

/** A sentence of so few tokens that names a fixture says nothing else. */
const ALONE_TOKENS = 3;

const presents =
  /^((and|so|okay|now|oh|then|well|alright) )*((there|here|that|this) ('s|is)|((some|any)body|someone|they|he|she|you|we) ('ve|'s|have|has)?)\b/;

/** "Somebody tied a downspout in. It comes in on the left at eight." */
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
