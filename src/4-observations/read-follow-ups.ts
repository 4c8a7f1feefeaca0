/** Sentences that name no thing and give a place, an ending or an answer. They belong to what was named before. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import { endByStep, endOpenStretch, endTentative } from './end-stretch.ts';
import { recordOld } from './give-attributes.ts';
import { placelessKinds } from './kind-roles.ts';
import {
  currentRun,
  focusedIn,
  type Item,
  isPlaceGuessed,
  ownFor,
  PLACE_AFTER,
  type Reading,
  type RunState,
  SAME_PLACE,
} from './reading.ts';
import { resolveRelative } from './resolve-relative.ts';
import type { Sentence } from './sentence.ts';

/** Whether a sentence holds places and small words only. */
function isNothingElse(reading: Reading, sentence: Sentence): boolean {
  const places = phrasesOf(sentence.phrases, 'distance');
  const rest = reading.phrases.tokens.slice(sentence.from, sentence.to).filter((token, offset) => {
    const at = sentence.from + offset;
    return (
      !places.some((place) => at >= place.from && at < place.to) &&
      !/^(um|uh|okay|so|that|'s|at|about|it|is|yeah|yep|got|and|there|we|are|'re|now)$/.test(token.text)
    );
  });
  return rest.length === 0;
}

/** Whether the next thing named has no place of its own: then a place standing alone is its place. */
function nextNeedsPlace(reading: Reading, index: number): boolean {
  const next = reading.sentences
    .slice(index + 1, index + 3)
    .find((sentence) => sentence.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'material'));
  return next !== undefined && !next.phrases.some((phrase) => phrase.family === 'distance');
}

function setPlace(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  item: Item,
  feet: number,
  toFeet: number | null,
  rule: string,
): true {
  item.at = feet;
  item.basis = 'nearby';
  item.evidence.placeRule = rule;
  item.evidence.placeSentences = sentence.index - item.sentence;
  if (toFeet !== null && kindTakes(item.kind, 'to')) item.fields.to = toFeet;
  reading.lastValue = { item, field: 'at', sentence: sentence.index };
  run.here = toFeet ?? feet;
  ownFor(reading, sentence, item);
  return true;
}

/** A sentence that gives a place and names nothing. */
export function givePlaces(reading: Reading, sentence: Sentence, correcting: 'strong' | 'weak' | null): boolean {
  const run = currentRun(reading);
  const whole = phrasesOf(reading.sentences[sentence.index]?.phrases ?? [], 'distance');
  const place = wholePlace(phrasesOf(sentence.phrases, 'distance'), sentence);
  if (!run) return false;
  if (!place) return endByStep(reading, sentence, run) || placeByStep(reading, sentence, run);
  // "Well now, twenty feet. A cleanout.", "Wait one. Fifteen. Bend.": the number is of what is named next.
  const saysSo = phrasesOf(sentence.phrases, 'correction').some((cue) => !/^(well|or|say)$/.test(cue.rule));
  const isOfNext = correcting === 'weak' && !saysSo && /next|both/.test(reading.plan.lone.get(sentence.index) ?? '');
  if (
    correcting !== null &&
    !isOfNext &&
    !correctsPending(reading, sentence) &&
    replaceLast(reading, sentence, place, correcting)
  )
    return true;
  if (completesStretch(reading, sentence, run, place)) return true;
  if (refinesLast(reading, sentence, place) && replaceLast(reading, sentence, place, 'strong')) return true;
  if (endOpenStretch(reading, sentence, run, place)) return true;
  if (endTentative(reading, sentence, run, place)) return true;
  const belongs = reading.plan.lone.get(sentence.index);
  const item = focusedIn(reading, run);
  if (belongs === 'before' && item && item.at === place.distance.feet && item.evidence.placeRule === PLACE_AFTER) {
    ownFor(reading, sentence, item);
    reading.lastValue = { item, field: 'at', sentence: sentence.index };
    reading.focusSentence = sentence.index;
    return true;
  }
  const isNear = item !== undefined && sentence.index - reading.focusSentence <= 2;
  if (!item || !isNear || (item.kind === 'pipe' && item.at === 0) || placelessKinds.has(item.kind)) return false;
  const { feet, toFeet } = place.distance;
  const isForNext =
    belongs === 'next' || belongs === 'both' || (belongs === undefined && nextNeedsPlace(reading, sentence.index));
  const says = saysThat.test(sentence.text);
  const isUnsure =
    (isPlaceGuessed(item) && item.evidence.placeRule !== PLACE_AFTER) ||
    (item.evidence.frame === 'bare' && place.distance.frame === 'unit' && sentence.index - item.sentence <= 1);
  // "Offset joint here. That's at sixteen."
  if (item.at === null && (says || !isForNext))
    return setPlace(reading, sentence, run, item, feet, toFeet, PLACE_AFTER);
  if (isPlaceGuessed(item) && says) return setPlace(reading, sentence, run, item, feet, toFeet, PLACE_AFTER);
  // "It's a toy. Eighteen and a half feet."
  const isForward = feet > (item.at ?? 0) && run.way === 'out';
  if (isUnsure && isForward && !isForNext && isNothingElse(reading, sentence)) {
    const first = kindTakes(item.kind, 'to') ? (whole[0]?.distance.feet ?? feet) : feet;
    return setPlace(reading, sentence, run, item, first, toFeet, 'place said right after');
  }
  // "A sag here. Forty to forty six."
  const takesStretch = toFeet !== null && kindTakes(item.kind, 'to') && item.fields.to === null;
  if (takesStretch && (isPlaceGuessed(item) ? !isForNext || isNothingElse(reading, sentence) : item.at === feet))
    return setPlace(reading, sentence, run, item, feet, toFeet, 'stretch said after');
  return false;
}

/** "Roots. That's four past the wye.": where the thing just named is, told as a way from another. */
function placeByStep(reading: Reading, sentence: Sentence, run: RunState): boolean {
  const step = phrasesOf(sentence.phrases, 'relative').find(({ relative }) => relative.shape === 'offset');
  const item = focusedIn(reading, run);
  if (!step || !item || run.way !== 'out' || !saysThat.test(sentence.text)) return false;
  if (sentence.isQuestion || sentence.index - reading.focusSentence > 1 || placelessKinds.has(item.kind)) return false;
  if (item.at !== null && !(isPlaceGuessed(item) && item.evidence.placeRule === SAME_PLACE)) return false;
  const placing = resolveRelative(reading, run, step, null);
  return placing?.at != null && setPlace(reading, sentence, run, item, placing.at, null, PLACE_AFTER);
}

/** Nobody sums up a stretch more than this many sentences after it began. */
const STRETCH_SENTENCES = 10;

/** "Corrosion at nine. Keep feeding. There. So nine to fourteen.": the whole of it, said when its end was met. */
function completesStretch(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  { distance: { feet, toFeet } }: PhraseOf<'distance'>,
): boolean {
  const item = reading.items.findLast((other) => other.run === run.n && !other.isWithdrawn && other.at === feet);
  if (toFeet === null || !item || !kindTakes(item.kind, 'to') || item.kind === 'pipe') return false;
  if (item.fields.to !== null || sentence.index - item.sentence > STRETCH_SENTENCES) return false;
  item.fields.to = toFeet;
  reading.lastValue = { item, field: 'to', sentence: sentence.index };
  run.here = toFeet;
  ownFor(reading, sentence, item);
  return true;
}

/** "They start at twelve and go to fifteen": both ends in one sentence. */
function wholePlace(places: readonly PhraseOf<'distance'>[], sentence: Sentence): PhraseOf<'distance'> | undefined {
  const last = places.at(-1);
  const first = places.at(-2);
  const isStretch =
    opensStretch.test(sentence.text) &&
    last?.distance.isEnd === true &&
    first !== undefined &&
    first.distance.isEnd !== true &&
    first.distance.toFeet === null &&
    first.distance.feet < last.distance.feet;
  return isStretch ? { ...first, distance: { ...first.distance, toFeet: last.distance.feet } } : last;
}

const saysThat =
  /\b((?:put|mark|log|call|make) (?:that|it|this)|i make (?:that|it)|that 's|that was|that one|those were|that is|this is|it 's at|it was at|so that 's|that open|that would be|for that|there we go|and that 's)\b/;

/** "City main, sixty two. It reads sixty two point eight, to be exact.", and "Eight? Nine." */
function refinesLast(reading: Reading, sentence: Sentence, place: PhraseOf<'distance'>): boolean {
  const last = reading.lastValue;
  if (last === null || last.field !== 'at' || last.item.at === null || sentence.index - last.sentence > 3) return false;
  const gap = Math.abs(place.distance.feet - last.item.at);
  const before = reading.sentences[sentence.index - 1];
  const asksAgain =
    before !== undefined &&
    reading.phrases.tokens[before.to - 1]?.breakAfter === 'question' &&
    phrasesOf(before.phrases, 'distance').some((phrase) => phrase.distance.feet === last.item.at) &&
    before.to - before.from <= 4;
  return (
    gap > 0 &&
    ((gap <= 1.2 && /\b(exact|exactly|precise|precisely|reads|to be fair|being picky)\b/.test(sentence.text)) ||
      (gap <= 12 && asksAgain))
  );
}

/** "Twenty one. Correct that to twenty one point five. Soil coming in.": the number is of what is named next. */
function correctsPending(reading: Reading, sentence: Sentence): boolean {
  const { pending, plan, lastValue } = reading;
  if (pending === null || lastValue === null || pending.sentence <= lastValue.sentence) return false;
  return [pending.sentence, sentence.index].some((index) => /next|both/.test(plan.lone.get(index) ?? ''));
}

/** A sentence of so few tokens says little but a number. */
const SHORT_TOKENS = 4;
/** No more things than these are named in one sentence. */
const SAID_TOGETHER = 6;
const saysStart = /\b(starts?|began|begins?|beginning|starting)\b/;
const opensStretch = /\b(starts?|begins?|began|from|first|picks? up|shows? up|comes? in)\b/;
const saysEnd = /\b(ends?|ended|out|until|till|stops?|quits?|finish(es)?|goes to)\b/;

/** Which end of a thing a place is given anew for: the one that is named, or the one said last. */
function replacedEnd({ item, field }: NonNullable<Reading['lastValue']>, sentence: Sentence): 'at' | 'to' | null {
  if (item.fields.to !== null && saysStart.test(sentence.text)) return 'at';
  if (item.fields.to !== null && saysEnd.test(sentence.text)) return 'to';
  if (field === 'at' || field === 'to') return field;
  if (field === 'percent' || field === 'inches' || field === 'diameterIn') return null;
  return item.fields.to === null ? 'at' : 'to';
}

/** "No. Thirty nine." replaces the last place given. */
function replaceLast(
  reading: Reading,
  sentence: Sentence,
  place: PhraseOf<'distance'>,
  correcting: 'strong' | 'weak',
): boolean {
  const last = reading.lastValue;
  if (last === null || last.item.isWithdrawn || sentence.index - last.sentence > 3) return false;
  if (last.item.kind === 'pipe' && last.item.at === 0) return false;
  const isShort = sentence.to - sentence.from <= SHORT_TOKENS;
  if (correcting === 'weak' && !isShort && sentence.index - last.sentence > 2) return false;
  const { feet, toFeet } = place.distance;
  if (place.distance.frame === 'bare' && replaceMeasure(reading, sentence, last.item, feet)) return true;
  const field = replacedEnd(last, sentence);
  if (field === null) return false;
  recordOld(last.item, field, field === 'at' ? last.item.at : last.item.fields.to, sentence);
  // What the same sentence placed there moves with it.
  const isBoth = /\b(both|those|these|they|the two|all of (them|those|that))\b/.test(sentence.text);
  for (const other of field === 'at' ? reading.items.slice(-SAID_TOGETHER) : [])
    if (
      other !== last.item &&
      !other.isWithdrawn &&
      other.run === last.item.run &&
      (isBoth || other.sentence === last.item.sentence) &&
      other.at === last.item.at
    )
      other.at = feet;
  if (toFeet !== null || field === 'at') last.item.at = feet;
  if (toFeet !== null && kindTakes(last.item.kind, 'to')) last.item.fields.to = toFeet;
  else if (field === 'to') last.item.fields.to = feet;
  if (correcting === 'weak') last.item.evidence.notes.push(`weak correction of ${field}`);
  ownFor(reading, sentence, last.item);
  return true;
}

/** "Thirty percent. Make it forty.": a bare number replaces the value said last, which need not be a place. */
function replaceMeasure(reading: Reading, sentence: Sentence, item: Item, value: number): boolean {
  const said = reading.sentences
    .slice(Math.max(0, sentence.index - 2), sentence.index)
    .flatMap((before) => before.phrases)
    .findLast((phrase) => /^(distance|share|inches)$/.test(phrase.family));
  const field = said?.family === 'share' ? 'percent' : said?.family === 'inches' ? 'inches' : null;
  if (field === null || item.fields[field] === null || (field === 'percent' && value > 100)) return false;
  if (field === 'inches' && value > 12) return false;
  recordOld(item, field, item.fields[field], sentence);
  item.fields[field] = value;
  ownFor(reading, sentence, item);
  return true;
}
