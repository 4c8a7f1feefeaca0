/** Makes items, finds the one a later mention means, and takes items back. */
import type { KindName } from '../../shared/vocabulary/kinds/index.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Assertion } from './assert-claim.ts';
import { ACROSS, type Claim } from './claim.ts';
import { placelessKinds } from './kind-roles.ts';
import type { Placing } from './placing.ts';
import { currentRun, type Evidence, emptyFields, type Item, isPlaceGuessed, own, type Reading } from './reading.ts';
import { pointedBackTo } from './seen-again.ts';
import type { Sentence } from './sentence.ts';

/** Two mentions of one kind closer than this are one thing, in feet. */
export const SAME_FEET = 0.3;
/** On the way back the counter slips; a mention this near a known thing is that thing. */
const SLIP_FEET = 1.1;

export function newEvidence(sentence: Sentence, more: Partial<Evidence>): Evidence {
  return {
    source: 'word',
    rule: '',
    placeRule: '',
    thingsInSentence: 1,
    placesInSentence: 0,
    placeTokens: null,
    placeSentences: 0,
    isRespelled: false,
    isOnWayBack: false,
    isHedged: false,
    frame: null,
    hasExistential: false,
    sentenceTokens: sentence.to - sentence.from,
    notes: [],
    ...more,
  };
}

export function addItem(
  reading: Reading,
  sentence: Sentence,
  made: {
    kind: KindName;
    from: number;
    to: number;
    status?: Item['status'];
    at: number | null;
    basis: Item['basis'];
    fields?: Partial<Item['fields']>;
    evidence: Evidence;
    respelled?: Item['respelled'];
  },
): Item {
  const item: Item = {
    n: reading.items.length + 1,
    run: currentRun(reading)?.n ?? 1,
    kind: made.kind,
    status: made.status ?? 'present',
    at: made.at,
    basis: made.basis,
    fields: { ...emptyFields(), ...made.fields },
    from: made.from,
    to: made.to,
    sentence: sentence.index,
    again: [],
    corrected: [],
    respelled: made.respelled ?? [],
    flags: [],
    softFlags: new Set(),
    firmFlags: new Set(),
    evidence: made.evidence,
    isWithdrawn: false,
    isWithheld: false,
    confidence: 0.5,
    certainty: { hearing: null, reading: 0.5, fields: {} },
  };
  reading.items.push(item);
  const run = currentRun(reading);
  if (run) run.hasFindings = true;
  return item;
}

/** Adds a later mention. */
export function mentionAgain(reading: Reading, item: Item, from: number, to: number): void {
  if (item.sentence >= 0 && from >= item.from && to <= item.to) return;
  // Its own sentence is shared out among all that it names.
  if (from <= item.from && to >= item.to) return;
  item.again.push({ from, to });
  own(reading, from, to, { sort: 'item', item, isAgain: true });
}

/** The known item a claim speaks of, or null when it is a new thing. */
export function findKnown(
  reading: Reading,
  claim: Claim,
  assertion: Assertion,
  placing: Placing,
  sentence: Sentence,
): Item | null {
  const run = currentRun(reading);
  if (!run) return null;
  const everywhere = reading.items.filter((item) => !item.isWithdrawn && item.kind === claim.kind);
  if (reading.isSummary) return findSummarized(everywhere, run.n, claim, placing, sentence);
  const isAnother = reading.phrases.tokens
    .slice(Math.max(sentence.from, claim.from - 4), claim.from)
    .some((token) => /^(another|second|third|more|other)$/.test(token.text));
  if ((isAnother || claim.rule === ACROSS) && run.way === 'out') return null;
  const again = sentence.isQuestion || assertion.isDenied ? null : pointedBackTo(reading, run, claim, sentence);
  if (again) return again;
  const same = everywhere.filter((item) => item.run === run.n);
  const elsewhere = knownBefore(reading, sentence, everywhere, claim, assertion, placing);
  if (same.length === 0) return elsewhere;
  const hasOwnPlace = claim.place !== null || (claim.relative !== null && placing.basis === 'relative');
  const open = reading.focus.findLast(
    (item) => item.kind === claim.kind && !item.isWithdrawn && item.fields.to === null && item.at !== null,
  );
  const endsOpen =
    claim.fields.to !== undefined &&
    claim.place !== null &&
    claim.place.distance.toFeet === null &&
    open !== undefined &&
    placing.at !== null &&
    (open.at ?? 0) < placing.at;
  if (endsOpen && sentence.index - reading.focusSentence <= 3) return open;
  if (hasOwnPlace && placing.at !== null) {
    const near = nearestItem(same, placing.at, run.way === 'back' ? SLIP_FEET : SAME_FEET);
    if (near) return near;
    if (elsewhere) return elsewhere;
    const unplaced = assertion.isDefinite
      ? same.findLast((item) => item.at === null || (isPlaceGuessed(item) && sentence.index - item.sentence <= 4))
      : undefined;
    if (unplaced) return unplaced;
    const isOneOfList =
      run.way === 'back' &&
      phrasesOf(sentence.phrases, 'distance').some(
        (place) => nearestItem(same, place.distance.feet, SLIP_FEET) !== null,
      );
    if (isOneOfList || (run.way === 'back' && assertion.isDefinite)) return same.at(-1) ?? null;
    const guessed = reading.focus.findLast(
      (item) =>
        item.kind === claim.kind &&
        !item.isWithdrawn &&
        (isPlaceGuessed(item) || item.at === null) &&
        sentence.index - reading.focusSentence <= 2,
    );
    return guessed ?? null;
  }
  const focused = reading.focus.findLast((item) => item.kind === claim.kind && !item.isWithdrawn);
  const sinceFocus = sentence.index - reading.focusSentence;
  if (placelessKinds.has(claim.kind)) return focused && sinceFocus <= 2 ? focused : null;
  if (run.way === 'back') {
    // Parked over something on the way back, with its place just read out: near a known thing it is that thing.
    const isParked = reading.pending !== null && sentence.index - reading.pending.sentence <= 4;
    if (isParked && !assertion.isDefinite && !seenAgain.test(sentence.text) && placing.at !== null)
      return nearestItem(same, placing.at, SLIP_FEET);
    return same.findLast((item) => matchesFields(item, claim)) ?? same.at(-1) ?? null;
  }
  if (placing.at !== null) {
    const here = nearestItem(same, placing.at, SAME_FEET);
    if (here) return here;
  }
  // "There's lint in here. Dryer lint, I think." is one thing.
  if (focused && sinceFocus <= 1 && claim.place === null && placing.basis !== 'relative' && !sentence.isQuestion)
    return focused;
  if (focused && assertion.isDefinite) return focused;
  return assertion.isDefinite && !assertion.isPointedAt ? (same.at(-1) ?? null) : null;
}

const seenAgain =
  /\b(again|once more|one more time|second time|as before|same as|as logged|as noted|as called|as recorded|already (called|logged|noted|have|got))\b/;

/** So near the end, in tokens, nobody finds anything new. */
const LAST_TOKENS = 40;

/** At the close of the talk, "the break at 35" may lie in an earlier run. */
function knownBefore(
  reading: Reading,
  sentence: Sentence,
  items: readonly Item[],
  claim: Claim,
  assertion: Assertion,
  placing: Placing,
): Item | null {
  if (sentence.index < reading.ending.from) return null;
  const run = currentRun(reading);
  if (!run) return null;
  const earlier = items.filter((item) => item.run < run.n);
  if (claim.place === null) return assertion.isDefinite && !assertion.isPointedAt ? (earlier.at(-1) ?? null) : null;
  const near = placing.at === null ? null : nearestItem(earlier, placing.at, SAME_FEET);
  const isBeyond = placing.at !== null && placing.at > run.furthest + 2;
  const isLast = (reading.sentences.at(-1)?.to ?? 0) - sentence.from <= LAST_TOKENS;
  const isOver = run.end !== null || run.way === 'back' || isLast;
  // "There's paper at twelve" while the camera still goes on is met there, whatever lay at twelve of an earlier run.
  const goesOn = run.way === 'out' && run.end === null && !isLast && (assertion.isPointedAt || !assertion.isDefinite);
  return near && ((isBeyond && !goesOn) || (isOver && assertion.isDefinite)) ? near : null;
}

function findSummarized(
  items: readonly Item[],
  run: number,
  claim: Claim,
  placing: Placing,
  sentence: Sentence,
): Item | null {
  const places =
    claim.place !== null && placing.at !== null
      ? [placing.at, ...phrasesOf(sentence.phrases, 'distance').map((place) => place.distance.feet)]
      : [];
  for (const feet of places) {
    const near =
      nearestItem(
        items.filter((item) => item.run === run),
        feet,
        SLIP_FEET,
      ) ?? nearestItem(items, feet, SLIP_FEET);
    if (near) return near;
  }
  return places.length === 0 ? (items.findLast((item) => matchesFields(item, claim)) ?? items.at(-1) ?? null) : null;
}

function nearestItem(items: readonly Item[], feet: number, reach: number): Item | null {
  let best: Item | null = null;
  let bestGap = Number.POSITIVE_INFINITY;
  for (const item of items) {
    if (item.at === null) continue;
    const isInside = item.fields.to !== null && feet >= item.at && feet <= item.fields.to;
    const gap = isInside
      ? 0
      : Math.min(
          Math.abs(item.at - feet),
          item.fields.to === null ? Number.POSITIVE_INFINITY : Math.abs(item.fields.to - feet),
        );
    if (gap <= reach + 1e-9 && gap < bestGap) {
      best = item;
      bestGap = gap;
    }
  }
  return best;
}

function matchesFields(item: Item, claim: Claim): boolean {
  return (Object.entries(claim.fields) as [keyof Item['fields'], unknown][]).every(
    ([name, value]) =>
      value === null || value === undefined || item.fields[name] === null || item.fields[name] === value,
  );
}

/** Fills empty fields of an item from a later mention; a different value is left and noted. */
export function fillFields(item: Item, claim: Claim): void {
  for (const [name, value] of Object.entries(claim.fields) as [keyof Item['fields'], never][]) {
    if (value === null || value === undefined) continue;
    if (item.fields[name] === null) item.fields[name] = value;
    else if (item.fields[name] !== value) item.evidence.notes.push(`later said ${name} ${String(value)}`);
  }
}

export function withdrawItem(item: Item, why: string): void {
  item.isWithdrawn = true;
  item.evidence.notes.push(why);
}

/** What a summary says of a known thing is held against it, never taken over. */
export function noteConflicts(item: Item, claim: Claim): void {
  for (const [name, value] of Object.entries(claim.fields) as [keyof Item['fields'], unknown][]) {
    if (
      value === null ||
      value === undefined ||
      name === 'to' ||
      item.fields[name] === null ||
      item.fields[name] === value
    )
      continue;
    item.evidence.notes.push(`the summary said ${name} ${String(value)}`);
  }
}
