/**
 * A value put right long after it was said: "the crack entry, twelve o'clock, was one o'clock", "I said the tub was on the left,
 * but I had the camera sideways. It comes in on the right.", "it wasn't a third, it was half". Which thing is meant shows in its
 * name, or in being the only one that was given the old value.
 */
import { hourOfPosition } from '../../shared/vocabulary/attributes.ts';
import type { Phrase } from '../3-phrases/phrase.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { setField } from './assign-attributes.ts';
import { recordOld } from './give-attributes.ts';
import { mentionAgain, SAME_FEET, withdrawItem } from './items.ts';
import { fieldOf, givenBy, sameSort, sameValue } from './phrase-value.ts';
import { currentRun, emptyFields, type FieldName, type Item, isPlaceGuessed, type Reading } from './reading.ts';
import { type Sentence, tellsOfOther } from './sentence.ts';

/** Sentences after which a value that was taken back is no longer waited for. */
const WAIT_SENTENCES = 3;
/** Sentences back the thing may have been named whose value is put right. */
const NAMED_SENTENCES = 2;
const LEAD_TOKENS = 14;
/** A sentence of more tokens that names nothing says more than a value. */
const SHORT_TOKENS = 12;

const recalls =
  /\b(i|i 've|i 'd|we|you) (said|called|had|put|wrote|gave|told|marked|logged|took|noted|listed|entered|first said|first called|first had)\b(?!.*\b(but|because)\b)/;
const asksBack = /^(oh |wait |sorry |hang on )*did i (say|call|put|write|tell)\b/;
/** Between an old value and the one that stands for it. */
const standsInstead =
  /^(, )?((was|were|is|'s|are)( really| actually| in fact)?|should (be|have been|read|say)|ought to (be|read|say)|needs to (be|say|read)|becomes|reads|to)( at| on| the| a| an| more like| about| from)*$/;
const changes = /\b(change|move|switch|bump|shift|upgrade|downgrade|amend|revise|correct|make|raise|drop)\b/;

/** What a sentence says of a value given before: the old one, and the one that stands for it if that is said too. */
interface Recall {
  readonly old: Phrase;
  readonly by: Phrase | null;
}

/** Puts a value of a known thing right. Returns the thing, or null where nothing is put right. */
export function correctField(reading: Reading, sentence: Sentence, denied: readonly Phrase[]): Item | null {
  if (currentRun(reading) === null) return null;
  const { tokens } = reading.phrases;
  const waiting = reading.wrongValue;
  if (waiting !== null) {
    if (sentence.index - waiting.sentence > WAIT_SENTENCES || waiting.item.isWithdrawn) reading.wrongValue = null;
    else {
      const by = answerTo(waiting.old, waiting.item, sentence);
      if (by) return replace(reading, sentence, waiting.item, waiting.old, by);
    }
  }
  const recall = findRecall(sentence, denied, tokens);
  if (recall === null) return null;
  const items = itemsWith(reading, sentence, recall.old);
  const item = items.at(-1);
  if (!item || isFresh(item, sentence)) return null;
  if (recall.by) {
    const replaced = replace(reading, sentence, item, recall.old, recall.by);
    if (replaced && items.length > 1) replaced.evidence.notes.push('weak correction of one of several');
    return replaced;
  }
  reading.wrongValue = { item, old: recall.old, sentence: sentence.index };
  if (!denied.includes(recall.old)) {
    mentionAgain(reading, item, sentence.from, sentence.to);
    return item;
  }
  // "I'd not call it minor": what was said of it no longer stands, though nothing is said instead as yet.
  const field = valueField(item, recall.old);
  if (field === null || !isOfThing(sentence) || !reading.focus.includes(item)) {
    reading.wrongValue = null;
    return null;
  }
  recordOld(item, field, item.fields[field], sentence);
  item.fields[field] = null;
  mentionAgain(reading, item, sentence.from, sentence.to);
  return item;
}

/** "I'd not call it light", "those aren't light": said of the thing at hand, and not what nobody should say. */
const isOfThing = (sentence: Sentence): boolean =>
  !tellsOfOther(sentence) &&
  /^((no|nope|well|oh|actually|and|but|so|now|hm|hmm|wait) )*(i|it|that|they|those|these|this)( \S+){0,2} ?(not\b|never\b|\S*n't\b)/.test(
    sentence.text,
  );

/** A thing first named in the sentence, or just before it, is put right by the plainer rules. */
const isFresh = (item: Item, sentence: Sentence): boolean => item.sentence >= sentence.index;

/** A value of the same sort in a later sentence that speaks of nothing else. */
function answerTo(old: Phrase, item: Item, sentence: Sentence): Phrase | null {
  const others = sentence.phrases.filter(
    (phrase) =>
      (phrase.family === 'thing' && phrase.kind !== item.kind && phrase.source === 'word') ||
      (phrase.family === 'distance' && phrase.distance.feet !== item.at) ||
      phrase.family === 'material',
  );
  if (others.length > 0 || sentence.isQuestion) return null;
  if (sentence.to - sentence.from > SHORT_TOKENS) return null;
  return sentence.phrases.findLast((phrase) => sameSort(phrase, old) && !sameValue(phrase, old)) ?? null;
}

function findRecall(sentence: Sentence, denied: readonly Phrase[], tokens: readonly Token[]): Recall | null {
  const values = sentence.phrases.filter((phrase) => fieldOf(phrase) !== null);
  const others = (old: Phrase): Phrase | null =>
    values.findLast((phrase) => phrase !== old && sameSort(phrase, old) && !sameValue(phrase, old)) ?? null;
  // "I said the tub was on the left": what was said last is what was wrong.
  for (const old of [...values].reverse()) {
    const by = others(old);
    if (denied.includes(old)) return { old, by };
    const lead = textOf(tokens, Math.max(sentence.from, old.from - LEAD_TOKENS), old.from);
    if (recalls.test(lead) || asksBack.test(lead)) return { old, by };
    if (by === null || by.from < old.to) continue;
    const between = textOf(tokens, old.to, by.from);
    if (!standsInstead.test(between)) continue;
    // "From light to moderate" puts right where something is changed; else it tells how it grows.
    if (/^to\b/.test(between) && !changes.test(lead)) continue;
    return { old, by };
  }
  return null;
}

/** The field of a thing that holds a value, if any does. */
function valueField(item: Item, value: Phrase): FieldName | null {
  const trial = emptyFields();
  if (!setField(trial, value, item.kind)) return null;
  const { clock, position, ...rest } = trial;
  const { fields } = item;
  if (clock !== null || position !== null) {
    const hour = clock ?? hourOfPosition[position ?? ''] ?? null;
    const known = fields.clock ?? hourOfPosition[fields.position ?? ''] ?? null;
    if (hour === null ? fields.position !== position : hour !== known) return null;
    return fields.clock === null ? 'position' : 'clock';
  }
  const entry = (Object.entries(rest) as [FieldName, unknown][]).find(([, given]) => given !== null);
  return entry && fields[entry[0]] === entry[1] ? entry[0] : null;
}

/** The things that were given a value, the likeliest last: those named, those placed there, or those talk is about. */
function itemsWith(reading: Reading, sentence: Sentence, old: Phrase): Item[] {
  const near = reading.sentences.slice(Math.max(0, sentence.index - NAMED_SENTENCES), sentence.index);
  const kindsOf = (part: Sentence): string[] =>
    part.phrases.flatMap((phrase) => (phrase.family === 'thing' ? [phrase.kind] : []));
  const own = new Set(kindsOf(sentence));
  const holders = reading.items.filter((item) => !item.isWithdrawn && valueField(item, old) !== null);
  const places = phrasesOf(sentence.phrases, 'distance').map(({ distance }) => distance.feet);
  const isPlaced = (item: Item): boolean =>
    item.at !== null && places.some((feet) => Math.abs(feet - item.at!) <= SAME_FEET);
  if (own.size > 0) {
    const named = holders.filter((item) => own.has(item.kind));
    const placed = named.filter(isPlaced);
    return placed.length > 0 ? placed : places.length > 0 ? [] : inRun(reading, named);
  }
  const focused = holders.filter((item) => reading.focus.includes(item));
  if (focused.length > 0 && sentence.index - reading.focusSentence <= 2) return focused;
  const before = new Set(near.flatMap(kindsOf));
  const mentioned = inRun(
    reading,
    holders.filter((item) => before.has(item.kind)),
  );
  if (mentioned.length > 0) return mentioned;
  const here = inRun(reading, holders);
  return here.length === 1 ? here : [];
}

/** Those of the run at hand, or of any run where it has none. */
function inRun(reading: Reading, items: Item[]): Item[] {
  const here = items.filter((item) => item.run === currentRun(reading)?.n);
  return here.length > 0 ? here : items;
}

function replace(reading: Reading, sentence: Sentence, item: Item, old: Phrase, by: Phrase): Item | null {
  const field = fieldOf(by);
  if (field === null) return null;
  const isPlace = field === 'position' || field === 'clock';
  const was = isPlace
    ? (item.fields.clock ?? item.fields.position)
    : (item.fields[field] ?? givenBy(old)?.value ?? null);
  if (isPlace) {
    item.fields.position = null;
    item.fields.clock = null;
    item.fields.clockTo = null;
  }
  if (!setField(item.fields, by, item.kind, true)) return null;
  recordOld(item, field, was, sentence);
  reading.wrongValue = null;
  dropEcho(reading, sentence, item);
  mentionAgain(reading, item, sentence.from, sentence.to);
  reading.focus = [item];
  reading.focusSentence = sentence.index;
  reading.lastValue = { item, field, sentence: sentence.index };
  return item;
}

/** "What was I saying. Oval. It was a third, not a quarter.": the name alone brought in nothing new. */
function dropEcho(reading: Reading, sentence: Sentence, item: Item): void {
  for (const other of reading.focus)
    if (
      other !== item &&
      other.kind === item.kind &&
      other.run === item.run &&
      sentence.index - other.sentence <= NAMED_SENTENCES &&
      isPlaceGuessed(other) &&
      Object.values(other.fields).every((value) => value === null)
    ) {
      withdrawItem(other, 'named to put a value right');
      mentionAgain(reading, item, other.from, other.to);
    }
}
