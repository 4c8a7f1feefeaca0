/** Several of one thing announced together, and then told one by one: "Two wyes. The first is at eighteen, the second at twenty one." */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { setField } from './assign-attributes.ts';
import { type Claim, newClaim } from './claim.ts';
import { withdrawItem } from './items.ts';
import { fittingKinds } from './kind-roles.ts';
import { currentRun, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How many sentences after the announcement they may be told of. */
const TOLD_SENTENCES = 4;
const announces = /\b(two|three|four|five|2|3|4|5|both|a pair of|pair of|couple of|couple|several)\b/;
const ordinal = /^(first|second|third|fourth|other|last|next)$/;
const begins = /^(is|'s|at|on|comes|sits|serves|takes|goes|carries|shows|picks|lies|one|from|off|here)$/;

type Thing = PhraseOf<'thing'>;

/** The thing that was announced in a number, not long before. */
function announced(reading: Reading, sentence: Sentence): { thing: Thing; index: number } | null {
  for (let index = sentence.index - 1; index >= Math.max(0, sentence.index - TOLD_SENTENCES); index -= 1) {
    const said = reading.sentences[index]!;
    const things = phrasesOf(said.phrases, 'thing').filter(({ source }) => source !== 'sign');
    if (things.length === 0) continue;
    const thing = things.find((other) => fittingKinds.has(other.kind));
    const isPlaced = phrasesOf(said.phrases, 'distance').length > 0;
    if (thing && announces.test(said.text) && !isPlaced && !said.isQuestion) return { thing, index };
    return null;
  }
  return null;
}

export function readOrdinals(reading: Reading, sentence: Sentence, claims: readonly Claim[]): Claim[] {
  const run = currentRun(reading);
  if (!run || run.way === 'back' || reading.isSummary || sentence.isQuestion) return [];
  const places = phrasesOf(sentence.phrases, 'distance');
  if (places.length === 0 || claims.some(({ source }) => source === 'word')) return [];
  const { tokens } = reading.phrases;
  const starts: number[] = [];
  for (let at = sentence.from; at < sentence.to - 1; at += 1)
    if (ordinal.test(tokens[at]!.text) && begins.test(tokens[at + 1]!.text)) starts.push(at);
  const head = starts.length > 0 ? announced(reading, sentence) : null;
  if (!head) return [];
  const made: Claim[] = [];
  for (const [index, from] of starts.entries()) {
    const to = starts[index + 1] ?? sentence.to;
    const inside = sentence.phrases.filter((phrase) => phrase.from >= from && phrase.to <= to);
    const place = phrasesOf(inside, 'distance')[0];
    if (!place) continue;
    const claim: Claim = { ...newClaim(head.thing.kind, 'one of several', { from, to: from + 1 }, 1), place };
    for (const phrase of inside) setField(claim.fields, phrase, claim.kind);
    made.push(claim);
  }
  // What was announced is what is told of now.
  for (const item of reading.items)
    if (made.length > 0 && item.sentence === head.index && item.kind === head.thing.kind && item.basis !== 'spoken')
      withdrawItem(item, 'told one by one');
  return made;
}
