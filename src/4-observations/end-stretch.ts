/** Where a stretch that was begun earlier comes to its end: "… and it lets go at fifty one." */

import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import { reviveTentative } from './hold-tentative.ts';
import { limitKinds, spotKinds } from './kind-roles.ts';
import { placeOffers } from './offer-places.ts';
import { type Item, ownFor, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { endingWords, endTold, tellsEnd } from './tell-ends.ts';

/** "… and it lets go at fifty one." */
export function endOpenStretch(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  place: PhraseOf<'distance'>,
): boolean {
  const { feet, toFeet, isEnd } = place.distance;
  const open = openStretch(reading, run.n, feet);
  const isLandmark = run.landmarks.some((landmark) => landmark.sentence === sentence.index);
  const end = endTold(reading.sentences, sentence);
  // "Clear. Forty. Wye.": what is named next needs the number.
  const isForNext = end === 'beside' && /next|both/.test(reading.plan.lone.get(sentence.index) ?? '');
  const says = isEnd === true || (end !== null && toFeet === null && !isForNext);
  // "Sand from the crack to 28": the crack is where it begins, and goes no further for it.
  const isOfAnother = place.rule === 'from <thing> to <distance>';
  if (!open || isLandmark || isOfAnother || !says || sentence.index - open.sentence > 12) return false;
  open.fields.to = feet;
  const isBegun = begins.test(reading.sentences[open.sentence]?.text ?? '');
  const isLate = reading.items.some((item) => item !== open && item.run === run.n && item.sentence > open.sentence + 1);
  if (!isBegun && isLate && sentence.index - open.sentence > LATE_SENTENCES)
    open.flags.push({
      reason: 'distance-unsure',
      about: 'to',
      detail: 'where it ends was said much later, after other things',
      offers: placeOffers(feet),
    });
  // "Belly at twenty. I'm under. We come up at twenty five.": out of the water is out of what held it.
  const outer = limitKinds.has(open.kind) && surfaces.test(sentence.text) ? outerStretch(reading, open) : null;
  if (outer) outer.fields.to = feet;
  reading.lastValue = { item: open, field: 'to', sentence: sentence.index };
  reading.focus = [open];
  reading.focusSentence = sentence.index;
  run.here = feet;
  ownFor(reading, sentence, open);
  return true;
}

/** "Six feet on I come out the other side.": the end is told as a way on from where it began. */
export function endByStep(reading: Reading, sentence: Sentence, run: RunState): boolean {
  const step = phrasesOf(sentence.phrases, 'relative').find(
    ({ relative }) => relative.shape === 'offset' && relative.anchor === null && (relative.feet ?? 0) > 0,
  );
  if (!step || !endingWords.test(sentence.text)) return false;
  const open = openStretch(reading, run.n, Number.POSITIVE_INFINITY);
  if (open?.at == null || sentence.index - open.sentence > STEP_SENTENCES) return false;
  open.fields.to = open.at + (step.relative.feet ?? 0);
  reading.lastValue = { item: open, field: 'to', sentence: sentence.index };
  run.here = open.fields.to;
  ownFor(reading, sentence, open);
  return true;
}

/** An end told as a way on stands so near the beginning, in sentences. */
const STEP_SENTENCES = 5;

/** Water seen at one place and left at another lies in a low spot, whether it is called so or not. */
export function endTentative(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  place: PhraseOf<'distance'>,
): boolean {
  const { tentative } = reading;
  if (
    !tentative ||
    tentative.item.run !== run.n ||
    sentence.index - tentative.sentence > 10 ||
    tentative.item.at === null
  )
    return false;
  const says = tellsEnd(reading.sentences, sentence);
  if (!says || place.distance.feet <= tentative.item.at) return false;
  reviveTentative(reading, sentence.index);
  tentative.item.fields.to = place.distance.feet;
  run.here = place.distance.feet;
  ownFor(reading, sentence, tentative.item);
  return true;
}

/** An end told later than this, in sentences, with other things between may be of something else. */
const LATE_SENTENCES = 3;

const surfaces =
  /\b(come|comes|coming|came|comin|pop|popped) (back )?up\b|\b(out of (it|the water)|air|surfac\w*|dry)\b/;

/** What was begun before a stretch that lies in it, and has no end yet. */
const outerStretch = (reading: Reading, inner: Item): Item | undefined =>
  reading.items.findLast(
    (item) =>
      item !== inner &&
      item.run === inner.run &&
      !item.isWithdrawn &&
      !limitKinds.has(item.kind) &&
      kindTakes(item.kind, 'to') &&
      item.kind !== 'pipe' &&
      !spotKinds.has(item.kind) &&
      item.fields.to === null &&
      item.at !== null &&
      inner.at !== null &&
      item.at <= inner.at &&
      inner.sentence - item.sentence <= NESTED,
  );

/** So many sentences after the beginning of the one stretch another may lie in it. */
const NESTED = 8;
const begins = /\b(begins?|began|starts?|started|into)\b/;

function openStretch(reading: Reading, run: number, feet: number): Item | null {
  const begun = reading.items.filter(
    (candidate) =>
      candidate.run === run &&
      !candidate.isWithdrawn &&
      kindTakes(candidate.kind, 'to') &&
      candidate.kind !== 'pipe' &&
      !spotKinds.has(candidate.kind) &&
      candidate.at !== null &&
      candidate.at < feet,
  );
  const last = begun.at(-1);
  // Water lost sight of inside a low spot: the inner one ends first, and what was said to begin before it next.
  const outer = begun.findLast(
    (candidate) =>
      candidate.fields.to === null &&
      last !== undefined &&
      last.sentence - candidate.sentence <= NESTED &&
      begins.test(reading.sentences[candidate.sentence]?.text ?? ''),
  );
  const item = last && last.fields.to !== null && last.fields.to <= feet && outer ? outer : last;
  return item && item.fields.to === null ? item : null;
}
