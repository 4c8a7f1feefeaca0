/** A known thing named again: added to, confirmed, or corrected in its place. */

import { textOf } from '../3-phrases/token/token.ts';
import type { Assertion } from './assert-claim.ts';
import { type Claim, kindTakes } from './claim.ts';
import { fillFields, mentionAgain, noteConflicts, SAME_FEET } from './items.ts';
import { goesBack } from './opening-correction.ts';
import type { Placing } from './placing.ts';
import { answersYes } from './read-questions.ts';
import { currentRun, type Item, isPlaceGuessed, liveItems, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** A known thing named anew this near its place, in feet, is the same thing placed better. */
const STATED_FEET = 2.1;

export function knownAgain(
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
    isPlaceGuessed(known) &&
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
      /\b(that 's a|it 's an?|those are|it is|they are|they 're|alright|definitely|(is|'s) (really|indeed|definitely|in fact) )\b/.test(
        sentence.text,
      ) ||
      isCalledSo(reading, sentence, claim)) &&
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

/** "That one at twelve is a hole.": the claim is what the sentence says of it. */
const isCalledSo = (reading: Reading, sentence: Sentence, claim: Claim): boolean =>
  /\b(is|'s|are|'re) (a|an)$/.test(textOf(reading.phrases.tokens, Math.max(sentence.from, claim.from - 3), claim.from));

/**
 * "I gave you sand from 22, it really begins at 21", "the offset is at 32, not 30", "the tee at 6 is on the right, not the left":
 * a thing named again with its old value and a new one, or with words that go back.
 */
export function correctKnown(
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
    /\b(i said|i called|i had|my mistake|(was|is|'s) wrong|correct|amend|really|should (be|say|read)|misread|scratch|strike|make (that|the)|fix (that|the)|carries on to|change (that|the)|turns out)\b/.test(
      sentence.text,
    );
  const isDefinite = tokens
    .slice(Math.max(sentence.from, claim.from - 3), claim.from)
    .some((token) => /^(the|that|those|my|said|called|your)$/.test(token.text));
  const hasNewPlace =
    claim.place !== null &&
    !same.some((item) => item.at !== null && Math.abs(item.at - claim.place!.distance.feet) <= SAME_FEET);
  // "The crack is at thirty two.", a foot or two from where it was listed.
  const lead = textOf(tokens, claim.to, claim.place?.from ?? claim.to);
  const isStated =
    isDefinite &&
    /^(is|'s|was)( really| actually)? (at|in|on)?$/.test(lead) &&
    same.some((item) => item.at !== null && Math.abs(item.at - (claim.place?.distance.feet ?? 999)) <= STATED_FEET);
  if (!saysBack && !isStated) return null;
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
