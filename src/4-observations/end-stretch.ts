/** Where a stretch that was begun earlier comes to its end: "… and we come out of it at thirty eight." */
import type { PhraseOf } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import { type Item, ownFor, type Reading, type RunState, reviveTentative } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { endTold, tellsEnd } from './tell-ends.ts';

/** "… and we come out of it at thirty eight." */
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
  if (!open || isLandmark || !says || sentence.index - open.sentence > 12) return false;
  open.fields.to = feet;
  reading.lastValue = { item: open, field: 'to', sentence: sentence.index };
  reading.focus = [open];
  reading.focusSentence = sentence.index;
  run.here = feet;
  ownFor(reading, sentence, open);
  return true;
}

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

function openStretch(reading: Reading, run: number, feet: number): Item | null {
  const item = reading.items.findLast(
    (candidate) =>
      candidate.run === run &&
      !candidate.isWithdrawn &&
      kindTakes(candidate.kind, 'to') &&
      candidate.kind !== 'pipe' &&
      candidate.at !== null &&
      candidate.at < feet,
  );
  return item && item.fields.to === null ? item : null;
}
