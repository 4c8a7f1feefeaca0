/**
 * Phrases in, observations out.
 *
 * The talk is read sentence by sentence, once, in order. Each sentence is first asked what it says of the camera (a run
 * starts, the camera comes back, all is summed up), then what it takes back or replaces, then which things it claims and
 * where, and last what is left over: sizes, places and answers that belong to something named before. A thing spoken of
 * again is added to what is known, never listed twice.
 *
 * Nothing is dropped: every token ends with an owner, if only "set aside" with a reason. Nothing is guessed in silence: each
 * item carries the evidence it rests on, and doubt is weighed from that evidence in a later step.
 */

import type { Phrases } from '../3-phrases/find-phrases.ts';
import { type Phrase, phrasesOf } from '../3-phrases/phrase.ts';
import type { Claim } from './claim.ts';
import type { CloseReading } from './close/read-closely.ts';
import { correctField } from './correct-field.ts';
import { findDeniedValues } from './denied-values.ts';
import { answersWithNone, isDenyingHeading } from './deny-kind.ts';
import { disownsName } from './disown-name.ts';
import { giveAttributes, type LoosePhrase } from './give-attributes.ts';
import { mentionAgain, SAME_FEET } from './items.ts';
import { openingKinds, placelessKinds } from './kind-roles.ts';
import { doubtLast } from './later-doubt.ts';
import { needsRun } from './needs-run.ts';
import { openingCorrection } from './opening-correction.ts';
import { fieldOf } from './phrase-value.ts';
import { readPipeAhead } from './pipe-ahead.ts';
import { planPlaces } from './plan-places.ts';
import { advance, dropFarPlaces, noteLandmarks, resumeOutward } from './read-camera-state.ts';
import { readClaim } from './read-claim.ts';
import { readClaims, type SentenceClaims } from './read-claims.ts';
import { findReplacements, type Replacement } from './read-corrections.ts';
import { readEllipsis } from './read-ellipsis.ts';
import { givePlaces } from './read-follow-ups.ts';
import { announcesList, ONE_OF_SEVERAL, readListed } from './read-listed.ts';
import { readPipes } from './read-pipes.ts';
import { answerQuestion } from './read-questions.ts';
import { ownRunTalk, readRuns, startUnannounced } from './read-runs.ts';
import { findEnding, noticeSummary } from './read-summary.ts';
import { currentRun, type Item, own, type Reading, startReading } from './reading.ts';
import { recallPlace } from './recall-place.ts';
import { disownsPlace, restatesPlace } from './restate-place.ts';
import { takeServiceSaidBefore, takeSideSaidBefore } from './said-before.ts';
import { readSecondPlaces } from './second-places.ts';
import { cutSentences, type Sentence } from './sentence.ts';
import { leanOf } from './speaker-habit.ts';
import { endsAddress, isInStreetName } from './street-names.ts';
import { givesAnew, withdraw } from './take-back.ts';
import { nameByLikeness } from './taught/name-by-likeness.ts';
import { readTaught } from './taught/read-taught.ts';

/** Reads the whole talk. */
export function gatherObservations(phrases: Phrases, close: CloseReading | null = null): Reading {
  const taught = readTaught(phrases);
  const sentences = nameByLikeness(cutSentences(phrases), taught);
  const plan = planPlaces(sentences, phrases, leanOf(phrases.tokens, sentences));
  const reading = startReading(phrases, sentences, taught, close, plan, findEnding(sentences));
  for (const sentence of reading.sentences) readSentence(reading, sentence);
  return reading;
}

function readSentence(reading: Reading, whole: Sentence): void {
  const { tokens } = reading.phrases;
  const replacements = findReplacements(whole, tokens);
  const denied = findDeniedValues(whole, tokens);
  const sentence: Sentence = {
    ...whole,
    phrases: whole.phrases
      .filter(
        (phrase) =>
          !denied.includes(phrase) &&
          !namesAnchor(whole, phrase) &&
          !replacements.some((pair) => pair.old === phrase || isCorrectingNo(pair, phrase)),
      )
      .map((phrase) => replacements.find((pair) => pair.said === phrase)?.by ?? phrase),
  };
  const hadRun = currentRun(reading) !== null;
  const wasGoingOut = currentRun(reading)?.way === 'out';
  const { isRunTalk } = readRuns(reading, sentence);
  if (!isRunTalk && recallPlace(reading, whole)) return;
  resumeOutward(reading, sentence);
  const isReread =
    replacements.some((pair) => pair.old.family === 'distance' && pair.isRunOn !== true) &&
    !whole.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'material');
  const correcting =
    openingCorrection(sentence, tokens) ??
    reading.isCorrecting ??
    (isReread ? 'weak' : null) ??
    restatesPlace(reading, sentence);
  if (!answersWithNone(reading, sentence) && isDenyingHeading(sentence)) reading.denialHeading = sentence.index;
  const isDisowned = disownsPlace(reading, sentence) || givesAnew(reading, sentence) || disownsName(reading, sentence);
  answerQuestion(reading, sentence);
  const isWithdrawn = withdraw(reading, sentence, wasGoingOut);
  if (!isWithdrawn && correctField(reading, whole, denied)) {
    reading.isCorrecting = null;
    return;
  }
  const found = readClaims(sentence, tokens);
  const isBefore = currentRun(reading) === null;
  const claims = isWithdrawn
    ? []
    : found.claims.filter(
        (claim) =>
          !isAnchorOnly(sentence, claim) &&
          !isOpeningOnly(reading, claim, isRunTalk) &&
          !isShutOpening(claim, found.claims) &&
          !endsAddress(reading.phrases, claim.to - 1, isBefore) &&
          !isInStreetName(reading.phrases, claim.from, claim.to, sentence.from),
      );
  if (announcesList(reading, sentence, claims)) claims.length = 0;
  const listed = readListed(reading, sentence, claims);
  if (listed.length > 0) claims.splice(0, claims.length, ...listed);
  claims.push(...readSecondPlaces(sentence, claims, tokens));
  if (reading.listed?.sentence !== sentence.index) claims.push(...readEllipsis(reading, sentence, claims));
  const seen = { claims, loose: found.loose };
  if (currentRun(reading) === null && !isWithdrawn && needsRun(reading, sentence, claims))
    startUnannounced(reading, sentence);
  if (!hadRun && currentRun(reading)) readPipeAhead(reading, sentence);
  noticeSummary(reading, sentence, claims);
  noteLandmarks(reading, sentence, claims);
  const isPipeTalk = !isWithdrawn && readPipes(reading, sentence, seen, isRunTalk);
  const touched: Item[] = [];
  dropFarPlaces(reading, claims);
  for (const claim of claims) {
    const item = readClaim(reading, sentence, claim, claims, correcting, replacements);
    if (item) touched.push(item);
    if (item && reading.listed && claim.rule === ONE_OF_SEVERAL)
      mentionAgain(reading, item, reading.listed.from, reading.listed.to);
    if (item) reading.latest = item;
  }
  if (touched.length === 0 && claims.length === 0) doubtLast(reading, sentence);
  const earlier = sentence.index - reading.focusSentence <= 2 ? reading.focus : [];
  if (touched.length > 0) {
    takeServiceSaidBefore(reading, sentence, touched);
    takeSideSaidBefore(reading, sentence, touched);
    reading.focus =
      reading.focusSentence === sentence.index
        ? [...reading.focus.filter((item) => !touched.includes(item)), ...touched]
        : touched;
    reading.focusSentence = sentence.index;
    reading.lastValue = lastValueOf(touched.at(-1)!, sentence.index);
  }
  let isFollowUp = false;
  if (!isRunTalk && !isWithdrawn && currentRun(reading) && !reading.isSummary) {
    const takesPlaces = touched.length === 0 && !isPipeTalk;
    // "No, make that thirty three feet, about half an inch": the place is corrected before the size becomes the last value.
    const isCorrected = takesPlaces && correcting !== null && givePlaces(reading, sentence, correcting);
    const loose = saidFirst(sentence, found, claims, touched);
    for (const { phrase } of loose) reading.unclaimed.set(phrase, sentence);
    isFollowUp = giveAttributes(reading, sentence, loose, correcting, earlier) || isCorrected;
    if (takesPlaces && !isCorrected) isFollowUp = givePlaces(reading, sentence, correcting) || isFollowUp;
  }
  const lastPlace = phrasesOf(sentence.phrases, 'distance').at(-1)?.distance;
  const isPlaceUsed =
    lastPlace === undefined || isPipeTalk || touched.some((item) => usesPlace(item, lastPlace.feet, lastPlace.toFeet));
  advance(
    reading,
    sentence,
    (touched.length > 0 || isPipeTalk) && isPlaceUsed,
    isFollowUp,
    isPlaceUsed ? claims.length : 0,
  );
  // "Absent: roots. Grease. Offsets." goes on while things are only named.
  const isListing = reading.denialHeading === sentence.index - 1 && touched.length === 0 && claims.length > 0;
  if (isListing && sentence.to - sentence.from <= 4) reading.denialHeading = sentence.index;
  reading.isCorrecting = isDisowned ? 'strong' : isOnlyCorrection(sentence) ? (correcting ?? 'weak') : null;
  if (isRunTalk) ownRunTalk(reading, sentence);
  ownRest(reading, sentence, touched, isPipeTalk);
}

/** "Goes down to the right, and the liner starts": what stands before the first thing may be of the thing before. */
function saidFirst(
  sentence: Sentence,
  found: SentenceClaims,
  claims: readonly Claim[],
  touched: readonly Item[],
): readonly LoosePhrase[] {
  // "A rusty one, lying on the bottom": an everyday word that was not believed leaves what was said with it.
  const isUnbelieved = touched.length === 0 && claims.length > 0 && claims.every((claim) => claim.source === 'weak');
  const loose = isUnbelieved ? sentence.phrases.filter((phrase) => fieldOf(phrase) !== null) : found.loose;
  return loose.map((phrase) => ({
    phrase,
    isAhead: touched.length > 0 && claims.every((claim) => claim.from >= phrase.to),
  }));
}

/** "Three feet into the iron": the material says from where it is counted, not what the pipe is now. */
const namesAnchor = ({ phrases }: Sentence, phrase: Phrase): boolean =>
  phrase.family === 'material' && isInAnchor(phrases, phrase);

const isInAnchor = (phrases: readonly Phrase[], { from, to }: { from: number; to: number }): boolean =>
  phrasesOf(phrases, 'relative').some(
    ({ relative: { anchor, shape } }) =>
      anchor !== null && /^(offset|inside)$/.test(shape) && anchor.from <= from && anchor.to >= to,
  );

/** "Four past the wye there's a crack": the wye was found before, and is only counted from. */
const isAnchorOnly = ({ phrases }: Sentence, claim: Claim): boolean =>
  claim.things.every((thing) => isInAnchor(phrases, thing));

/** "From 18 to 24, no, make it 26": the "no" takes back a value and denies nothing. */
const isCorrectingNo = (pair: Replacement, phrase: Phrase): boolean =>
  phrase.family === 'assertion' && phrase.from >= pair.old.to && phrase.to <= pair.said.from;

const usesPlace = (item: Item, feet: number, toFeet: number | null): boolean =>
  [item.at, item.fields.to].some(
    (value) =>
      value !== null &&
      (Math.abs(value - feet) <= SAME_FEET || (toFeet !== null && Math.abs(value - toFeet) <= SAME_FEET)),
  );

const lastValueOf = (item: Item, sentence: number): Reading['lastValue'] => ({
  item,
  field: item.fields.to !== null ? 'to' : 'at',
  sentence,
});

/** "No, let me see again.", "Sorry. Wait." */
const hesitant =
  /^((no|nope|nah|sorry|wait|hang|hold|on|actually|rather|well|or|say|i|'m|mean|let|lemme|me|us|'s|see|look|check|read|do|try|at|it|that|this|again|uh|um|oh|ah|hmm|hm|okay|one|a|the|second|sec|moment|minute|counter|number|my|please|not|isn't|right|is|closer|up|there|now)( |$))+$/;

/** "Correction.", "I read the number wrong.", "Correction to the crack." */
function isOnlyCorrection(sentence: Sentence): boolean {
  const cue = phrasesOf(sentence.phrases, 'correction').find((phrase) => phrase.cue.act === 'replace');
  // "As it should be" corrects nothing.
  if (cue === undefined || cue.rule.startsWith('should')) return false;
  const isStrong = cue.cue.strength === 'strong';
  // "Well, my boots are wet." takes nothing back.
  if (!isStrong && !hesitant.test(sentence.text)) return false;
  // "I had the wrong number at twelve." waits for the right one; "make that seven" has given it.
  const waits = /\b(wrong|mis\w+|mistake|error|bad|not|(?:correction|fix|change) (?:on|to|for|about))\b/.test(
    sentence.text,
  );
  return (
    sentence.phrases.every(
      ({ family }) =>
        family === 'correction' ||
        family === 'assertion' ||
        (isStrong && (family === 'thing' || (family === 'distance' && waits))),
    ) && sentence.to - sentence.from <= (isStrong ? 12 : 6)
  );
}

/** The opening the camera goes in by, and what it heads for, are part of the run and no finding. */
function isOpeningOnly(reading: Reading, claim: Claim, isRunTalk: boolean): boolean {
  const run = currentRun(reading);
  if (isRunTalk && claim.place === null && claim.kind !== 'no-access' && run?.furthest === 0) return true;
  if (!openingKinds.has(claim.kind)) return false;
  if (isRunTalk) return claim.place === null || claim.place.distance.feet === 0;
  return run === null;
}

/** "There's a cleanout by the drive, but I can't get the cap off": an opening that is only named because it is shut. */
const isShutOpening = (claim: Claim, claims: readonly Claim[]): boolean =>
  openingKinds.has(claim.kind) && claim.place === null && claims.some(({ kind }) => placelessKinds.has(kind));

/** Gives what is left of the sentence to the item it spoke of, or sets it aside. */
function ownRest(reading: Reading, sentence: Sentence, spokenOf: readonly Item[], isPipeTalk: boolean): void {
  const touched = [...new Set(spokenOf)].sort((a, b) => a.from - b.from);
  if (touched.length > 0) {
    touched.forEach((item, index) => {
      const until = touched[index + 1]?.from ?? sentence.to;
      own(
        reading,
        index === 0 ? sentence.from : Math.max(sentence.from, item.from),
        Math.max(sentence.from, Math.min(until, sentence.to)),
        { sort: 'item', item, isAgain: item.sentence !== sentence.index },
      );
    });
    own(reading, sentence.from, sentence.to, {
      sort: 'item',
      item: touched.at(-1)!,
      isAgain: touched.at(-1)!.sentence !== sentence.index,
    });
    return;
  }
  if (isPipeTalk) {
    const item = reading.focus.at(-1);
    if (item)
      own(reading, sentence.from, sentence.to, { sort: 'item', item, isAgain: item.sentence !== sentence.index });
  }
}
