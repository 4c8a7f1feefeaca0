/**
 * What the rules name where a reader taught from examples, or the close reader, is all but sure that nothing of the kind is said is
 * not listed as a finding: on talk neither had seen, three or four of each five such findings were wrong. Its words are kept for the inspector to look at.
 */
import { kindTitle } from '../../shared/vocabulary/kind-titles.ts';
import type { Unit } from '../../shared/wording/short.ts';
import type { Phrase } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import { closeOpinionOf } from './close/close-opinion.ts';
import { endKinds } from './kind-roles.ts';
import type { Item, Owner, Reading } from './reading.ts';
import { ALL_BUT_NONE, isWeighed, opinionOf } from './taught/opinion.ts';

const names: ReadonlySet<Phrase['family']> = new Set(['thing', 'material', 'angle']);

/** A statement of what the pipe turns into is no longer than this. */
const SHORT_TOKENS = 8;

export function withholdUnlikely(reading: Reading): void {
  for (const item of reading.items) {
    // It reads the words as they were heard: of a word taken for another it can say nothing.
    if (item.isWithdrawn || item.evidence.isRespelled || item.respelled.length > 0) continue;
    if (!isLeftToRules(reading, item) && opinionOf(reading, item).own < ALL_BUT_NONE) {
      withhold(reading, item);
      forgetEnd(reading, item);
    } else if (isDeniedClosely(reading, item)) withhold(reading, item);
  }
}

function withhold(reading: Reading, item: Item): void {
  const { phrases, owners } = reading;
  item.isWithdrawn = true;
  item.isWithheld = true;
  const why = whyOf(item, phrases.unit);
  item.evidence.notes.push(why);
  const isNothing = (closeOpinionOf(reading, item)?.own ?? 1) < CLOSE_NOTHING;
  const owner: Owner = isNothing
    ? { sort: 'aside', why: 'names a thing and tells of none' }
    : { sort: 'unplaced', why };
  owners.forEach((other, token) => {
    if (other?.sort === 'item' && other.item === item) owners[token] = owner;
  });
}

/** A run does not end in what is not there. */
function forgetEnd({ runs }: Reading, item: Item): void {
  const run = runs.find(({ n }) => n === item.run);
  if (run?.end && run.end.reason === endKinds[item.kind] && run.end.at === item.at) run.end = null;
}

/** Below this chance of the close reader four of five were wrong, on talk neither reader had seen; below the next, all but four in a hundred. */
const CLOSE_NONE = 0.05;
const CLOSE_NOTHING = 0.003;

function isDeniedClosely(reading: Reading, item: Item): boolean {
  const opinion = closeOpinionOf(reading, item);
  return opinion !== null && opinion.own < CLOSE_NONE;
}

/** What goes on about something named before is left to the rules, like what is weighed in words. */
function isLeftToRules({ sentences }: Reading, { kind, sentence, status, corrected, basis, evidence }: Item): boolean {
  const said = sentences[sentence]!;
  if (status === 'suspected' || corrected.length > 0) return true;
  // It knows words, and a bend is often told by a number.
  if (evidence.rule.includes('<angle>')) return true;
  // Where the line ends is told in as few words.
  if (evidence.source === 'word' && basis === 'spoken' && isEnd(kind)) return true;
  // What a pipe is made of is told in so few words that they say little.
  if (kindTakes(kind, 'material')) return true;
  if (kindTakes(kind, 'toMaterial') && evidence.sentenceTokens <= SHORT_TOKENS) return true;
  return !said.phrases.some(({ family }) => names.has(family)) || isWeighed(said);
}

const isEnd = (kind: string): boolean => endKinds[kind] !== undefined && endKinds[kind] !== 'stopped';

const whyOf = ({ kind, at }: Item, unit: Unit): string =>
  `may name ${kindTitle(kind).toLowerCase()}${at === null ? '' : ` at ${at} ${unit}`}, which a second reading of the talk does not find here`;
