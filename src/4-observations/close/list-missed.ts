/**
 * What the close reader finds and the rules do not is listed with the place it points at, always flagged: on talk neither had
 * seen three in four of them were there. Where it is less sure, or knows no place, its words are kept for the inspector to look at.
 */
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { type KindName, kinds } from '../../../shared/vocabulary/kinds/index.ts';
import { addFirmFlag } from '../flags.ts';
import { addItem, newEvidence, SAME_FEET } from '../items.ts';
import { placelessKinds } from '../kind-roles.ts';
import type { Item, Owner, Reading } from '../reading.ts';
import type { Sentence } from '../sentence.ts';
import { WEAK_WORD, weakestWord } from '../weakest-word.ts';
import { likelyPlaces } from './close-opinion.ts';
import { fillFields } from './fill-fields.ts';
import type { CloseReading } from './read-closely.ts';

/** From these chances on its words are kept, and it is listed: of those between 0.7 and 0.75 half were there, of all above three in four. */
const NOTED = 0.5;
const LISTED = 0.75;
/** The same of what was only asked: the three so likely that nobody took back were all there. */
const ASKED = 0.85;
/** From this chance on a number is its place. */
const PLACED = 0.5;

export const CLOSE_RULE = 'found by the close reader alone';

export function listMissed(reading: Reading): void {
  const { close, sentences } = reading;
  if (close === null || reading.runs.length === 0) return;
  for (const sentence of sentences) {
    for (const { name } of kinds) {
      const chance = close.chance(name, sentence.from, sentence.to);
      if (chance < (sentence.isQuestion ? ASKED : NOTED) || isKnown(reading, sentence, name)) continue;
      const at = placeOf(close, sentence, name);
      if (at === null && !placelessKinds.has(name)) noteWords(reading, sentence, name);
      else if (isListedAt(reading, name, at)) continue;
      else if (chance < LISTED || isHeardWeakly(reading, sentence)) noteWords(reading, sentence, name);
      else listItem(reading, sentence, name, at);
    }
  }
}

/** Whether the rules made something of the kind here, be it that it was taken back, put right or said not to be there. */
function isKnown({ items, absent }: Reading, { index, from, to }: Sentence, kind: KindName): boolean {
  const overlaps = (other: { from: number; to: number }): boolean => other.from < to && other.to > from;
  const wasCalled = (item: Item): boolean =>
    item.kind === kind || item.corrected.some(({ field, was }) => field === 'kind' && was === kind);
  return (
    absent.some((entry) => entry.kind === kind && overlaps(entry)) ||
    items.some(
      (item) =>
        wasCalled(item) && !item.isWithheld && (Math.abs(item.sentence - index) <= 1 || item.again.some(overlaps)),
    )
  );
}

function placeOf(close: CloseReading, { from, to }: Sentence, kind: KindName): number | null {
  const [best] = likelyPlaces(close.fields(kind, from, to));
  return best && best.chance >= PLACED ? best.feet : null;
}

const isListedAt = ({ items }: Reading, kind: KindName, at: number | null): boolean =>
  items.some(
    (item) =>
      !item.isWithdrawn &&
      item.kind === kind &&
      item.at !== null &&
      at !== null &&
      Math.abs(item.at - at) <= 2 * SAME_FEET,
  );

function listItem(reading: Reading, sentence: Sentence, kind: KindName, at: number | null): void {
  const run = reading.runs.findLast((each) => each.sentence <= sentence.index) ?? reading.runs[0]!;
  const item = addItem(reading, sentence, {
    kind,
    from: sentence.from,
    to: sentence.to,
    at: placelessKinds.has(kind) ? null : at,
    basis: at === null || placelessKinds.has(kind) ? null : 'nearby',
    evidence: newEvidence(sentence, { source: 'weak', rule: CLOSE_RULE, placeRule: 'pointed at by the close reader' }),
  });
  item.run = run.n;
  addFirmFlag(item, {
    reason: 'readers-disagree',
    about: 'kind',
    detail: 'only a second reading of the talk finds this here',
  });
  fillFields(reading, item);
  moveInOrder(reading.items, item);
  takeFreeWords(reading, sentence, { sort: 'item', item, isAgain: false });
}

/** What rests on the close reader alone must at least have been heard. */
const isHeardWeakly = (reading: Reading, sentence: Sentence): boolean => weakestWord(reading, sentence) < WEAK_WORD;

/** Items stand in the order they were first said. */
function moveInOrder(items: Item[], item: Item): void {
  items.splice(items.indexOf(item), 1);
  const next = items.findIndex(({ from }) => from > item.from);
  items.splice(next === -1 ? items.length : next, 0, item);
}

const noteWords = (reading: Reading, sentence: Sentence, kind: KindName): void =>
  takeFreeWords(reading, sentence, {
    sort: 'unplaced',
    why: `may tell of ${kindTitle(kind).toLowerCase()}, which only a second reading of the talk finds here`,
  });

/** Gives it the words that no other item has. */
function takeFreeWords({ owners }: Reading, { from, to }: Sentence, owner: Owner): void {
  for (let token = from; token < to; token += 1) if (owners[token]?.sort !== 'item') owners[token] = owner;
}
