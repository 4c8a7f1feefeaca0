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
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Assertion, assertClaim } from './assert-claim.ts';
import { type Claim, kindTakes, readClaims, setField } from './claim.ts';
import {
  addItem,
  fillFields,
  findKnown,
  mentionAgain,
  newEvidence,
  noteConflicts,
  SAME_FEET,
  withdrawItem,
} from './items.ts';
import { downstreamNames, endKinds, openingKinds, placelessKinds, weakNeeds, yieldsTo } from './kind-roles.ts';
import { type Placing, placeClaim } from './place-claim.ts';
import {
  findDeniedValues,
  findReplacements,
  goesBack,
  isWithdrawing,
  openingCorrection,
  type Replacement,
} from './read-corrections.ts';
import { giveAttributes, givePlaces } from './read-follow-ups.ts';
import { readPipes } from './read-pipes.ts';
import { ownRunTalk, readRuns, startUnannounced } from './read-runs.ts';
import { currentRun, type Item, liveItems, own, type Reading, reviveTentative, startReading } from './reading.ts';
import { cutSentences, type Sentence } from './sentence.ts';

/** Reads the whole talk. */
export function gatherObservations(phrases: Phrases): Reading {
  const reading = startReading(phrases, cutSentences(phrases));
  for (const sentence of reading.sentences) readSentence(reading, sentence);
  return reading;
}

const asksDoubtfully = (reading: Reading, sentence: Sentence, claim: Claim): boolean => {
  const { tokens } = reading.phrases;
  if (sentence.isQuestion || tokens[sentence.to - 1]?.breakAfter !== 'question') return false;
  return !tokens
    .slice((claim.things[0]?.to ?? claim.to) - 1, sentence.to - 1)
    .some((token) => token.breakAfter === 'comma');
};

const answersNo = /^(no|nope|nah|naw|not|negative)\b/;
const answersYes = /^(yes|yeah|yep|yup|sure is|it is|okay yeah|oh yeah|that 's right|correct|uhhuh|sure enough)\b/;

function readSentence(reading: Reading, whole: Sentence): void {
  const { tokens } = reading.phrases;
  const replacements = findReplacements(whole, tokens);
  const denied = findDeniedValues(whole, tokens);
  const sentence: Sentence = {
    ...whole,
    phrases: whole.phrases.filter(
      (phrase) => !denied.includes(phrase) && !replacements.some((pair) => pair.old === phrase),
    ),
  };
  const { isRunTalk } = readRuns(reading, sentence);
  resumeOutward(reading, sentence);
  const isReread =
    replacements.some((pair) => pair.old.family === 'distance') &&
    !whole.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'material');
  const correcting = openingCorrection(sentence, tokens) ?? reading.isCorrecting ?? (isReread ? 'weak' : null);
  answerQuestion(reading, sentence);
  const isWithdrawn = withdraw(reading, sentence);
  const found = readClaims(sentence, tokens);
  const claims = isWithdrawn ? [] : found.claims.filter((claim) => !isOpeningOnly(reading, claim, isRunTalk));
  claims.push(...readEllipsis(reading, sentence, claims));
  const seen = { claims, loose: found.loose };
  if (currentRun(reading) === null && needsRun(reading, sentence, claims, isWithdrawn))
    startUnannounced(reading, sentence);
  noticeSummary(reading, sentence, claims);
  noteLandmarks(reading, sentence, claims);
  const isPipeTalk = !isWithdrawn && readPipes(reading, sentence, seen, isRunTalk);
  const touched: Item[] = [];
  dropFarPlaces(reading, claims);
  for (const claim of claims) {
    const item = readClaim(reading, sentence, claim, claims, correcting, replacements);
    if (item) touched.push(item);
  }
  if (touched.length > 0) {
    reading.focus =
      reading.focusSentence === sentence.index
        ? [...reading.focus.filter((item) => !touched.includes(item)), ...touched]
        : touched;
    reading.focusSentence = sentence.index;
    reading.lastValue = lastValueOf(touched.at(-1)!, sentence.index);
  }
  let isFollowUp = false;
  if (!isRunTalk && !isWithdrawn && currentRun(reading) && !reading.isSummary) {
    isFollowUp = giveAttributes(reading, sentence, found.loose, correcting);
    if (touched.length === 0 && !isPipeTalk) isFollowUp = givePlaces(reading, sentence, correcting) || isFollowUp;
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
  reading.isCorrecting = isOnlyCorrection(sentence) ? (correcting ?? 'weak') : null;
  if (isRunTalk) ownRunTalk(reading, sentence);
  ownRest(reading, sentence, touched, isPipeTalk);
}

/** A reading beyond everything reached so far means that the camera is being pushed on again. */
function resumeOutward(reading: Reading, sentence: Sentence): void {
  const run = currentRun(reading);
  if (!run || run.way === 'out' || reading.isSummary || run.end !== null) return;
  if (
    phrasesOf(sentence.phrases, 'distance').some(
      (place) => place.distance.feet > run.furthest + 1 && place.distance.frame !== 'bare',
    )
  )
    run.way = 'out';
}

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

function isOnlyCorrection(sentence: Sentence): boolean {
  const cue = phrasesOf(sentence.phrases, 'correction').find((phrase) => phrase.cue.act === 'replace');
  return (
    cue !== undefined &&
    sentence.phrases.every((phrase) => phrase.family === 'correction' || phrase.family === 'assertion') &&
    sentence.to - sentence.from <= 6
  );
}

/** Whether a sentence finds something though no run has started. */
function needsRun(reading: Reading, sentence: Sentence, claims: readonly Claim[], isWithdrawn: boolean): boolean {
  if (isWithdrawn || sentence.isQuestion) return false;
  const { tokens } = reading.phrases;
  const isNow = (claim: Claim): boolean => {
    const assertion = assertClaim(claim, claims, sentence, tokens);
    return claim.place !== null && claim.source !== 'weak' && assertion.aside === null && !assertion.isDenied;
  };
  const hasAccess = reading.sentences
    .slice(0, sentence.index)
    .some((other) => phrasesOf(other.phrases, 'camera').some((cue) => cue.cue === 'access'));
  const isPipe =
    phrasesOf(sentence.phrases, 'material').length > 0 &&
    sentence.to - sentence.from <= 12 &&
    !phrasesOf(sentence.phrases, 'assertion').some((cue) => /^(past|general|elsewhere|planned)$/.test(cue.cue.axis));
  return hasAccess && isPipe;
}

const sumsUp =
  /^(so|okay so|alright so|ok so|well so|altogether|all told|that 's your|that 's the|so that 's|there you have|your list|my list|what you 've got|what we 've got|you 've got|tell them|tell him|tell her)\b/;

/** At the end of a run, a sentence that lists several known things without pointing at any goes over it all again. */
function noticeSummary(reading: Reading, sentence: Sentence, claims: readonly Claim[]): void {
  const run = currentRun(reading);
  if (!run || reading.isSummary || (run.way !== 'back' && run.end === null) || claims.length < 2) return;
  if (/\b(there 's|here 's|i see|we 've got|look)\b/.test(sentence.text) && !sumsUp.test(sentence.text)) return;
  const isKnown = (claim: Claim): boolean =>
    reading.items.some((item) => !item.isWithdrawn && item.kind === claim.kind);
  const places = phrasesOf(sentence.phrases, 'distance');
  const isAllKnown =
    claims.every(isKnown) &&
    places.every((place) =>
      reading.items.some(
        (item) =>
          item.at !== null &&
          !item.isWithdrawn &&
          (Math.abs(item.at - place.distance.feet) <= 1.1 ||
            (item.fields.to !== null && Math.abs(item.fields.to - place.distance.feet) <= 1.1)),
      ),
    );
  if (sumsUp.test(sentence.text) ? claims.filter(isKnown).length >= 2 : isAllKnown && claims.length >= 3)
    reading.isSummary = true;
}

/** The opening the camera goes in by, and what it heads for, are part of the run and no finding. */
function isOpeningOnly(reading: Reading, claim: Claim, isRunTalk: boolean): boolean {
  const run = currentRun(reading);
  if (isRunTalk && claim.place === null && claim.kind !== 'no-access' && run?.furthest === 0) return true;
  if (!openingKinds.has(claim.kind)) return false;
  if (isRunTalk) return claim.place === null || claim.place.distance.feet === 0;
  return run === null;
}

/** A bare number this far beyond everything reached so far, in feet, is no counter reading (a room, a house number). */
const FAR_FEET = 90;

function dropFarPlaces(reading: Reading, claims: readonly Claim[]): void {
  const run = currentRun(reading);
  for (const claim of claims) {
    const isFar =
      claim.place !== null &&
      claim.place.distance.frame === 'bare' &&
      claim.place.distance.feet > (run?.furthest ?? 0) + FAR_FEET;
    if (isFar) claim.place = null;
  }
}

/** "No roots so far. … 27, there they are": what was looked for is found. */
function pointedAgain(
  reading: Reading,
  sentence: Sentence,
  claims: readonly Claim[],
  place: PhraseOf<'distance'> | null,
): Claim | null {
  const run = currentRun(reading);
  const denied = reading.absent.at(-1);
  if (claims.length > 0 || !place || !run || !denied || denied.run !== run.n || run.way === 'back') return null;
  if (!/\b(there|here) (they|it|we|he|she) (are|is|go|goes|comes|come)\b|\bspoke too soon\b/.test(sentence.text))
    return null;
  const claim: Claim = {
    kind: denied.kind,
    source: 'word',
    rule: 'there they are',
    from: place.from,
    to: place.to,
    things: [{ from: place.from, to: place.to }],
    respelled: [],
    place,
    relative: null,
    isRelativeNearer: false,
    fields: {},
    count: 1,
    placeTokens: 1,
    isRejected: false,
  };
  for (const phrase of sentence.phrases) setField(claim.fields, phrase, claim.kind);
  return claim;
}

const another = /^(second|third|fourth|another|next|other|one)$/;

/** "Forty feet, second one, right side": the kind is that of the thing before. */
function readEllipsis(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim[] {
  const { tokens } = reading.phrases;
  const before = claims.at(-1);
  const last = reading.focus.findLast((item) => !item.isWithdrawn);
  const isFresh =
    last !== undefined &&
    sentence.index - reading.focusSentence <= 4 &&
    last.kind !== 'pipe' &&
    last.kind !== 'material-change';
  const kind = before?.kind ?? (isFresh ? last.kind : null);
  const places = phrasesOf(sentence.phrases, 'distance').filter(
    (phrase) => phrase.distance.isEnd !== true && !claims.some((claim) => claim.place === phrase),
  );
  const relatives = phrasesOf(sentence.phrases, 'relative').filter(
    (phrase) => phrase.relative.shape === 'offset' && !claims.some((claim) => claim.relative === phrase),
  );
  const pointed = pointedAgain(reading, sentence, claims, places[0] ?? null);
  if (pointed) return [pointed];
  if (kind === null || (before && before.to >= sentence.to)) return [];
  for (let at = before?.to ?? sentence.from; at < sentence.to; at += 1) {
    const text = tokens[at]?.text ?? '';
    const next = tokens[at + 1]?.text ?? '';
    const names =
      another.test(text) &&
      (/^(one|1)$/.test(next) ||
        (text === 'another' && (tokens[at]?.breakAfter !== 'none' || /^(at|here|there|on)$/.test(next))) ||
        (text === 'one' && next === 'more'));
    if (!names) continue;
    const place = before ? (places.find((phrase) => phrase.from > before.to) ?? null) : (places[0] ?? null);
    const relative = place === null ? (relatives[0] ?? null) : null;
    if (place === null && relative === null) continue;
    const claim: Claim = {
      kind,
      source: 'word',
      rule: 'another one',
      from: at,
      to: at + 1,
      things: [{ from: at, to: at + 2 }],
      respelled: [],
      place,
      relative,
      isRelativeNearer: place === null,
      fields: before ? { ...(before.fields.angleDeg !== undefined ? { angleDeg: before.fields.angleDeg } : {}) } : {},
      count: 1,
      placeTokens: 1,
      isRejected: false,
    };
    for (const phrase of sentence.phrases) if (!before || phrase.from > at) setField(claim.fields, phrase, claim.kind);
    const end = phrasesOf(sentence.phrases, 'distance').find((phrase) => phrase.distance.isEnd === true);
    const toFeet = place?.distance.toFeet ?? end?.distance.feet ?? null;
    if (toFeet !== null && kindTakes(claim.kind, 'to')) claim.fields.to = toFeet;
    return [claim];
  }
  return [];
}

function noteLandmarks(reading: Reading, sentence: Sentence, claims: readonly Claim[]): void {
  const run = currentRun(reading);
  const { tokens } = reading.phrases;
  if (!run || claims.length > 0) return;
  for (const place of phrasesOf(sentence.phrases, 'distance')) {
    const before = tokens.slice(sentence.from, place.from).map((token) => token.text);
    const verb = before.findLastIndex((word) => /^(is|'s|ends|starts|begins|sits)$/.test(word));
    if (verb < 1) continue;
    const words = before
      .slice(Math.max(0, verb - 2), verb)
      .filter((word) => !/^(the|a|an|of|near|far|edge|he|says|that|it|and|so)$/.test(word));
    if (words.length > 0)
      run.landmarks.push({ words: words.join(' '), feet: place.distance.feet, sentence: sentence.index });
  }
}

function answerQuestion(reading: Reading, sentence: Sentence): void {
  const asked = reading.asked.filter((question) => sentence.index - question.sentence <= 2);
  reading.asked = asked;
  if (asked.length === 0) return;
  if (answersYes.test(sentence.text)) {
    for (const question of asked) if (question.item) question.item.isWithdrawn = false;
    reading.asked = [];
  } else if (answersNo.test(sentence.text)) reading.asked = [];
}

/** "No, hold on, that was just a wide joint": what was said before was a mistake. */
const mistaken =
  /^(no|nope|oh no|wait|hang on|hold on|well no)\b.*\b(that was|that 's|it was|it 's|those were) (just|only|nothing but)\b/;

const mistakenWithin =
  /\b(no|wait|hang on|hold on) (hang on |hold on |wait )?(that was|that 's|it was|those were) (just|only|nothing but)\b/;

function withdraw(reading: Reading, sentence: Sentence): boolean {
  const focusedNow = reading.focus.findLast((item) => !item.isWithdrawn);
  // The same within one sentence, where commas were printed for stops.
  const mistake = mistakenWithin.exec(sentence.text);
  const named = phrasesOf(sentence.phrases, 'thing')[0];
  if (
    mistake &&
    named &&
    mistake.index > 0 &&
    reading.phrases.tokens
      .slice(sentence.from, named.to)
      .map((token) => token.text)
      .join(' ').length <= mistake.index
  ) {
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    return true;
  }
  if (mistaken.test(sentence.text) && focusedNow && sentence.index - reading.focusSentence <= 1) {
    withdrawItem(focusedNow, `taken back: "${sentence.text}"`);
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    return true;
  }
  const cue = isWithdrawing(sentence);
  const run = currentRun(reading);
  if (!cue || !run) return false;
  // "Thirty one was nothing. Forget that one." takes back one thing, not two.
  if (reading.withdrawnSentence === sentence.index - 1 && sentence.to - sentence.from <= 4) {
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    return true;
  }
  const places = phrasesOf(sentence.phrases, 'distance');
  const things = phrasesOf(sentence.phrases, 'thing');
  const live = liveItems(reading, run.n);
  const after = places.find((place) => place.from >= cue.to);
  const thingsAfter = things.filter(
    (thing) => thing.from >= cue.to && !/\b(nothing|no|isn't|is not)\b/.test(sentence.text),
  );
  let targets: Item[] = [];
  if (/\b(both|all)\b/.test(sentence.text))
    targets = reading.focus.length >= 2 ? reading.focus.filter((item) => !item.isWithdrawn) : live.slice(-2);
  else {
    const named = things
      .map((thing) =>
        live.findLast(
          (item) =>
            item.kind === thing.kind &&
            (places.length === 0 ||
              places.some((place) => item.at !== null && Math.abs(item.at - place.distance.feet) <= 0.3) ||
              after !== undefined),
        ),
      )
      .filter((item) => item !== undefined);
    const placed = places
      .map((place) => live.findLast((item) => item.at !== null && Math.abs(item.at - place.distance.feet) <= 0.3))
      .filter((item) => item !== undefined);
    const focused = reading.focus.filter((item) => !item.isWithdrawn && item.run === run.n).slice(-1);
    const namesOther = things.some(
      (thing) => thing.from >= cue.to - 1 && !live.some((item) => item.kind === thing.kind),
    );
    targets =
      namesOther && named.length === 0
        ? []
        : named.length > 0
          ? named.slice(-1)
          : placed.length > 0 && after === undefined
            ? placed.slice(-1)
            : sentence.index - reading.focusSentence <= 4
              ? focused
              : [];
  }
  if (targets.length === 0) {
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'withdrawn' });
    // A thing raised and taken back in one sentence leaves nothing.
    return things.some((thing) => thing.to <= cue.from) || things.length === 0;
  }
  // "scratch that, forty seven": a new place instead of the old one.
  if (after && thingsAfter.length === 0 && !things.some((thing) => thing.to <= cue.from)) {
    const item = targets.at(-1)!;
    item.corrected.push({ field: 'at', was: item.at, from: sentence.from, to: sentence.to });
    item.at = after.distance.feet;
    mentionAgain(reading, item, sentence.from, sentence.to);
    return true;
  }
  reading.withdrawnSentence = sentence.index;
  for (const item of targets) {
    withdrawItem(item, `taken back: "${sentence.text}"`);
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'withdrawn' });
  }
  return thingsAfter.length === 0;
}

function readClaim(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  claims: readonly Claim[],
  correcting: 'strong' | 'weak' | null,
  replacements: readonly Replacement[],
): Item | null {
  const { tokens } = reading.phrases;
  const run = currentRun(reading);
  const wasDenied =
    reading.absent.at(-1) !== undefined &&
    reading.sentences[sentence.index - 1] !== undefined &&
    reading.absent.at(-1)!.from >= reading.sentences[sentence.index - 1]!.from;
  const assertion = assertClaim(claim, claims, sentence, tokens, wasDenied);
  const placing = placeClaim(reading, claim, sentence);
  const consider = (because: string): null => {
    reading.considered.push({ token: claim.from, rule: `${claim.kind}: ${claim.rule}`, because });
    return null;
  };
  if (claim.kind === 'material-change') return null;
  if (claim.source === 'weak' && !isWeakBelieved(reading, claim, assertion)) {
    holdTentative(reading, sentence, claim, claims, assertion, placing);
    return consider('an everyday word without what it needs');
  }
  const revived = reviveFor(reading, sentence, claim, assertion);
  if (revived) {
    fillFields(revived, claim);
    mentionAgain(reading, revived, sentence.from, sentence.to);
    return revived;
  }
  const renamed = run?.direction === 'downstream' ? downstreamNames.get(claim.kind) : undefined;
  if (renamed && claim.source === 'sign') claim.kind = renamed;
  const before = claims[claims.indexOf(claim) - 1];
  const between = before
    ? tokens
        .slice(before.to, claim.from)
        .map((token) => token.text)
        .join(' ')
    : '';
  if (
    before &&
    claim.place === before.place &&
    /\bor (it |that )?(might|may|could|maybe|just|else|possibly)\b/.test(between)
  )
    return consider(`another guess at the ${before.kind}`);
  const rejected = rejects(reading, sentence, claim, assertion);
  if (rejected) {
    withdrawItem(rejected, `denied: "${sentence.text}"`);
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    reading.lastValue = null;
    return consider('a guess taken back');
  }
  const upper = claim.source === 'sign' ? yieldsTo.get(claim.kind) : undefined;
  if (
    upper &&
    sentence.index - reading.focusSentence <= 2 &&
    reading.focus.some((item) => item.kind === upper && !item.isWithdrawn)
  )
    return consider(`part of the ${upper}`);
  const corrected = run ? correctKnown(reading, sentence, claim, placing, correcting) : null;
  if (corrected) return corrected;
  const known = run ? findKnown(reading, claim, assertion, placing, sentence) : null;
  if (assertion.isDenied) {
    if (known && assertion.isDefinite) return consider('denies something of a known thing');
    reading.absent.push({ run: run?.n ?? 1, kind: claim.kind, from: claim.from, to: claim.to });
    own(reading, sentence.from, sentence.to, { sort: 'absent', kind: claim.kind, run: run?.n ?? 1 });
    return consider(`said not to be there (${assertion.because.join(', ')})`);
  }
  if (sentence.isQuestion && !(claim.place !== null && assertion.isPointedAt)) {
    if (known) {
      mentionAgain(reading, known, sentence.from, sentence.to);
      return known;
    }
    return ask(reading, sentence, claim, placing, assertion);
  }
  if (reading.isSummary || (run?.way === 'back' && claim.place === null)) {
    if (known) return knownAgain(reading, sentence, claim, assertion, placing, known, correcting);
    if (reading.isSummary && (claim.place === null || assertion.aside !== null || claim.relative !== null))
      return consider('a summary names it');
    if (reading.isSummary) return summaryDiffers(reading, sentence, claim, assertion, placing);
  }
  if (assertion.aside !== null) {
    if (known && assertion.isDefinite) mentionAgain(reading, known, sentence.from, sentence.to);
    return consider(assertion.aside);
  }
  if (!run) {
    if (claim.kind === 'no-access') return makeItem(reading, sentence, claim, claims, assertion, placing);
    return consider('no run has started');
  }
  if (known) return knownAgain(reading, sentence, claim, assertion, placing, known, correcting);
  const isParked = reading.pending !== null && sentence.index - reading.pending.sentence <= 4;
  if (run.way === 'back' && claim.place === null && !assertion.isPointedAt && !isParked)
    return consider('named on the way back, nothing new');
  if (asksDoubtfully(reading, sentence, claim) && !assertion.isSure) assertion.isHedged = true;
  const item = makeItem(reading, sentence, claim, claims, assertion, placing);
  for (const pair of replacements) {
    if (pair.old.family === 'distance' && claim.place === pair.by)
      item.corrected.push({ field: 'at', was: pair.old.distance.feet, from: pair.old.from, to: pair.old.to });
    if (!pair.isStrong) item.evidence.notes.push('weak correction');
  }
  return item;
}

/** Keeps a thing that was only seen ("water ahead, sixteen") until a name, a size or an end makes it a finding. */
function holdTentative(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  claims: readonly Claim[],
  assertion: Assertion,
  placing: Placing,
): void {
  const run = currentRun(reading);
  if (
    !run ||
    run.way === 'back' ||
    reading.isSummary ||
    sentence.isQuestion ||
    assertion.isDenied ||
    assertion.aside !== null
  )
    return;
  if (weakNeeds.get(claim.kind) !== 'measure' || placing.at === null || placing.isGuess) return;
  const item = makeItem(reading, sentence, claim, claims, assertion, placing);
  item.isWithdrawn = true;
  item.evidence.notes.push('only seen, not named');
  reading.tentative = { item, sentence: sentence.index };
}

/** The name comes: "so that's our belly". */
function reviveFor(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
  const held = reading.tentative;
  const run = currentRun(reading);
  if (!held || !run || held.item.run !== run.n || held.item.kind !== claim.kind || sentence.index - held.sentence > 10)
    return null;
  if (
    claim.place !== null ||
    claim.source === 'weak' ||
    assertion.isDenied ||
    assertion.aside !== null ||
    sentence.isQuestion ||
    run.way === 'back'
  )
    return null;
  return reviveTentative(reading, sentence.index);
}

function isWeakBelieved(reading: Reading, claim: Claim, assertion: Assertion): boolean {
  const hasPlace = claim.place !== null || reading.pending !== null;
  if (!hasPlace) return false;
  const needs = weakNeeds.get(claim.kind);
  if (needs === 'measure') {
    const { fields, place } = claim;
    return (fields.percent ?? fields.inches ?? place?.distance.toFeet ?? null) !== null || fields.to !== undefined;
  }
  return claim.place !== null ? !assertion.isDefinite : assertion.isPointedAt;
}

/** "That's not roots, that's paper": takes back what was just claimed. */
function rejects(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
  if (!assertion.isDenied) return null;
  if (!/\b(not|isn't|ain't|aren't|wasn't|weren't|no)\b/.test(sentence.text)) return null;
  const isRecent = sentence.index - reading.focusSentence <= 2;
  const focused = reading.focus.findLast((item) => item.kind === claim.kind && !item.isWithdrawn);
  const here = reading.focus.findLast((item) => !item.isWithdrawn)?.at ?? null;
  const beside =
    here === null
      ? undefined
      : liveItems(reading, currentRun(reading)?.n ?? 1).findLast(
          (item) => item.kind === claim.kind && item.at === here && sentence.index - item.sentence <= 6,
        );
  if (!focused && beside && isRecent && claim.place === null && !/^(no|not) /.test(sentence.text)) return beside;
  if (focused && isRecent && (claim.place === null || claim.place.distance.feet === focused.at)) {
    const saysThisOne =
      /\b(that 's not|that 's no|it 's not|it 's no|it isn't|that isn't|those aren't|those are not|they 're not|not a|not an|not roots|wasn't|isn't a|no \w+ there|is not|weren't)\b/.test(
        sentence.text,
      );
    return saysThisOne || focused.status === 'suspected' ? focused : null;
  }
  const run = currentRun(reading);
  if (run && run.way === 'back' && /\b(so it 's not|it 's not a|that 's not a|isn't a|not a)\b/.test(sentence.text))
    return (
      liveItems(reading, run.n).findLast((item) => item.kind === claim.kind && item.status === 'suspected') ?? null
    );
  return null;
}

function ask(reading: Reading, sentence: Sentence, claim: Claim, placing: Placing, assertion: Assertion): null {
  const item = makeItem(reading, sentence, claim, [claim], assertion, placing);
  item.isWithdrawn = true;
  item.evidence.notes.push('asked');
  reading.asked.push({ kind: claim.kind, item, sentence: sentence.index });
  own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'question' });
  return null;
}

function knownAgain(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  assertion: Assertion,
  placing: Placing,
  known: Item,
  correcting: 'strong' | 'weak' | null,
): Item {
  const run = currentRun(reading);
  const saysLooked = correcting !== null || goesBack.test(sentence.text);
  for (const [name, value] of Object.entries(claim.fields) as [keyof Item['fields'], never][]) {
    if (
      value === null ||
      value === undefined ||
      !saysLooked ||
      known.fields[name] === null ||
      known.fields[name] === value
    )
      continue;
    known.corrected.push({ field: name, was: known.fields[name], from: sentence.from, to: sentence.to });
    known.fields[name] = value;
  }
  if (
    saysLooked &&
    claim.place !== null &&
    placing.at !== null &&
    known.at !== null &&
    known.at !== placing.at &&
    reading.isSummary === false &&
    run?.way === 'out'
  ) {
    known.corrected.push({ field: 'at', was: known.at, from: sentence.from, to: sentence.to });
    known.at = placing.at;
  }
  if (reading.isSummary) {
    noteConflicts(known, claim);
    mentionAgain(reading, known, sentence.from, sentence.to);
    return known;
  }
  fillFields(known, claim);
  if (
    claim.place !== null &&
    placing.at !== null &&
    known.basis === 'nearby' &&
    known.evidence.notes.includes('place guessed') &&
    known.at !== placing.at &&
    sentence.index - known.sentence <= 3 &&
    run?.way === 'out'
  ) {
    known.at = placing.at;
    known.basis = 'spoken';
    known.evidence.placeRule = 'place said with the second mention';
  }
  if (known.at === null && placing.at !== null && claim.place !== null) {
    known.at = placing.at;
    known.basis = 'nearby';
    known.evidence.placeRule = 'place said later';
  }
  if (
    known.status === 'suspected' &&
    !assertion.isHedged &&
    (assertion.isSure ||
      answersYes.test(sentence.text) ||
      /\b(that 's a|those are|it is|they are|alright|definitely)\b/.test(sentence.text)) &&
    !/\b(maybe|possible|possibly|could|might)\b/.test(sentence.text)
  )
    known.status = 'present';
  else if (
    known.status === 'present' &&
    assertion.isHedged &&
    !assertion.isHedgeLoose &&
    sentence.index - known.sentence <= 2 &&
    run?.way === 'out' &&
    known.evidence.isHedged === false
  ) {
    known.status = 'suspected';
    known.evidence.isHedged = true;
    known.evidence.notes.push('hedged after');
  }
  mentionAgain(reading, known, sentence.from, sentence.to);
  return known;
}

/** A summary that names a thing nobody found is a doubt, never a silent finding. */
function summaryDiffers(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  assertion: Assertion,
  placing: Placing,
): Item | null {
  const kinds = reading.items.filter((item) => !item.isWithdrawn && item.kind === claim.kind);
  if (kinds.length > 0) {
    const item = kinds.at(-1)!;
    mentionAgain(reading, item, sentence.from, sentence.to);
    return item;
  }
  const item = makeItem(reading, sentence, claim, [claim], assertion, placing);
  item.flags.push({ reason: 'maybe-repeat', about: 'kind', detail: 'named only in the summary' });
  return item;
}

/**
 * "I said gravel from 15, it really starts at 14", "the offset is at 32, not 30", "the tee at 6 is on the right, not the left":
 * a thing named again with its old value and a new one, or with words that go back.
 */
function correctKnown(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  placing: Placing,
  correcting: 'strong' | 'weak' | null,
): Item | null {
  const run = currentRun(reading);
  if (!run || reading.isSummary || claim.source === 'weak') return null;
  const { tokens } = reading.phrases;
  const whole = reading.sentences[sentence.index]!;
  const same = liveItems(reading, run.n).filter((item) => item.kind === claim.kind && item.sentence < sentence.index);
  if (same.length === 0) return null;
  const dropped = whole.phrases.filter((phrase) => !sentence.phrases.includes(phrase));
  const oldPlaces = [...dropped, ...sentence.phrases].flatMap((phrase) =>
    phrase.family === 'distance' && phrase !== claim.place ? [phrase.distance.feet] : [],
  );
  const byOldPlace = same.find(
    (item) => item.at !== null && oldPlaces.some((feet) => Math.abs(feet - item.at!) <= SAME_FEET),
  );
  const saysBack =
    correcting === 'strong' ||
    dropped.length > 0 ||
    /\b(i said|i called|i had|my mistake|(was|is|'s) wrong|correct|amend|really|should (be|say|read)|misread|scratch|strike|make that|carries on to|change the|turns out)\b/.test(
      sentence.text,
    );
  if (!saysBack) return null;
  const isDefinite = tokens
    .slice(Math.max(sentence.from, claim.from - 3), claim.from)
    .some((token) => /^(the|that|those|my|said|called|your)$/.test(token.text));
  const hasNewPlace =
    claim.place !== null &&
    !same.some((item) => item.at !== null && Math.abs(item.at - claim.place!.distance.feet) <= SAME_FEET);
  const isRecent = sentence.index - same.at(-1)!.sentence <= 12;
  const target =
    byOldPlace ?? (hasNewPlace && (isDefinite || correcting === 'strong') && isRecent ? same.at(-1) : undefined);
  if (!target || !hasNewPlace || placing.at === null) return null;
  const isEnd =
    claim.place!.distance.isEnd === true ||
    /\b(carries on to|ends at|goes to|out to|not out|runs to|quits at)\b/.test(sentence.text);
  const field = isEnd && kindTakes(target.kind, 'to') ? 'to' : 'at';
  target.corrected.push({
    field,
    was: field === 'to' ? target.fields.to : target.at,
    from: sentence.from,
    to: sentence.to,
  });
  if (field === 'to') target.fields.to = placing.at;
  else {
    target.at = placing.at;
    target.evidence.placeRule = 'place corrected later';
    if (placing.to !== null && kindTakes(target.kind, 'to')) target.fields.to = placing.to;
  }
  if (byOldPlace === undefined) target.evidence.notes.push('weak correction of at');
  for (const [name, value] of Object.entries(claim.fields) as [keyof Item['fields'], never][])
    if (value !== null && value !== undefined && name !== 'to') target.fields[name] = value;
  mentionAgain(reading, target, sentence.from, sentence.to);
  return target;
}

function makeItem(
  reading: Reading,
  sentence: Sentence,
  claim: Claim,
  claims: readonly Claim[],
  assertion: Assertion,
  placing: Placing,
): Item {
  const run = currentRun(reading);
  const isPlaceless = placelessKinds.has(claim.kind) && claim.place === null;
  const evidence = newEvidence(sentence, {
    source: claim.source,
    rule: claim.rule,
    placeRule: isPlaceless ? 'needs no place' : placing.rule,
    thingsInSentence: claims.length,
    placesInSentence: phrasesOf(sentence.phrases, 'distance').length,
    placeTokens: claim.placeTokens,
    placeSentences: placing.sentencesBack,
    isRespelled: claim.respelled.length > 0,
    isOnWayBack: run?.way === 'back',
    isHedged: assertion.isHedged,
    frame: claim.place?.distance.frame ?? null,
    hasExistential: assertion.isPointedAt,
    notes: [
      ...(placing.isGuess ? ['place guessed'] : []),
      ...(assertion.isHedgeLoose ? ['hedge stands apart'] : []),
      ...assertion.because,
    ],
  });
  const item = addItem(reading, sentence, {
    kind: claim.kind,
    from: claim.from,
    to: claim.to,
    status: assertion.isHedged ? 'suspected' : 'present',
    at: isPlaceless ? null : placing.at,
    basis: isPlaceless ? null : placing.basis,
    fields:
      placing.to !== null && kindTakes(claim.kind, 'to') && claim.fields.to === undefined
        ? { ...claim.fields, to: placing.to }
        : claim.fields,
    evidence,
    respelled: claim.respelled,
  });
  for (let copy = 1; copy < claim.count; copy += 1)
    addItem(reading, sentence, {
      ...item,
      fields: { ...item.fields },
      basis: item.basis,
      evidence: { ...evidence, notes: [...evidence.notes] },
    });
  const length = phrasesOf(sentence.phrases, 'length')[0];
  if (length && item.at !== null && item.fields.to === null && kindTakes(item.kind, 'to') && item.kind !== 'pipe')
    item.fields.to = item.at + length.feet;
  const end = endKinds[claim.kind];
  if (end && run && run.way === 'out' && item.status === 'present')
    run.end = { at: item.at ?? run.end?.at ?? null, reason: run.end?.reason === 'main' ? 'main' : end };
  return item;
}

function advance(reading: Reading, sentence: Sentence, isUsed: boolean, isFollowUp: boolean, claimCount: number): void {
  const run = currentRun(reading);
  if (!run) return;
  const isTalk = phrasesOf(sentence.phrases, 'assertion').some((phrase) =>
    /^(general|past|planned|elsewhere)$/.test(phrase.cue.axis),
  );
  if (isTalk && !isUsed) return;
  const places = phrasesOf(sentence.phrases, 'distance');
  for (const place of places) {
    run.track.push({ token: place.from, feet: place.distance.feet });
    if (place.distance.toFeet !== null) run.track.push({ token: place.to - 1, feet: place.distance.toFeet });
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
  }
}

/** Gives what is left of the sentence to the item it spoke of, or sets it aside. */
function ownRest(reading: Reading, sentence: Sentence, touched: readonly Item[], isPipeTalk: boolean): void {
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
