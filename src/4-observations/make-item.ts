/** Turns an accepted claim into an item with the evidence it rests on. */

import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Assertion } from './assert-claim.ts';
import { type Claim, kindTakes } from './claim.ts';
import { addItem, newEvidence } from './items.ts';
import { endKinds, placelessKinds } from './kind-roles.ts';
import { placeOffers } from './offer-places.ts';
import type { Placing } from './placing.ts';
import { currentRun, DOUBTFUL_WORD, type Item, PLACE_GUESSED, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

export function makeItem(
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
      ...(placing.isGuess ? [PLACE_GUESSED] : []),
      ...(assertion.isHedgeLoose ? ['hedge stands apart'] : []),
      ...(claim.isDoubtful ? [DOUBTFUL_WORD] : []),
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
  doubtNeighbour(reading, sentence, item);
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
  endRun(reading, item);
  return item;
}

/** Some things end the run they are met in. */
export function endRun(reading: Reading, item: Item): void {
  const run = currentRun(reading);
  const end = endKinds[item.kind];
  if (end && run && run.way === 'out' && item.status === 'present')
    run.end = { at: item.at ?? run.end?.at ?? null, reason: run.end?.reason === 'main' ? 'main' : end };
}

/** Which of two numbers beside a thing is its own shows in how the speaker has it elsewhere; where that shows too little both are offered. */
function doubtNeighbour(reading: Reading, sentence: Sentence, item: Item): void {
  const other = reading.plan.otherwise.get(sentence.index);
  if (other === undefined || item.at === null || item.basis !== 'nearby' || other === item.at) return;
  item.flags.push({
    reason: 'distance-unsure',
    about: 'at',
    detail: 'the number said before it and the one after it may both be meant',
    offers: placeOffers(item.at, ...(other === null ? [] : [other])),
  });
}
