/**
 * Decides what one claim comes to: a new item, more of a known one, something denied or asked, or talk of other matters.
 * The order of the questions is the method; each gives way to the next only when it has nothing to say.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { isAfterEnd } from './after-end.ts';
import { type Assertion, assertClaim } from './assert-claim.ts';
import { type Claim, kindTakes } from './claim.ts';
import { correctKnown, knownAgain } from './correct-known.ts';
import { denyKind, isAskedAbout } from './deny-kind.ts';
import { replaceMisnamed } from './disown-name.ts';
import { endNamed } from './end-named.ts';
import { holdTentative, isWeakBelieved, reviveFor } from './hold-tentative.ts';
import { fillFields, findKnown, mentionAgain, withdrawItem } from './items.ts';
import {
  downstreamNames,
  endKinds,
  fittingKinds,
  needsOpening,
  openingKinds,
  upstreamSigns,
  yieldingKinds,
  yieldsTo,
} from './kind-roles.ts';
import { makeItem } from './make-item.ts';
import { growWorse } from './outgrow.ts';
import { placeClaim } from './place-claim.ts';
import type { Replacement } from './read-corrections.ts';
import { ask, asksDoubtfully } from './read-questions.ts';
import { summaryDiffers } from './read-summary.ts';
import { currentRun, type Item, own, type Reading } from './reading.ts';
import { renameLast, renameRejected } from './rename-kind.ts';
import type { Sentence } from './sentence.ts';
import { isDismissed, isNamedAnew, rejects, speaksOfAnother } from './take-back.ts';
import { tellFitting } from './tell-fitting.ts';
import { tellShare } from './tell-share.ts';
import { tellWay } from './tell-way.ts';

export function readClaim(
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
  const assertion = assertClaim(claim, claims, sentence, tokens, {
    wasDenied,
    isListedAbsent: reading.denialHeading === sentence.index - 1,
  });
  const placing = placeClaim(reading, claim, sentence);
  const consider = (because: string): null => {
    reading.considered.push({
      token: claim.from,
      rule: `${claim.kind}: ${claim.rule}`,
      because,
      isPlaced: claim.place !== null,
    });
    return null;
  };
  if (claim.kind === 'material-change' || claim.isRejected) return null;
  if (claim.source === 'weak' && !isWeakBelieved(reading, sentence, claim, assertion)) {
    const more = saysMoreOfLast(reading, sentence, claim, assertion);
    if (more) return more;
    holdTentative(reading, sentence, claim, claims, assertion, placing);
    return consider('an everyday word without what it needs');
  }
  if (claim.source === 'sign' && upstreamSigns.has(claim.rule) && run?.direction !== 'upstream')
    return consider('means an end only up the line');
  if (claim.source === 'sign' && needsOpening.has(claim.kind) && !namesOpening(reading, sentence))
    return consider('no opening is named with it');
  if (isReachOnly(claim, claims, tokens)) return consider('says how far something goes');
  const revived = reviveFor(reading, sentence, claim, assertion);
  if (revived) {
    fillFields(revived, claim);
    mentionAgain(reading, revived, sentence.from, sentence.to);
    return revived;
  }
  // "The dog comes in on the right": with neither place nor fixture nothing says that it is the pipe that is meant.
  if (
    claim.source === 'sign' &&
    yieldingKinds.has(claim.kind) &&
    placing.at === null &&
    claim.fields.serves == null &&
    kindTakes(claim.kind, 'serves')
  )
    return consider('a way in without a place');
  const told = assertion.isDenied || sentence.isQuestion ? null : tellFitting(reading, sentence, claim);
  if (told) return told;
  const way = assertion.isDenied || sentence.isQuestion ? null : tellWay(reading, sentence, claim, assertion);
  if (way) return way;
  const renamed = run?.direction === 'downstream' ? downstreamNames.get(claim.kind) : undefined;
  if (renamed && claim.source === 'sign') claim.kind = renamed;
  const before = claims[claims.indexOf(claim) - 1];
  const between = before ? textOf(tokens, before.to, claim.from) : '';
  if (
    before &&
    claim.place === before.place &&
    /\bor (it |that )?(might|may|could|maybe|just|else|possibly)\b/.test(between)
  )
    return consider(`another guess at the ${before.kind}`);
  const rejected = rejects(reading, sentence, claim, assertion);
  const another = rejected ? renameRejected(reading, sentence, claim, claims, rejected) : null;
  if (another) return another;
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
  const ended = endNamed(reading, sentence, claim, assertion, placing);
  if (ended) return ended;
  const fuller = run?.way === 'out' ? tellShare(reading, sentence, claim, assertion) : null;
  if (fuller) return fuller;
  const worse = run?.way === 'out' ? growWorse(reading, sentence, claim, assertion) : null;
  if (worse) return worse;
  const meant = replaceMisnamed(reading, sentence, claim);
  if (meant) return meant;
  const renamedLast = renameLast(reading, sentence, claim, assertion, correcting);
  if (renamedLast) return renamedLast;
  const corrected = run ? correctKnown(reading, sentence, claim, placing, correcting) : null;
  if (corrected) return corrected;
  const known = run ? findKnown(reading, claim, assertion, placing, sentence) : null;
  if (known && isNamedAnew(reading, sentence, claim, claims)) {
    withdrawItem(known, `named anew: "${sentence.text}"`);
    return consider('named anew in the same breath');
  }
  if (isDismissed(sentence, claim, claims, textOf(tokens, claim.things[0]?.to ?? claim.to, sentence.to))) {
    if (known && !speaksOfAnother(sentence)) withdrawItem(known, `taken back: "${sentence.text}"`);
    own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
    return consider('looked like it and was not');
  }
  if (assertion.isDenied) {
    if (known && assertion.isDefinite) return consider('denies something of a known thing');
    if (fittingKinds.has(claim.kind) && (assertion.isOfThisOne || assertion.isDefinite)) {
      own(reading, sentence.from, sentence.to, { sort: 'aside', why: 'taken back' });
      return consider('a guess taken back');
    }
    denyKind(reading, sentence, claim);
    return consider(`said not to be there (${assertion.because.join(', ')})`);
  }
  if (sentence.isQuestion && !(claim.place !== null && assertion.isPointedAt)) {
    if (known) {
      mentionAgain(reading, known, sentence.from, sentence.to);
      return known;
    }
    return ask(reading, sentence, claim, placing, assertion);
  }
  // "I skipped one: halfway between the coupling and the manhole, a branch.": reckoned from what was placed, it is new.
  const isReckoned = placing.basis === 'relative' && claim.relative?.relative.anchor != null && !placing.isGuess;
  if (reading.isSummary || (run?.way === 'back' && claim.place === null && !isReckoned)) {
    if (known) return knownAgain(reading, sentence, claim, assertion, placing, known, correcting);
    if (reading.isSummary && (claim.place === null || assertion.aside !== null || claim.relative !== null))
      return consider('a summary names it');
    if (reading.isSummary) return summaryDiffers(reading, sentence, claim, assertion, placing);
  }
  if (assertion.aside !== null) {
    if (known && assertion.isDefinite) mentionAgain(reading, known, sentence.from, sentence.to);
    // What follows ('forget that one') is about this, not about the finding before.
    if (claim.place !== null && !known) {
      reading.focus = [];
      own(reading, sentence.from, sentence.to, {
        sort: 'unplaced',
        why: `names ${claim.kind} at ${claim.place.distance.feet} ${reading.phrases.unit}, judged ${assertion.aside}`,
      });
    }
    if (run && claim.place === null && !known && isAskedAbout(sentence))
      ask(reading, sentence, claim, placing, assertion);
    return consider(assertion.aside);
  }
  if (!run) {
    // "It's buried. They've poured a walk over it." tells of one opening.
    const told = reading.items.findLast((item) => item.kind === claim.kind && sentence.index - item.sentence <= 2);
    const namesOther = sentence.phrases.some(
      ({ family, ...phrase }) => family === 'thing' && 'kind' in phrase && openingKinds.has(phrase.kind),
    );
    if (told && (claim.source === 'sign' || !namesOther)) {
      mentionAgain(reading, told, sentence.from, sentence.to);
      return told;
    }
    if (claim.kind === 'no-access') return makeItem(reading, sentence, claim, claims, assertion, placing);
    return consider('no run has started');
  }
  if (known) return knownAgain(reading, sentence, claim, assertion, placing, known, correcting);
  const isParked = reading.pending !== null && sentence.index - reading.pending.sentence <= 4;
  if (run.way === 'back' && claim.place === null && !assertion.isPointedAt && !isParked && !isReckoned)
    return consider('named on the way back, nothing new');
  if (isAfterEnd(reading, sentence, claim, assertion)) return consider('named after the run had ended');
  const reached = endsAtReached(reading, sentence, claim, placing.at);
  if (reached) {
    mentionAgain(reading, reached, sentence.from, sentence.to);
    return reached;
  }
  if (asksDoubtfully(reading, sentence, claim) && !assertion.isSure) assertion.isHedged = true;
  const item = makeItem(reading, sentence, claim, claims, assertion, placing);
  for (const pair of replacements) {
    if (pair.old.family === 'distance' && claim.place === pair.by)
      item.corrected.push({ field: 'at', was: pair.old.distance.feet, from: pair.old.from, to: pair.old.to });
    if (!pair.isStrong) item.evidence.notes.push('weak correction');
  }
  return item;
}

/** How many sentences after its end a run may be said to be over, and how near it, in feet. */
const OVER_SENTENCES = 3;
const OVER_FEET = 1.5;

/** "The tank at forty one. That's as far as I go.": a run that reached its goal is not held up there as well. */
function endsAtReached(reading: Reading, sentence: Sentence, claim: Claim, at: number | null): Item | null {
  if (claim.source !== 'sign' || endKinds[claim.kind] === undefined) return null;
  const run = currentRun(reading);
  const end = reading.items.findLast(
    (item) => item.run === run?.n && !item.isWithdrawn && endKinds[item.kind] !== undefined,
  );
  if (!end || sentence.index - end.sentence > OVER_SENTENCES || end.kind === claim.kind) return null;
  if (endKinds[end.kind] === 'stopped' || (fittingKinds.has(claim.kind) && claim.place !== null)) return null;
  return at === null || end.at === null || Math.abs(at - end.at) <= OVER_FEET ? end : null;
}

/** "A sag at nine feet. The water's an inch deep.": the everyday word of a thing just named says more of it. */
function saysMoreOfLast(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
  const last = reading.focus.findLast((item) => !item.isWithdrawn);
  const hasValue = Object.values(claim.fields).some((value) => value !== null && value !== undefined);
  if (!last || last.kind !== claim.kind || !hasValue || sentence.index - reading.focusSentence > 1) return null;
  if (claim.place !== null || claim.relative !== null || sentence.isQuestion || reading.isSummary) return null;
  if (assertion.isDenied || assertion.aside !== null) return null;
  fillFields(last, claim);
  mentionAgain(reading, last, sentence.from, sentence.to);
  return last;
}

/** How many sentences back an opening may have been named that "it" stands for. */
const OPENING_SENTENCES = 3;

function namesOpening(reading: Reading, sentence: Sentence): boolean {
  // "I can't get into that one. I'm in at the manhole instead.": what it is instead of is an opening.
  const next = reading.sentences.slice(sentence.index, sentence.index + 2);
  const isInstead = next.some(
    (other) =>
      /\b(instead|other one)\b/.test(other.text) &&
      phrasesOf(other.phrases, 'camera').some((phrase) => phrase.cue === 'access'),
  );
  if (isInstead) return true;
  return reading.sentences
    .slice(Math.max(0, sentence.index - OPENING_SENTENCES), sentence.index + 1)
    .some(
      (other) =>
        phrasesOf(other.phrases, 'camera').some((phrase) => phrase.cue === 'access') ||
        phrasesOf(other.phrases, 'thing').some((phrase) => openingKinds.has(phrase.kind)),
    );
}

const reach =
  /\b(all the way|clear|from here|from there|right|on|most of the way) (out |up |down )?to (the|that|your|our)$|\bas far as (the|that|your|our)$/;

/** "Heavy all the way to the bend": what a stretch reaches to is not met yet. */
const isReachOnly = (claim: Claim, claims: readonly Claim[], tokens: readonly Token[]): boolean =>
  isSaidAheadOf(claim, claims, tokens) || isReach(claim, claims, tokens);

/** "Before the main is a patch, at twenty three": the main is only what it lies before. */
const isSaidAheadOf = (claim: Claim, claims: readonly Claim[], tokens: readonly Token[]): boolean => {
  if (claim !== claims[0] || claims.length < 2) return false;
  let at = claim.from - 1;
  while (at > 0 && /^(the|that|our|your|city)$/.test(tokens[at]?.text ?? '')) at -= 1;
  const lead = tokens[at - 1];
  return (
    tokens[at]?.text === 'before' &&
    (lead === undefined || lead.breakAfter !== 'none' || /^(just|right|shortly|and|so|then)$/.test(lead.text))
  );
};

const isReach = (claim: Claim, claims: readonly Claim[], tokens: readonly Token[]): boolean =>
  (claim.place === null || (claim.place.to < claim.from && claim !== claims[0])) &&
  claim.relative === null &&
  fittingKinds.has(claim.kind) &&
  reach.test(textOf(tokens, Math.max(0, claim.from - 8), claim.from));
