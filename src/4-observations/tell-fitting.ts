/**
 * A fitting told of in two breaths: "another one joins on the left. A wye!" names what was described, and
 * "There's a tee at nine. That's the laundry hooking in" describes what was named. Either way it is one thing.
 */
import type { Claim } from './claim.ts';
import { kindTakes } from './claim.ts';
import { fillFields, mentionAgain } from './items.ts';
import { fittingKinds, yieldingKinds } from './kind-roles.ts';
import { currentRun, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** Sentences between the two breaths. */
const NEAR_SENTENCES = 1;
const pointsBack =
  /^((and|so|oh|yeah|yep|okay|um|uh|i think|i guess|i bet|i 'd bet|i 'd guess|i expect|probably|likely|most likely|maybe|must be|looks like) )*((that|this|it|which|there|that one|this one) (just )?('s|is|was|would be|'d be|'ll be|must be|has to be|will be|'ll|would|picks|serves|goes|takes|drains|feeds|handles|carries|belongs)\b|where (the|your|their|our|my)\b)/;
const pointsThere =
  /\b(there|here|into (it|that|this|there)|on (it|that|there|this one|that one)|to (it|that|there)|in there|through (there|it|that))$/;
const namesAlone =
  /^((and|so|oh|yeah|yep|okay|um|uh|it 's|that 's|this is|i 'd say|i 'd call it|looks like|probably) )*(a|an|the) /;

/** "Tee on the left. Water heater drain.": said by itself, it is whose drain the fitting takes. */
const isBareDrain = ({ from, to, phrases }: Sentence, claim: Claim, item: Item): boolean =>
  claim.fields.serves != null &&
  item.fields.serves === null &&
  to - from <= BARE_TOKENS &&
  !phrases.some(({ family }) => family === 'position' || family === 'clock');
const BARE_TOKENS = 4;

export function tellFitting(reading: Reading, sentence: Sentence, claim: Claim): Item | null {
  const run = currentRun(reading);
  const item = reading.focus.findLast((candidate) => !candidate.isWithdrawn);
  if (!run || !item || item.run !== run.n || run.way === 'back' || reading.isSummary) return null;
  if (claim.place !== null || claim.relative !== null || item.sentence === sentence.index) return null;
  if (sentence.index - reading.focusSentence > NEAR_SENTENCES || item.kind === claim.kind) return null;
  const isConnection = (kind: string): boolean => fittingKinds.has(kind) && kindTakes(kind as Item['kind'], 'serves');
  if (!isConnection(item.kind) || !isConnection(claim.kind)) return null;
  const isDescribed = item.evidence.source === 'sign' && yieldingKinds.has(item.kind);
  if (isDescribed && claim.source === 'word' && (pointsBack.test(sentence.text) || namesAlone.test(sentence.text))) {
    item.kind = claim.kind;
    item.evidence.source = 'word';
  } else if (
    !(
      claim.source === 'sign' &&
      yieldingKinds.has(claim.kind) &&
      // "The water heater drains there."
      (isBareDrain(sentence, claim, item) ||
        pointsBack.test(sentence.text) ||
        (pointsThere.test(sentence.text) && claim.fields.serves != null))
    )
  )
    return null;
  fillFields(item, claim);
  mentionAgain(reading, item, sentence.from, sentence.to);
  return item;
}
