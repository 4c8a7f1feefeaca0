/** Which listed thing an order to take something out means, where it says so by number or by name; and what is no such order. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { currentRun, type Item, liveItems, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** So far after its number, in tokens, a dictated item names its thing. */
const LISTED_TOKENS = 8;
/** Words that begin alike for so many letters are forms of one ("bubble", "bubbled"). */
const STEM_LETTERS = 5;

const orders = /^(strike|scratch|scrap|cancel|delete|remove|erase|drop|forget|withdraw) the$/;

/** "Strike the bubble.": the thing that was listed with that word, where nothing is put in its place. */
export function struckByName(
  { phrases: { tokens }, runs, items }: Reading,
  sentence: Sentence,
): { readonly cue: PhraseOf<'correction'>; readonly item: Item } | null {
  const cue = phrasesOf(sentence.phrases, 'correction').find(({ rule }) => orders.test(rule));
  const word = cue && tokens[cue.to];
  if (!word || word.text.length < STEM_LETTERS || runs.length === 0) return null;
  if (/\b(write|put|make|call|say|log|mark|read|should|it 's a)\b/.test(sentence.text)) return null;
  const stem = word.text.slice(0, STEM_LETTERS);
  const says = (item: Item): boolean =>
    [item, ...item.again].some(({ from, to }) =>
      tokens.slice(from, Math.min(to, sentence.from)).some(({ text }) => text.startsWith(stem)),
    );
  const item = items.findLast((other) => !other.isWithdrawn && other.kind !== 'pipe' && says(other));
  return item ? { cue, item } : null;
}

/** "Strike item two": the one that was dictated under that number; null where none was, undefined where no number is said. */
export function listedItem(reading: Reading, cue: PhraseOf<'correction'>): Item | null | undefined {
  const { tokens, numbers } = reading.phrases;
  const number = numbers.find((other) => other.from === cue.to);
  const word = tokens[cue.to - 1]?.text ?? '';
  if (!number || !/^(item|entry|finding)$/.test(word)) return undefined;
  const dictated = numbers.find(
    (other) => other.value === number.value && other.from < cue.from && tokens[other.from - 1]?.text === word,
  );
  const run = currentRun(reading);
  const item = dictated
    ? liveItems(reading, run?.n ?? 0).find(
        (other) => other.from <= dictated.to + LISTED_TOKENS && other.to > dictated.to,
      )
    : undefined;
  return item ?? null;
}

/** "I retract my remark about soil": of something else than what was listed last. */
export const isAboutOther = ({ text }: Sentence): boolean =>
  /\b(what (i|we) said|my (remark|comment|word|note)s?|the bit|that bit|the part|that part) about (?!that\b|it\b|this\b|those\b)/.test(
    text,
  );

/** "Okay, I take it out": the camera, and nothing that was listed. */
export const isOfCamera = (sentence: Sentence, cue: PhraseOf<'correction'>): boolean =>
  / out$/.test(cue.rule) &&
  phrasesOf(sentence.phrases, 'camera').some(
    (phrase) => phrase.cue === 'pull-back' && phrase.from < cue.to && phrase.to > cue.from,
  );
