/**
 * What was given no place gets the likeliest, for the inspector to look at: a number near it that nothing else was read from, or
 * where the camera was just then. A guess is always flagged.
 */

import type { Phrase } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import { limitKinds, neverAtStart, placelessKinds } from './kind-roles.ts';
import { placeOffers } from './offer-places.ts';
import { type Item, isPlaceGuessed, liveItems, NO_PLACE, PLACE_GUESSED, type Reading, SAME_PLACE } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** The sentences round a thing in which a number is looked for, the likeliest first. */
const NEAR = [0, 1, -1, 2, -2] as const;
/** Nobody says nothing for longer than this, in feet: a number further on is no counter reading. */
const AHEAD_FEET = 40;
const SLACK_FEET = 0.6;
/** Smaller bare numbers mostly count something. */
const LEAST_FEET = 2;

const otherAmounts = /^(clock|angle|share|inches|diameter|count|length|relative|distance|thing)$/;

export function guessPlaces(reading: Reading): void {
  for (const run of reading.runs) {
    const items = liveItems(reading, run.n);
    items.forEach((item, index) => {
      const isMissing = item.at === null && !placelessKinds.has(item.kind) && NO_PLACE.test(item.evidence.placeRule);
      const isBorrowed = item.evidence.placeRule === SAME_PLACE && isPlaceGuessed(item);
      if (item.evidence.isOnWayBack || !(isMissing || isBorrowed)) return;
      const before = items.slice(0, index).findLast((other) => other.at !== null);
      const after = items.slice(index + 1).find((other) => other.at !== null && !isPlaceGuessed(other));
      const least = Math.max(LEAST_FEET, (before?.fields.to ?? before?.at ?? 0) - SLACK_FEET);
      const most = Math.min((after?.at ?? Number.POSITIVE_INFINITY) + SLACK_FEET, least + AHEAD_FEET);
      const under = isMissing && kindTakes(item.kind, 'to') ? lostIn(items, index) : undefined;
      if (under) item.fields.to = under.fields.to;
      const said = under?.at ?? saidNear(reading, item, isBorrowed ? [0] : NEAR, least, most);
      const feet = said ?? (isMissing ? whereCameraWas(reading, item, before) : null);
      // A lone ending is likelier the place than where the run begins.
      const isStart = feet === 0 && (neverAtStart.has(item.kind) || (said === null && item.fields.to !== null));
      if (feet === null || feet === item.at || isStart) return;
      item.at = feet;
      item.basis = said === null ? 'track' : 'nearby';
      if (item.fields.to !== null && (item.fields.to <= feet || !kindTakes(item.kind, 'to'))) item.fields.to = null;
      item.evidence.placeRule = said === null ? 'where the camera was' : 'a number near it';
      if (!isPlaceGuessed(item)) item.evidence.notes.push(PLACE_GUESSED);
      item.flags.push({
        reason: 'distance-unsure',
        about: 'at',
        detail:
          said === null ? 'no distance was said; the camera was about here' : 'a number said near it may be its place',
        offers: placeOffers(feet),
      });
    });
  }
}

/** So soon after a stretch, in sentences, the camera is lost in it. */
const LOST_SENTENCES = 2;

/** "It sags here. Under at twenty one, out at twenty six.": the stretch in which nothing was seen is the sag's. */
const lostIn = (items: readonly Item[], index: number): Item | undefined =>
  items
    .slice(index + 1)
    .find(
      (other) =>
        other.sentence - items[index]!.sentence <= LOST_SENTENCES &&
        limitKinds.has(other.kind) &&
        other.at !== null &&
        other.fields.to !== null,
    );

/** A number near an item that may be a counter reading and that nothing was read from. */
function saidNear(reading: Reading, item: Item, near: readonly number[], least: number, most: number): number | null {
  for (const step of near) {
    const sentence = reading.sentences[item.sentence + step];
    if (sentence === undefined || (step !== 0 && isOfAnother(reading, sentence, item))) continue;
    // Where it ends is not where it begins.
    const fits = looseNumbers(reading, sentence).filter(
      (feet) => feet >= least && feet <= most && feet !== item.fields.to,
    );
    if (fits.length > 0) return fits.at(-1)!;
  }
  return null;
}

/** Whether a sentence has given something else its place. */
const isOfAnother = (reading: Reading, sentence: Sentence, item: Item): boolean =>
  reading.items.some(
    (other) => other !== item && !other.isWithdrawn && other.sentence === sentence.index && other.basis === 'spoken',
  );

function looseNumbers(reading: Reading, sentence: Sentence): number[] {
  const places = sentence.phrases.flatMap((phrase) => (phrase.family === 'distance' ? [phrase.distance.feet] : []));
  const covers = (phrase: Phrase, from: number, to: number): boolean =>
    otherAmounts.test(phrase.family) && phrase.from <= from && phrase.to >= to;
  const unread = reading.phrases.numbers
    .filter(
      (number) =>
        number.from >= sentence.from &&
        number.to <= sentence.to &&
        !number.isFraction &&
        !number.isFourFigure &&
        !number.isVague &&
        !sentence.phrases.some((phrase) => covers(phrase, number.from, number.to)),
    )
    .map((number) => number.value);
  return [...places, ...unread];
}

/** The last reading of the counter before an item in its run, or the place of what was found before it. */
function whereCameraWas(reading: Reading, item: Item, before: Item | undefined): number | null {
  const run = reading.runs.find((other) => other.n === item.run);
  const last = run?.track.findLast((point) => point.token < item.from);
  const feet = before?.fields.to ?? before?.at ?? null;
  return last === undefined ? feet : last.feet;
}
