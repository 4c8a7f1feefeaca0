/** Sizes, sides, shares and degrees said in a sentence of their own: they belong to what was named before. */
import { type Phrase, phrasesOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { setField } from './assign-attributes.ts';
import { kindTakes } from './claim.ts';
import { speaksOfThing } from './follow-subject.ts';
import { reviveTentative } from './hold-tentative.ts';
import { fieldOf, givenBy } from './phrase-value.ts';
import { type FieldName, type Item, isPlaceGuessed, own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How many sentences an attribute may stand after the thing it is said of. */
const ATTRIBUTE_SENTENCES = 3;

export function recordOld(item: Item, field: FieldName | 'at', was: string | number | null, sentence: Sentence): void {
  if (was !== null) item.corrected.push({ field, was, from: sentence.from, to: sentence.to });
}

export interface LoosePhrase {
  readonly phrase: Phrase;
  /** It stands before the first thing of its sentence. */
  readonly isAhead: boolean;
}

/** Gives loose attributes to the items talk is about. Returns whether any was taken. */
export function giveAttributes(
  reading: Reading,
  sentence: Sentence,
  loose: readonly LoosePhrase[],
  correcting: 'strong' | 'weak' | null,
  earlier: readonly Item[] = [],
): boolean {
  const measured = loose.some(({ phrase }) => phrase.family === 'share' || phrase.family === 'inches');
  if (
    measured &&
    reading.tentative &&
    sentence.index - reading.tentative.sentence <= 2 &&
    reading.focusSentence <= reading.tentative.sentence
  )
    reviveTentative(reading, sentence.index);
  const targets = reading.focus.filter((item) => !item.isWithdrawn);
  if (targets.length === 0 || sentence.index - reading.focusSentence > ATTRIBUTE_SENTENCES) return false;
  if (sentence.isQuestion) return false;
  // "And there's … on the bottom" brings in something new, even where it is not known what.
  if (
    !(opensWithPronoun.test(sentence.text) && loose.some(({ isAhead }) => isAhead)) &&
    /\b(there 's|there is|there are|here 's|here comes) (a|an|some|another|more)\b(?! (few|fair few|good few|fair amount|handful|lot|bit|little|ton|touch|good deal|fair (bit|amount)|whole lot|bunch)( of (it|them|that|this))?( |$))/.test(
      sentence.text,
    )
  )
    return false;
  const opensWithValue = loose.some(({ phrase }) => phrase.from - sentence.from <= 1);
  if (bringsIn.test(sentence.text) && !opensWithValue && !loose.some(({ phrase }) => phrase.family === 'service'))
    return false;
  // "I had one last year with eighty feet of it": what follows is of another thing.
  const told = phrasesOf(sentence.phrases, 'assertion').find((cue) => /^(past|elsewhere)$/.test(cue.cue.axis));
  let isTaken = told === undefined && giveLength(sentence, targets);
  let placedHere: Item | null = null;
  for (const { phrase, isAhead } of loose) {
    if (told && told.to <= phrase.from) continue;
    const field = fieldOf(phrase);
    if (field === null) continue;
    if (!speaksOfThing(phrase, sentence, reading.phrases.tokens)) continue;
    // "Now look at the bottom." opens something new.
    if (field === 'position' && /^(now |and |so |okay )*(look|see|watch)\b/.test(sentence.text)) continue;
    const known = isAhead
      ? earlier.findLast((target) => !target.isWithdrawn && isOpenFor(target, field, phrase))
      : undefined;
    // "It's on top, and it's catching paper": what is said of "it" is of the thing before, not of what is named next.
    const isOfKnown = known !== undefined && opensWithPronoun.test(sentence.text);
    const item =
      (isOfKnown ? known : undefined) ?? targets.findLast((target) => takesField(target, field, phrase)) ?? known;
    if (!item) continue;
    if (correcting === null && isPlacedElsewhere(sentence, item, phrase, reading.phrases.tokens)) continue;
    // "From the upper right, around one o'clock": the hour says it more closely.
    const isCloser = field === 'clock' && item.fields.clock === null && placedHere === item;
    if (field === 'position') placedHere = item;
    const old = isCloser
      ? null
      : field === 'position' || field === 'clock'
        ? (item.fields.clock ?? item.fields.position)
        : fieldValue(item, field);
    const isCorrected =
      old !== null &&
      (correcting !== null || revises.test(sentence.text) || isBareFragment(sentence, reading.phrases.tokens)) &&
      reading.focusSentence >= sentence.index - 2;
    if (old !== null && !isCorrected) {
      // Which of the two is meant is for the inspector to see.
      const said = givenBy(phrase)?.value ?? null;
      if (old !== said) item.evidence.notes.push(`later said ${field} ${said}`);
      continue;
    }
    if (field === 'position' && item.fields.clock !== null) item.fields.clock = null;
    if (field === 'clock' && item.fields.position !== null) item.fields.position = null;
    if (!setField(item.fields, phrase, item.kind, isCorrected)) continue;
    if (isCorrected && old !== fieldValue(item, field)) {
      recordOld(item, field, old, sentence);
      if (correcting !== 'strong') item.evidence.notes.push(`weak correction of ${field}`);
    } else item.evidence.notes.push(`${field} said later`);
    reading.lastValue = { item, field, sentence: sentence.index };
    reading.unclaimed.delete(phrase);
    own(reading, phrase.from, phrase.to, { sort: 'item', item, isAgain: true });
    isTaken = true;
  }
  if (isTaken) reading.focusSentence = sentence.index;
  return isTaken;
}

/** A second look gives the value anew: "now that I'm on it, three quarters", "worse than I thought, call it heavy". */
const revises =
  /\b(now that (i|we)|up close|closer up|(more|better|bigger|worse|heavier|lighter|less|smaller) than (i|we) (thought|said|figured)|on (a )?(second|closer|better) look|looking (again|closer)|that 's more like)\b/;

const opensWithPronoun =
  /^((and|so|but|yeah|oh|well|okay|now) )*(it|they|that|this|those|these) ?('s|is|are|'re|was|were)\b/;

/** "And sand's washing in from the right": a subject of its own, though it is not known what it is; "it's coming in" has none. */
const bringsIn =
  /^(?:(?:and|then|so|but|now|oh|there) )*(?!it\b|that\b|this\b|they\b|these\b|those\b|which\b|what\b|looks\b|coming\b|comes\b|he\b|she\b|one\b)(?:(?:the|some|a|an|more|your|our) )?\w+ (?:(?:'s|is|are|was) )?(?:coming|comes|running|runs|seeping|dripping|leaking|pouring|washing|poking|sticking) |^(?:and )?(?!nothing\b|not\b|none\b|way\b|far\b|it\b|that\b|this\b|they\b|these\b|those\b)\w+ (?:too|also|as well)\b/;

/** "Fifteen feet, and now it's heavy": what has a place of its own, not that of the thing, is said of something else. */
const isPlacedElsewhere = (sentence: Sentence, item: Item, phrase: Phrase, tokens: readonly Token[]): boolean =>
  item.at !== null &&
  !isPlaceGuessed(item) &&
  phrasesOf(sentence.phrases, 'distance').some(
    ({ distance, from, to }) =>
      (to <= phrase.from || (item.fields.to !== null && distance.feet > item.fields.to)) &&
      (distance.frame !== 'bare' || from - sentence.from <= 1) &&
      distance.isEnd !== true &&
      distance.feet !== item.at &&
      distance.feet !== item.fields.to &&
      !/^(by|until|till|past|around|through|to)$/.test(tokens[from - 1]?.text ?? ''),
  );

/** "… and it goes on for eight feet." */
function giveLength(sentence: Sentence, targets: readonly Item[]): boolean {
  const length = phrasesOf(sentence.phrases, 'length')[0];
  const item = targets.findLast(
    (target) =>
      kindTakes(target.kind, 'to') && target.kind !== 'pipe' && target.at !== null && target.fields.to === null,
  );
  if (!length || !item || item.at === null) return false;
  item.fields.to = item.at + length.feet;
  return true;
}

const takesField = (item: Item, field: FieldName, phrase: Phrase): boolean =>
  kindTakes(item.kind, field) ||
  (field === 'percent' && phrase.family === 'share' && phrase.isBare && kindTakes(item.kind, 'inches'));

const fieldValue = (item: Item, field: FieldName): string | number | null =>
  item.fields[field === 'percent' && !kindTakes(item.kind, 'percent') ? 'inches' : field];

const small =
  /^(and|so|oh|eh|meh|um|uh|well|no|it|'s|is|that|they|'re|are|the|a|an|of|on|at|in|from|to|more|like|about|maybe|say|i|'d|call|make|side|hand|wall|actually|really|now|just|yeah|yes|okay|ah|hm|hmm|hey|be|fair|honest|let|me|rather|not|only|too|still)$/;

/** Nothing but a value: said after another of its sort, it stands for it. */
function isBareFragment(sentence: Sentence, tokens: readonly Token[]): boolean {
  if (sentence.to - sentence.from > 6) return false;
  for (let at = sentence.from; at < sentence.to; at += 1) {
    const isInside = sentence.phrases.some(
      (phrase) => at >= phrase.from && at < phrase.to && (fieldOf(phrase) !== null || phrase.family === 'assertion'),
    );
    if (!isInside && !small.test(tokens[at]?.text ?? '')) return false;
  }
  return true;
}

/** Whether an item takes a value and has none. */
const isOpenFor = (item: Item, field: FieldName, phrase: Phrase): boolean =>
  takesField(item, field, phrase) &&
  fieldValue(item, field) === null &&
  !(field === 'position' && item.fields.clock !== null) &&
  !(field === 'clock' && item.fields.position !== null);
