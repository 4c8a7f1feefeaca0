/** Where the camera is while the talk is read: pushed on again, parked, or past what can be. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Claim } from './claim.ts';
import { currentRun, type Reading } from './reading.ts';
import { resolveRelative } from './resolve-relative.ts';
import type { Sentence } from './sentence.ts';

/** A reading beyond everything reached so far means that the camera is being pushed on again. */
export function resumeOutward(reading: Reading, sentence: Sentence): void {
  const run = currentRun(reading);
  if (!run || run.way === 'out' || reading.isSummary || run.end !== null) return;
  const names = sentence.phrases.some(({ family }) => family === 'thing' || family === 'material');
  // "Forty even.": a number that is all there is to the sentence is read off the counter.
  const isAlone = sentence.to - sentence.from <= ALONE_TOKENS;
  if (
    phrasesOf(sentence.phrases, 'distance').some(
      ({ distance }) =>
        distance.feet > run.furthest + 1 &&
        (distance.frame !== 'bare' || ((names || isAlone) && distance.feet < run.furthest + FAR_FEET)),
    )
  )
    run.way = 'out';
}

const ALONE_TOKENS = 3;
/** A bare number this far beyond everything reached so far, in feet, is no counter reading (a room, a house number). */
const FAR_FEET = 90;

export function dropFarPlaces(reading: Reading, claims: readonly Claim[]): void {
  const run = currentRun(reading);
  for (const claim of claims) {
    const isFar =
      claim.place !== null &&
      claim.place.distance.frame === 'bare' &&
      claim.place.distance.feet > (run?.furthest ?? 0) + FAR_FEET;
    if (isFar) claim.place = null;
  }
}

/** The place of a landmark stands this near its verb, in tokens ("the sidewalk is at about twelve"). */
const LANDMARK_TOKENS = 5;

export function noteLandmarks(reading: Reading, sentence: Sentence, claims: readonly Claim[]): void {
  const run = currentRun(reading);
  const { tokens } = reading.phrases;
  if (!run || claims.length > 0) return;
  for (const place of phrasesOf(sentence.phrases, 'distance')) {
    const before = tokens.slice(sentence.from, place.from).map((token) => token.text);
    const verb = before.findLastIndex((word) => /^(is|'s|ends|starts|begins|sits)$/.test(word));
    // "By seven feet only half the pipe is left, and it lets up at nine.": the verb tells of something else.
    if (verb < 1 || before.length - verb > LANDMARK_TOKENS) continue;
    const words = before
      .slice(Math.max(0, verb - 2), verb)
      .filter(
        (word) =>
          !/^(the|a|an|of|near|far|edge|he|says|that|it|and|so|okay|now|then|there|here|this|i|we|they|yeah|well|again)$/.test(
            word,
          ),
      );
    if (words.length > 0)
      run.landmarks.push({ words: words.join(' '), feet: place.distance.feet, sentence: sentence.index });
  }
}

export function advance(
  reading: Reading,
  sentence: Sentence,
  isUsed: boolean,
  isFollowUp: boolean,
  claimCount: number,
): void {
  const run = currentRun(reading);
  if (!run) return;
  const isTalk = phrasesOf(sentence.phrases, 'assertion').some((phrase) =>
    /^(general|past|planned|elsewhere)$/.test(phrase.cue.axis),
  );
  if (isTalk && !isUsed) return;
  const places = phrasesOf(sentence.phrases, 'distance');
  // A summary repeats places of every run: the camera is at none of them.
  for (const place of reading.isSummary ? [] : places) {
    const read = { sentence: sentence.index, isOut: run.way === 'out' };
    run.track.push({ token: place.from, feet: place.distance.feet, ...read });
    if (place.distance.toFeet !== null) run.track.push({ token: place.to - 1, feet: place.distance.toFeet, ...read });
  }
  const last = places.at(-1);
  if (last) {
    const feet = last.distance.toFeet ?? last.distance.feet;
    run.here = feet;
    if (run.way === 'out' && !reading.isSummary) run.furthest = Math.max(run.furthest, feet);
  }
  const staysPut = phrasesOf(sentence.phrases, 'relative').some((phrase) => phrase.relative.shape === 'same');
  if (staysPut && reading.pending && claimCount === 0)
    reading.pending = { ...reading.pending, sentence: sentence.index };
  if (isUsed) reading.pending = null;
  else if (last && !isFollowUp && claimCount === 0 && last.distance.isEnd !== true) {
    reading.pending = {
      feet: last.distance.feet,
      toFeet: last.distance.toFeet,
      sentence: sentence.index,
      token: last.from,
      rule: last.rule,
    };
  } else if (!last && !isFollowUp && claimCount === 0) stepOn(reading, sentence);
}

/** A sentence that only says how far the camera goes on holds little else. */
const STEP_TOKENS = 9;

const goingOn =
  /^(and |then |now |okay |so |alright )*(on|go|going|we|i|push|pushing|move|moving|down|up|just|only|another)\b/;

/** "Three feet further." stands alone: what is named next is there. */
function stepOn(reading: Reading, sentence: Sentence): void {
  const run = currentRun(reading);
  const step = phrasesOf(sentence.phrases, 'relative').find(
    ({ relative }) => relative.shape === 'offset' && relative.feet !== null && relative.feet > 0,
  );
  if (!run || !step || run.way !== 'out' || sentence.isQuestion || sentence.to - sentence.from > STEP_TOKENS) return;
  if (step.from - sentence.from > 2 && !goingOn.test(sentence.text)) return;
  const placing = resolveRelative(reading, run, step, null);
  if (placing?.at == null) return;
  run.here = placing.at;
  run.furthest = Math.max(run.furthest, placing.at);
  reading.pending = {
    feet: placing.at,
    toFeet: null,
    sentence: sentence.index,
    token: step.from,
    rule: step.rule,
  };
}
