/**
 * A run ends where the camera went furthest. What ends it is often named beside its number and not with it ("There's the main. Sixty
 * one."), and is held against the furthest place read on the way out: near it in the talk it lies there; where the camera was
 * read well past it afterwards it ended nothing, and is doubted.
 */
import { SAME_FEET } from './items.ts';
import { downstreamNames, endKinds, lastPlaceKinds, openingKinds } from './kind-roles.ts';
import {
  type Item,
  isPlaceGuessed,
  liveItems,
  PLACE_GUESSED,
  type Reading,
  type RunState,
  SAME_PLACE,
} from './reading.ts';

/** A place said so many sentences before or after what ends the run may be its place. */
const BEFORE_SENTENCES = 3;
const AFTER_SENTENCES = 2;
type Point = RunState['track'][number];

/** Further on than this, in feet, the camera went on. */
const PAST_FEET = 2;
/** A place this much beyond all others, in feet, is no reading of the counter. */
export const LEAP_FEET = 60;

export function settleEnds(reading: Reading): void {
  for (const run of reading.runs) {
    const items = liveItems(reading, run.n).filter((item) => !item.evidence.isOnWayBack);
    const ends = items.filter((item) => endKinds[item.kind] !== undefined && item.status === 'present');
    for (const one of ends) doubtPassed(reading, run, one, items);
    const end = ends.findLast((item) => !item.isWithdrawn);
    if (!end) continue;
    // "As far as I get, and I never saw the house": the line goes on, so it did not end there.
    const shortOf = items.some((item) => lastPlaceKinds.has(item.kind) && item.status === 'present');
    const instead = downstreamNames.get(end.kind);
    if (shortOf && instead && end.evidence.source === 'sign') end.kind = instead;
    const beside = furthestBeside(reading, run, end, items);
    if (beside !== null) moveEnd(end, beside, items);
    else doubtBorrowed(end);
  }
}

/** The furthest place of the run, where it was said near what ends it and further on than the place that was given so far. */
function furthestBeside(reading: Reading, run: RunState, end: Item, items: readonly Item[]): Point | null {
  if (end.basis === 'spoken' || end.basis === 'relative' || end.corrected.length > 0) return null;
  const known = Math.max(0, ...items.filter((item) => item !== end).map((item) => item.at ?? 0));
  // Going over it all, a talk names places found before, in this run or another.
  const isRepeated = (point: Point): boolean =>
    point.sentence > end.sentence &&
    reading.items.some((item) => item !== end && item.sentence < point.sentence && item.at === point.feet);
  // "Ninety. No, thirty. Roots at thirty three.": the camera was never there.
  const isFallenFrom = (point: Point): boolean =>
    run.track.some(
      (later) =>
        later.isOut &&
        later.token > point.token &&
        later.sentence <= end.sentence &&
        later.feet < point.feet - PAST_FEET,
    );
  const near = run.track.filter(
    (point) =>
      point.isOut &&
      point.sentence - end.sentence >= -BEFORE_SENTENCES &&
      point.sentence - end.sentence <= AFTER_SENTENCES &&
      !isRepeated(point) &&
      !isFallenFrom(point),
  );
  const furthest = near.reduce<Point | null>(
    (best, point) => (point.feet <= known + LEAP_FEET && point.feet > (best?.feet ?? 0) ? point : best),
    null,
  );
  return furthest && furthest.feet >= known && furthest.feet > (end.at ?? 0) + SAME_FEET ? furthest : null;
}

function moveEnd(end: Item, place: Point, items: readonly Item[]): void {
  const isOfAnother = items.some((item) => item !== end && item.at === place.feet && item.basis === 'spoken');
  end.at = place.feet;
  end.basis = 'nearby';
  end.evidence.placeRule =
    place.sentence < end.sentence ? 'place said before (furthest)' : 'place said after (furthest)';
  end.evidence.placeSentences = Math.abs(place.sentence - end.sentence);
  end.flags = end.flags.filter((flag) => flag.about !== 'at');
  if (isOfAnother && !end.evidence.notes.includes(PLACE_GUESSED)) end.evidence.notes.push(PLACE_GUESSED);
}

/** "You never forget to say where it stopped", with twenty feet of findings after it: nothing ended there. */
function doubtPassed(reading: Reading, run: RunState, end: Item, items: readonly Item[]): void {
  const past = items.find(
    (item) => item.sentence > end.sentence && item.at !== null && end.at !== null && item.at > end.at + PAST_FEET,
  );
  if (!past) return;
  // "There's a manhole on the corner": spoken of on the way, and not even given a place.
  if (openingKinds.has(end.kind) && isPlaceGuessed(end) && end.evidence.placeRule === SAME_PLACE) {
    end.isWithdrawn = true;
    if (run.end?.reason === endKinds[end.kind]) run.end = null;
  } else
    end.flags.push({
      reason: 'word-unsure',
      about: 'kind',
      detail: `the camera went on to ${past.at} ${reading.phrases.unit} after it`,
    });
}

/** "I never saw the main": what lies at the end of its run is there, however long after it is told. */
export function placeAtEnd(reading: Reading, run: RunState): void {
  const at = run.end?.at ?? null;
  if (at === null) return;
  for (const item of liveItems(reading, run.n)) {
    if (!lastPlaceKinds.has(item.kind) || item.basis === 'spoken') continue;
    item.at = at;
    item.basis = 'nearby';
    item.evidence.placeRule = 'where its run ends';
    item.evidence.placeSentences = 0;
    item.evidence.isOnWayBack = false;
    item.evidence.notes = item.evidence.notes.filter((note) => note !== PLACE_GUESSED);
    item.flags = item.flags.filter((flag) => flag.about !== 'at');
    if (run.end?.reason !== 'stopped') item.evidence.notes.push(PLACE_GUESSED);
  }
}

/** "The main is across the road": named without a number and without pointing at it, it may well not be where the last thing was. */
function doubtBorrowed(end: Item): void {
  if (!openingKinds.has(end.kind) || end.evidence.hasExistential || end.basis !== 'nearby') return;
  if (isPlaceGuessed(end) && end.evidence.placeRule === SAME_PLACE)
    end.flags.push({ reason: 'distance-unsure', about: 'at', detail: 'no distance was said with it' });
}
