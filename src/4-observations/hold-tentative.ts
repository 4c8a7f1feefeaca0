/** Things only seen, which a later name, size or end makes findings. */
import type { Assertion } from './assert-claim.ts';
import type { Claim } from './claim.ts';
import { weakNeeds } from './kind-roles.ts';
import { makeItem } from './make-item.ts';
import type { Placing } from './placing.ts';
import { currentRun, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** Keeps a thing that was only seen ("water ahead, sixteen") until a name, a size or an end makes it a finding. */
export function holdTentative(
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
  item.isWithheld = true;
  item.evidence.notes.push('only seen, not named');
  reading.tentative = { item, sentence: sentence.index };
}

/** What was only seen becomes a finding, and talk is about it. */
export function reviveTentative(reading: Reading, sentence: number): Item | null {
  const held = reading.tentative;
  if (!held) return null;
  held.item.isWithdrawn = false;
  held.item.isWithheld = false;
  held.item.evidence.notes.push('named or measured later');
  reading.focus = [held.item];
  reading.focusSentence = sentence;
  reading.lastValue = { item: held.item, field: 'at', sentence };
  reading.tentative = null;
  return held.item;
}

/** The name comes: "so that's our belly". */
export function reviveFor(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
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

/** A sentence of so few tokens holds little beside the thing. */
const ALONE_TOKENS = 4;

/** Whether an everyday thing is spoken of as seen here: "dirt on the bottom", "there's paper", "Mud." */
function isNoticed(claim: Claim, assertion: Assertion, sentence: Sentence): boolean {
  if (claim.place !== null && !assertion.isDefinite) return true;
  const { degree, percent, inches, position } = claim.fields;
  return (
    assertion.isPointedAt ||
    (degree ?? percent ?? inches ?? position ?? null) !== null ||
    (claim.from - sentence.from <= 1 && sentence.to - sentence.from <= ALONE_TOKENS)
  );
}

/** From this chance on an everyday word is believed for its likeness to other talk, and flagged. */
const LIKELY = 0.7;

export function isWeakBelieved(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): boolean {
  if (isBelievedPlainly(reading, sentence, claim, assertion)) return true;
  const isPlaced = claim.place !== null || claim.relative !== null || reading.plan.after.has(sentence.index);
  const isNear = reading.pending !== null && sentence.index - reading.pending.sentence <= 1;
  // Water is said to be there long before it is said to stand.
  const needsOwn = weakNeeds.get(claim.kind) === 'measure';
  if (assertion.isDefinite || !(needsOwn ? claim.place !== null : isPlaced || isNear)) return false;
  if ((reading.taught.chances(sentence).get(claim.kind) ?? 0) < LIKELY) return false;
  claim.isDoubtful = true;
  return true;
}

function isBelievedPlainly(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): boolean {
  const needs = weakNeeds.get(claim.kind);
  if (needs === 'notice') return isNoticed(claim, assertion, sentence);
  const hasPlace = claim.place !== null || reading.pending !== null || reading.plan.after.has(sentence.index);
  if (!hasPlace) return false;
  if (needs === 'measure') {
    const { fields, place } = claim;
    return (fields.percent ?? fields.inches ?? place?.distance.toFeet ?? null) !== null || fields.to !== undefined;
  }
  const { degree, percent, inches, position, clock } = claim.fields;
  const isDescribed = (degree ?? percent ?? inches ?? position ?? clock ?? null) !== null;
  return claim.place !== null ? !assertion.isDefinite : assertion.isPointedAt || isDescribed;
}
