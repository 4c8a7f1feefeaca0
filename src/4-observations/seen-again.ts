/**
 * Once a run has come to its end, or goes back, a thing that is pointed at as known ("there's the hole", "there goes that crack")
 * was listed on the way, under the same name or that of what it grew from.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import { definites } from './cue-reach.ts';
import { endKinds, limitKinds, milderKinds } from './kind-roles.ts';
import { type Item, liveItems, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How many words before a thing may stand between it and its article. */
const LEAD_TOKENS = 5;
/** A place no further than this past the end, in feet, is that of the end told again. */
const END_FEET = 0.5;

/** The listed thing that a claim without a place points back to, or null. */
export function pointedBackTo(reading: Reading, run: RunState, claim: Claim, sentence: Sentence): Item | null {
  if (claim.place !== null || claim.relative !== null || endKinds[claim.kind] !== undefined) return null;
  if (limitKinds.has(claim.kind) || !isNamedAsKnown(reading, claim, sentence) || !isOver(reading, run, sentence))
    return null;
  const live = liveItems(reading, run.n).filter((item) => item.sentence < sentence.index);
  const same = live.filter((item) => item.kind === claim.kind);
  const { position } = claim.fields;
  return (
    same.findLast((item) => position == null || item.fields.position === position) ??
    same.at(-1) ??
    live.findLast((item) => isAkin(item.kind, claim.kind)) ??
    null
  );
}

/** Whether the camera goes back, or came to an end past which no place was said. */
function isOver(reading: Reading, run: RunState, sentence: Sentence): boolean {
  if (run.way === 'back') return true;
  const end = liveItems(reading, run.n).findLast((item) => endKinds[item.kind] !== undefined);
  if (!run.end || !end || end.sentence >= sentence.index) return false;
  const furthest = (end.at ?? run.furthest) + END_FEET;
  return !reading.sentences
    .slice(end.sentence + 1, sentence.index + 1)
    .some(({ phrases }) => phrasesOf(phrases, 'distance').some(({ distance }) => distance.feet > furthest));
}

const shows =
  /\b(that|there|here|those|these) ('s|is|are|'re|goes?|comes?|was|were) (the|that|your|our|my|those|these)$/;

/** "The hole", "our friend the hole", "those roots": but not "that's a hole", nor "that's roots". */
function isNamedAsKnown({ phrases: { tokens } }: Reading, claim: Claim, sentence: Sentence): boolean {
  const from = Math.max(sentence.from, claim.from - LEAD_TOKENS);
  // "The pipe has come in on itself": the article is that of what is described.
  if (claim.source === 'sign' && !shows.test(textOf(tokens, from, claim.from))) return false;
  const lead = tokens.slice(from, claim.from);
  const at = lead.findLastIndex(({ text }) => definites.test(text) || /^(a|an|another|some|more|other)$/.test(text));
  const word = lead[at]?.text ?? '';
  const next = tokens[from + at + 1]?.text ?? '';
  if (!definites.test(word) || /^('d|'ll|would|must|could|might)$/.test(next)) return false;
  return !lead.slice(at + 1).some(({ text }) => /^('s|is|are|was|were|'re|has|have|had|where|which)$/.test(text));
}

const isAkin = (a: string, b: string): boolean =>
  (milderKinds.get(a)?.includes(b) ?? false) || (milderKinds.get(b)?.includes(a) ?? false);
