/**
 * What the rules name where a reader taught from examples is all but sure that nothing of the kind is said is not listed as a
 * finding: on talk neither had seen, four of five such findings were wrong. Its words are kept for the inspector to look at.
 */
import { kindTitle } from '../../shared/vocabulary/kind-titles.ts';
import type { Unit } from '../../shared/wording/short.ts';
import type { Phrase } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
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
    if (isLeftToRules(reading, item)) continue;
    if (opinionOf(reading, item).own >= ALL_BUT_NONE) continue;
    item.isWithdrawn = true;
    const run = reading.runs.find(({ n }) => n === item.run);
    if (run?.end && run.end.reason === endKinds[item.kind] && run.end.at === item.at) run.end = null;
    const why = whyOf(item, reading.phrases.unit);
    item.evidence.notes.push(why);
    const owner: Owner = { sort: 'unplaced', why };
    reading.owners.forEach((other, token) => {
      if (other?.sort === 'item' && other.item === item) reading.owners[token] = owner;
    });
  }
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
  `may name ${kindTitle(kind).toLowerCase()}${at === null ? '' : ` at ${at} ${unit}`}, which a reader taught from examples does not find here`;
