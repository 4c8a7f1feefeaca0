/**
 * Goes back to a place given earlier, however long ago: "I said twelve for the kitchen and I should have said thirteen." The old
 * number tells which thing is meant and which end of it; what is named beside it tells when several lie there. The new number may
 * come some sentences later ("I said fifteen, but the cable had slack in it. Seventeen is the true number.").
 */
import { numbersWithin } from '../3-phrases/number/numbers-within.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { confusable } from './check-track.ts';
import { kindTakes } from './claim.ts';
import { SAME_FEET } from './items.ts';
import { letterNumbers } from './lettered-numbers.ts';
import { placeOffers } from './offer-places.ts';
import { currentRun, type Item, ownFor, type Reading } from './reading.ts';
import {
  amendsNamed,
  disowning,
  endSpokenOf,
  givesNew,
  guessesNew,
  keepsOld,
  keepsRecalled,
  recallsNumber,
} from './recalled-number.ts';
import type { Sentence } from './sentence.ts';
import { tellingWords } from './shared-words.ts';

/** The right number comes at most so many sentences after the wrong one is recalled. */
const LATER_SENTENCES = 3;
/** So many sentences before the number the thing may have been named. */
const NAMED_BEFORE = 2;
/** Nobody mistakes the counter by more, in feet, unless two numbers sound alike or it is said in plain words. */
const MISREAD_FEET = 6;
const MISREAD_PLAIN_FEET = 12;
const LONG_TOKENS = 32;

interface Old {
  readonly item: Item;
  readonly field: 'at' | 'to';
  readonly value: number;
}
interface Recall {
  readonly olds: readonly Old[];
  readonly feet: number;
  /** The last sentence it takes. */
  readonly until: number;
  readonly isSure: boolean;
}

/** Puts the new number in the place of the old one where a sentence goes back to it; returns whether it did. */
export function recallPlace(reading: Reading, sentence: Sentence): boolean {
  const { recalled } = reading;
  if (recalled && sentence.index <= recalled.until) {
    if (!recalled.item.isWithdrawn) ownFor(reading, sentence, recalled.item);
    return !recalled.item.isWithdrawn;
  }
  const kept = keptPlace(reading, sentence);
  if (kept) {
    reading.lastValue = null;
    ownFor(reading, sentence, kept);
    return true;
  }
  const recall =
    findRecall(reading, sentence) ?? announcedRecall(reading, sentence) ?? amendedRecall(reading, sentence);
  if (!recall) return false;
  for (const { item, field, value } of recall.olds) {
    item.corrected.push({ field, was: value, from: sentence.from, to: sentence.to });
    if (field === 'to') item.fields.to = recall.feet;
    else {
      if (item.fields.to !== null && item.fields.to <= recall.feet) item.fields.to = null;
      item.at = recall.feet;
      item.evidence.placeRule = 'place corrected later';
      item.flags = item.flags.filter((flag) => flag.about !== 'at');
    }
    if (!recall.isSure)
      item.flags.push({
        reason: 'corrected',
        about: field,
        detail: `${value} may have been meant to be ${recall.feet}`,
        offers: placeOffers(recall.feet, value),
      });
  }
  const { item, field } = recall.olds[0]!;
  reading.recalled = { item, until: recall.until };
  reading.lastValue = { item, field, sentence: sentence.index };
  reading.focus = recall.olds.map((old) => old.item);
  reading.focusSentence = recall.until;
  ownFor(reading, sentence, item);
  return true;
}

/** "You know those little hairs. I said nineteen. Seventeen.": what is named belongs to the number recalled after it. */
function announcedRecall(reading: Reading, sentence: Sentence): Recall | null {
  const next = reading.sentences[sentence.index + 1];
  const things = phrasesOf(sentence.phrases, 'thing');
  if (!next || things.length === 0 || phrasesOf(sentence.phrases, 'distance').length > 0) return null;
  if (!/\b(the|that|those|these|my|your|our|them)\b/.test(sentence.text)) return null;
  const recall = findRecall(reading, next);
  return recall?.olds.every(({ item }) => things.some(({ kind }) => kind === item.kind)) ? recall : null;
}

/** "Let me fix the crack. Twenty four is right.", "she's correcting me, that belly went to thirty two." */
function amendedRecall(reading: Reading, sentence: Sentence): Recall | null {
  if (sentence.isQuestion || !amendsNamed.test(sentence.text)) return null;
  const things = phrasesOf(sentence.phrases, 'thing');
  const kinds = new Set(things.map(({ kind }) => kind));
  const known = reading.items.filter(
    (item) => kinds.has(item.kind) && !item.isWithdrawn && item.at !== null && item.sentence < sentence.index,
  );
  const item = known.at(-1);
  if (kinds.size !== 1 || item?.at == null) return null;
  const said = placeNumbers(reading, sentence).length > 0 ? sentence : reading.sentences[sentence.index + 1];
  if (!said || (said !== sentence && phrasesOf(said.phrases, 'thing').length > 0)) return null;
  const [number, ...others] = placeNumbers(reading, said);
  if (!number || others.length > 0 || known.some(({ at, fields }) => at === number.value || fields.to === number.value))
    return null;
  const { to } = item.fields;
  const spoken = to === null ? 'at' : endSpokenOf(said === sentence ? said.text : `${sentence.text} ${said.text}`);
  const isEnd = spoken === 'to' || (spoken === null && to !== null && number.value - item.at > to - number.value);
  const value = isEnd ? to! : item.at;
  if (!isNear(value, number.value, MISREAD_FEET)) return null;
  const olds: Old[] = [{ item, field: isEnd ? 'to' : 'at', value }];
  return { olds, feet: number.value, until: said.index, isSure: known.length === 1 && spoken !== null };
}

function findRecall(reading: Reading, sentence: Sentence): Recall | null {
  if (sentence.to - sentence.from > LONG_TOKENS || reading.items.length === 0) return null;
  const numbers = placeNumbers(reading, sentence);
  for (const number of numbers) {
    const olds = oldsAt(reading, sentence, number.value);
    if (olds.length === 0) continue;
    const text = masked(reading, sentence, numbers, number.value);
    const gives = recallsNumber(text);
    if (gives === null || (isInStretch(sentence, number) && !setsAgainst.test(text))) continue;
    if (gives === 'later') {
      const later = newNumberAfter(reading, sentence, olds);
      if (later) return later;
      continue;
    }
    const by = numbers.findLast((other) => Math.abs(other.value - number.value) > SAME_FEET);
    if (
      !by ||
      crossesAnother(sentence, number, by, olds) ||
      !isNear(number.value, by.value, gives === 'plain' ? MISREAD_PLAIN_FEET : MISREAD_FEET)
    )
      continue;
    return { olds, feet: by.value, until: sentence.index, isSure: isOne(olds) && !guessesNew.test(sentence.text) };
  }
  return null;
}

/** "I said it ended at O, it's N": no stretch from the one to the other. */
const setsAgainst = /\bO\b.*\b(it 's|that 's|should|meant|make|wrong|really|actually)\b.*\bN\b/;
/** "From eight to twelve": both ends are said anew, and neither for the other. */
const isInStretch = (sentence: Sentence, { from, to }: Said): boolean =>
  phrasesOf(sentence.phrases, 'distance').some(
    (place) => place.distance.toFeet !== null && place.from <= from && place.to >= to,
  );

/** "I said fourteen and it reads fifteen from this side, I'll keep fourteen." */
function keptPlace(reading: Reading, sentence: Sentence): Item | null {
  const numbers = placeNumbers(reading, sentence);
  for (const { value } of numbers) {
    const old = oldsAt(reading, sentence, value)[0];
    if (old && keepsRecalled(masked(reading, sentence, numbers, value))) return old.item;
  }
  return null;
}

function newNumberAfter(reading: Reading, sentence: Sentence, olds: readonly Old[]): Recall | null {
  const old = olds[0]!.value;
  let isDisowned = disowning.test(sentence.text);
  for (const next of reading.sentences.slice(sentence.index + 1, sentence.index + 1 + LATER_SENTENCES)) {
    const numbers = placeNumbers(reading, next);
    const isOfAnother = next.phrases.some(
      (phrase) => phrase.family === 'thing' && !olds.some(({ item }) => item.kind === phrase.kind),
    );
    if (
      isOfAnother ||
      (phrasesOf(next.phrases, 'camera').length > 0 && !/\b(rewound|counter|footage)\b/.test(next.text))
    )
      return null;
    const by = numbers.find((number) => Math.abs(number.value - old) > SAME_FEET);
    if (by) {
      const others = numbers.filter(({ value }) => value !== by.value && value !== old);
      const shape = masked(reading, next, numbers, old);
      if (others.length > 0 || keepsOld.test(shape) || !isNear(old, by.value, MISREAD_FEET)) return null;
      const isGiven = shape === 'N' ? isDisowned : givesNew.test(shape) || isDisowned || disowning.test(next.text);
      return isGiven
        ? { olds, feet: by.value, until: next.index, isSure: isOne(olds) && !guessesNew.test(next.text) }
        : null;
    }
    isDisowned ||= disowning.test(next.text);
  }
  return null;
}

/** "I put the crack at fourteen and the wye is at fifteen": the second number is of something else. */
const crossesAnother = (sentence: Sentence, a: Said, b: Said, olds: readonly Old[]): boolean =>
  sentence.phrases.some(
    (phrase) =>
      phrase.family === 'thing' &&
      phrase.from >= Math.min(a.to, b.to) &&
      phrase.to <= Math.max(a.from, b.from) &&
      !olds.some(({ item }) => item.kind === phrase.kind),
  );

const isOne = (olds: readonly Old[]): boolean => new Set(olds.map(({ item }) => item.sentence)).size === 1;

const isNear = (was: number, feet: number, most: number): boolean =>
  Math.abs(was - feet) <= most || confusable(was, feet, feet) === feet || confusable(feet, was, was) === was;

/** The things that lie, begin or end at a number; of several, those that are named with it. */
function oldsAt(reading: Reading, sentence: Sentence, feet: number): Old[] {
  const run = currentRun(reading);
  const all = reading.items.flatMap((item): Old[] => {
    const saidIn = item.sentence + (item.basis === 'spoken' ? 0 : item.evidence.placeSentences);
    if (
      item.isWithdrawn ||
      Math.max(item.sentence, saidIn) >= sentence.index ||
      (item.kind === 'pipe' && item.at === 0)
    )
      return [];
    if (item.at !== null && Math.abs(item.at - feet) <= SAME_FEET) return [{ item, field: 'at', value: item.at }];
    const { to } = item.fields;
    return to !== null && Math.abs(to - feet) <= SAME_FEET && kindTakes(item.kind, 'to')
      ? [{ item, field: 'to', value: to }]
      : [];
  });
  const said = reading.sentences.slice(Math.max(0, sentence.index - NAMED_BEFORE), sentence.index + 1).reverse();
  for (const where of said) {
    const ofKind = all.filter(({ item }) => namesKind(where, item));
    const named = ofKind.length > 0 ? ofKind : all.filter(({ item }) => sharesWords(reading, item, where));
    if (named.length > 0) return bestOf(named, run?.n);
    // Something else is spoken of here.
    if (where.phrases.some(({ family }) => family === 'thing')) return [];
  }
  return bestOf(
    all.filter(({ item }) => item.run === run?.n),
    run?.n,
  );
}

/** Of this run before others; and all that was placed there in one sentence. */
function bestOf(olds: readonly Old[], run: number | undefined): Old[] {
  const here = olds.filter(({ item }) => item.run === run);
  const among = here.length > 0 ? here : olds;
  const last = among.at(-1);
  if (!last) return [];
  return among.filter(({ item, field }) => item === last.item || (field === last.field && item.run === last.item.run));
}

const namesKind = (where: Sentence, { kind }: Item): boolean =>
  where.phrases.some((phrase) => phrase.family === 'thing' && phrase.kind === kind);

function sharesWords(reading: Reading, item: Item, where: Sentence): boolean {
  const words = tellingWords(reading.phrases.tokens, where);
  return [item, ...item.again].some((range) => {
    const own = tellingWords(reading.phrases.tokens, range);
    return words.some((word) => own.includes(word));
  });
}

interface Said {
  readonly from: number;
  readonly to: number;
  readonly value: number;
}

/** The numbers of a sentence that may be places. */
function placeNumbers(reading: Reading, sentence: Sentence): Said[] {
  const isOther = ({ from, to }: { from: number; to: number }): boolean =>
    sentence.phrases.some(
      (phrase) =>
        /^(clock|share|inches|diameter|angle|count|length|relative)$/.test(phrase.family) &&
        // "It ended at thirty" sounds like an hour.
        !/clockTime/.test(phrase.rule) &&
        phrase.from <= from &&
        phrase.to >= to,
    );
  return numbersWithin(reading.phrases.numbers, sentence.from, sentence.to).filter((number) => !isOther(number));
}

/** A sentence with O for a number that was given before and N for every other. */
const masked = (reading: Reading, sentence: Sentence, numbers: readonly Said[], old: number): string =>
  letterNumbers(reading.phrases.tokens, sentence, numbers, ({ value }) =>
    Math.abs(value - old) <= SAME_FEET ? 'O' : 'N',
  );
