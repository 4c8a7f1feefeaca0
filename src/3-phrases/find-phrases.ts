/**
 * Words in, phrases out: every stretch of the talk that a rule gives a meaning, with the rule that did.
 *
 * Each family reads for itself: things and materials by the vocabulary, cues by their lexicons, numbers by the number
 * grammar. What a number is *for* is then asked of the families in a fixed order, surest frame first: clock, angle,
 * share, size, count, place. A number that none claims stays a number and gives no finding.
 *
 * This stage refuses to decide anything about findings: it does not know runs, places in the pipe or earlier sentences.
 */
import type { Word } from '../../shared/schemas/word.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import type { Unit } from '../../shared/wording/short.ts';
import { readAngle, readNamedAngle } from './angle/read-angle.ts';
import { assertionCues, pseudoCues } from './assertion/lexicon.ts';
import { cameraCues, headings, notCameraCues, notHeadings } from './camera/lexicon.ts';
import { hoursBesidePlaces } from './clock/clock-beside-place.ts';
import { readClock } from './clock/read-clock.ts';
import { correctionCues, notCorrections } from './correction/lexicon.ts';
import { readCount, readLength, readLengthAtUnit } from './count/read-count.ts';
import { degreeWords, notDegrees } from './degree/lexicon.ts';
import { counterUnitOf, inCounterUnit } from './distance/counter-unit.ts';
import { readPlaceAtUnit } from './distance/place-at-unit.ts';
import { joinPlaces, readWordPlaces } from './distance/read-distances.ts';
import { type Place, readPlace } from './distance/read-place.ts';
import { addTurns, joinPastHundred } from './distance/roll-over.ts';
import { buildCueFinder, findCues } from './lexicon/find-cues.ts';
import { respellInch } from './number/misheard-inch.ts';
import { respellTo } from './number/misheard-to.ts';
import { type NumberPhrase, readNumbers } from './number/read-number.ts';
import type { Phrase } from './phrase.ts';
import { notPositions, positionWords } from './position/lexicon.ts';
import { readShare } from './share/read-share.ts';
import { respellMetricPipe } from './size/metric-pipe.ts';
import { readBareSize, type SizePhrase } from './size/read-bare-size.ts';
import { readSize, readSizeAtUnit } from './size/read-size.ts';
import { findThings, type Thing } from './thing/find-things.ts';
import { frameTest } from './thing/frame.ts';
import { cutTokens, type Token } from './token/token.ts';

const measuredKinds: ReadonlySet<string> = new Set(
  kinds.filter((kind) => (kind.takes as readonly string[]).includes('inches')).map((kind) => kind.name),
);

export interface Phrases {
  readonly tokens: readonly Token[];
  readonly numbers: readonly NumberPhrase[];
  readonly phrases: readonly Phrase[];
  /** What the counter shows; every place is in it. */
  readonly unit: Unit;
}

const listed = <Value extends string>(words: Readonly<Record<Value, readonly string[]>>) =>
  (Object.entries(words) as [Value, readonly string[]][]).map(([cue, list]) => ({ cue, words: list }));

const positionFinder = buildCueFinder(listed(positionWords), notPositions);
const degreeFinder = buildCueFinder(listed(degreeWords), notDegrees);
const assertionFinder = buildCueFinder(assertionCues, pseudoCues);
const correctionFinder = buildCueFinder(correctionCues, notCorrections);
const cameraFinder = buildCueFinder(cameraCues, notCameraCues);
const headingFinder = buildCueFinder(
  headings.map((heading) => ({ cue: heading, words: heading.words })),
  notHeadings,
);

/** Reads all phrases of a talk, in order of their first token. Never throws on any words. */
export function findPhrases(words: readonly Word[]): Phrases {
  const spelled = respellMetricPipe(respellInch(respellTo(cutTokens(words))));
  const numbers = joinPastHundred(spelled, readNumbers(spelled));
  const unit = counterUnitOf(spelled, numbers);
  const tokens = inCounterUnit(spelled, numbers, unit);
  const things = findThings(tokens, frameTest(tokens, numbers), numbers);
  const positions = findCues(positionFinder, tokens)
    .filter((match) => !isFiller(tokens, match))
    .map(
      (match): Phrase => ({
        family: 'position',
        position: match.cue,
        from: match.from,
        to: match.to,
        rule: match.rule,
      }),
    );
  const corrections = findCues(correctionFinder, tokens);
  // "I read it bad": the word belongs to the correction.
  const inCorrection = (match: { from: number; to: number }): boolean =>
    corrections.some((cue) => cue.from <= match.from && cue.to >= match.to);
  const degrees = findCues(degreeFinder, tokens)
    .filter((match) => !inCorrection(match))
    .map(
      (match): Phrase => ({ family: 'degree', degree: match.cue, from: match.from, to: match.to, rule: match.rule }),
    );
  const named = [...things, ...positions, ...degrees];
  const starts = new Set(named.map((phrase) => phrase.from));
  const ends = new Set(named.map((phrase) => phrase.to));
  const materialStarts = new Set(things.filter((thing) => thing.family === 'material').map((thing) => thing.from));
  const materialEnds = new Set(things.filter((thing) => thing.family === 'material').map((thing) => thing.to));
  const inThing = new Array<boolean>(tokens.length).fill(false);
  // Numbers inside a description ("standing three inches into the pipe") are read; those inside a name ("SDR 35") are not.
  for (const thing of things)
    if (thing.family !== 'thing' || thing.source === 'word') inThing.fill(true, thing.from, thing.to);

  const measured: Phrase[] = [];
  const places: Place[] = [];
  const sizeContext = {
    tokens,
    materialStartsAt: (index: number) => materialStarts.has(index),
    materialEndsAt: (index: number) => materialEnds.has(index),
    ...pipeTalkTests(tokens, things),
  };
  const placeContext = {
    tokens,
    startsPhraseAt: (index: number) => starts.has(index),
    endsPhraseAt: (index: number) => ends.has(index),
  };
  let lastAngleTo = -1;
  let lastSize: SizePhrase | null = null;
  let readTo = 0;
  for (let index = 0; index < numbers.length; index += 1) {
    const number = numbers[index]!;
    if (inThing[number.from] || number.from < readTo) continue;
    const clock = readClock(tokens, numbers, index);
    if (clock) {
      measured.push(clock.phrase);
      index += clock.used - 1;
      continue;
    }
    if (isCountOfThings(tokens, things, number)) continue;
    const angle = readAngle(tokens, number, lastAngleTo);
    if (angle) lastAngleTo = angle.to;
    const phrase: Phrase | null =
      angle ??
      readBareSize(sizeContext, number, lastSize) ??
      readShare(tokens, number) ??
      readSize(sizeContext, number) ??
      readLength(tokens, number) ??
      readCount(tokens, number);
    lastSize = phrase?.family === 'inches' || phrase?.family === 'diameter' ? phrase : null;
    if (phrase) {
      measured.push(phrase);
      readTo = phrase.to;
    } else {
      const place = readPlace(placeContext, number);
      if (place) places.push(place);
    }
  }
  const inNumber = new Array<boolean>(tokens.length).fill(false);
  for (const number of numbers) inNumber.fill(true, number.from, number.to);
  const numberEnds = new Set(numbers.map((number) => number.to));
  tokens.forEach((_, at) => {
    const named = readNamedAngle(tokens, at);
    if (named) measured.push(named);
    if (inNumber[at]) return;
    const isCounted =
      numberEnds.has(at) ||
      (numberEnds.has(at - 1) &&
        tokens[at - 2]?.breakAfter === 'none' &&
        /^(an|of)$/.test(tokens[at - 1]?.text ?? '')) ||
      (numberEnds.has(at - 2) && tokens[at - 2]?.text === 'of');
    const size = isCounted ? null : readSizeAtUnit(sizeContext, at);
    if (size) measured.push(size);
    const length = isCounted ? null : readLengthAtUnit(tokens, at);
    if (length) measured.push(length);
    const place = isCounted || length ? null : readPlaceAtUnit(tokens, at);
    if (place) places.push(place);
  });
  places.sort((a, b) => a.from - b.from || b.to - a.to);
  // "ten foot six", "eighteen feet and a half": what completes a place is no place and no share of its own.
  const whole = places.filter((place, index) => !places.slice(0, index).some((other) => other.to >= place.to));
  const sizes = measured.filter((phrase) => phrase.family === 'inches' || phrase.family === 'diameter');
  const covers = (other: { from: number; to: number }, phrase: Phrase): boolean =>
    other.from <= phrase.from && other.to >= phrase.to;
  // Nor is the half of "two inches and a half of it" a share.
  const free = measured.filter(
    (phrase) =>
      phrase.family !== 'share' ||
      !(
        (phrase.isBare && whole.some((place) => covers(place, phrase))) ||
        sizes.some((size) => size.from < phrase.from && size.to > phrase.from)
      ),
  );

  const camera = findCues(cameraFinder, tokens);
  // The number of a run ("survey two") is no place.
  const announced = camera.filter((match) => match.cue === 'next-run');
  const isAnnounced = (phrase: Phrase): boolean =>
    phrase.family === 'distance' && announced.some((match) => match.from <= phrase.from && match.to >= phrase.to);

  const holdsThing = (from: number, to: number): boolean =>
    things.some((thing) => thing.family === 'thing' && thing.source === 'word' && thing.from >= from && thing.to <= to);
  const firstThing = (from: number, to: number): Thing | undefined =>
    things.find((thing) => thing.from >= from && thing.to <= to);
  const joined = joinPlaces(tokens, whole, holdsThing, firstThing).filter((place) => !isAnnounced(place));
  // "From zero to seven" denies nothing.
  const isNought = (match: { from: number; to: number; rule: string }): boolean =>
    match.rule === 'zero' && joined.some((place) => place.from <= match.from && place.to >= match.to);
  const phrases: Phrase[] = [
    ...named,
    ...free,
    ...joined,
    ...readWordPlaces(tokens),
    ...findCues(headingFinder, tokens).map(
      (match): Phrase => ({
        family: 'heading',
        direction: match.cue.direction,
        isPlain: match.cue.isPlain,
        from: match.from,
        to: match.to,
        rule: match.rule,
      }),
    ),
    ...findCues(assertionFinder, tokens)
      .filter(
        (match) =>
          !isNought(match) &&
          !numbers.some((number) => number.to - number.from > 1 && number.from <= match.from && number.to >= match.to),
      )
      .map(
        (match): Phrase => ({ family: 'assertion', cue: match.cue, from: match.from, to: match.to, rule: match.rule }),
      ),
    ...corrections.map(
      (match): Phrase => ({ family: 'correction', cue: match.cue, from: match.from, to: match.to, rule: match.rule }),
    ),
    ...camera.map(
      (match): Phrase => ({ family: 'camera', cue: match.cue, from: match.from, to: match.to, rule: match.rule }),
    ),
  ];
  phrases.sort((a, b) => a.from - b.from || b.to - a.to);
  return { tokens, numbers, phrases: addTurns(tokens, hoursBesidePlaces(tokens, phrases)), unit };
}

/** "Right, here we go": the word opens the sentence and names no side. */
const isFiller = (tokens: readonly Token[], match: { from: number; to: number }): boolean =>
  match.to - match.from === 1 &&
  tokens[match.from]?.text === 'right' &&
  tokens[match.from]?.breakAfter === 'comma' &&
  (match.from === 0 || /^(stop|question)$/.test(tokens[match.from - 1]!.breakAfter));

/** How many of one thing are named in one breath at most. */
const MOST_AT_ONCE = 6;

/** "Two wyes", "three couplings": how many there are, not where. */
function isCountOfThings(tokens: readonly Token[], things: readonly Thing[], number: NumberPhrase): boolean {
  if (number.value < 2 || number.value > MOST_AT_ONCE || tokens[number.to - 1]?.breakAfter !== 'none') return false;
  if (/^(at|says|reads)$/.test(tokens[number.from - 1]?.text ?? '')) return false;
  const thing = things.find((other) => other.from === number.to && other.family === 'thing' && other.source === 'word');
  return thing !== undefined && /[^s]s$/.test(tokens[thing.to - 1]?.text ?? '');
}

/** Whether the sentence round a token names a material and nothing that is measured in inches, and the other way round. */
function pipeTalkTests(
  tokens: readonly Token[],
  things: readonly Thing[],
): { isPipeTalk: (index: number) => boolean; isDefectTalk: (index: number) => boolean } {
  const sentenceOf: number[] = [];
  let sentence = 0;
  for (const token of tokens) {
    sentenceOf.push(sentence);
    if (token.breakAfter === 'stop' || token.breakAfter === 'question') sentence += 1;
  }
  const withMaterial = new Set<number>();
  const withDefect = new Set<number>();
  for (const thing of things) {
    const index = sentenceOf[thing.from] ?? -1;
    if (thing.family === 'material') withMaterial.add(index);
    if (thing.family === 'thing' && measuredKinds.has(thing.kind)) withDefect.add(index);
  }
  const holds = (set: ReadonlySet<number>, index: number): boolean => set.has(sentenceOf[index] ?? -1);
  return {
    isPipeTalk: (index) => holds(withMaterial, index) && !holds(withDefect, index),
    isDefectTalk: (index) => holds(withDefect, index) && !holds(withMaterial, index),
  };
}
