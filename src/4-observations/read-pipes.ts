/**
 * What the pipe is, and where it turns into another: from material words, nominal sizes and the verbs between them.
 * "Goes to clay at 16" is a material change; "it's clay from here on" and "we're in clay now" say what the pipe is.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { addChange, isPlaced, pipeClaim } from './add-pipe.ts';
import { addPipeAfterLiner, addPipeAfterPatch } from './after-liner.ts';
import { assertClaim } from './assert-claim.ts';
import { fromHere } from './change-words.ts';
import { changePair, deniedMaterials, distinct, isStated, lastStated, NEAR_TOKENS } from './pipe-words.ts';
import type { SentenceClaims } from './read-claims.ts';
import { currentRun, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { addDiameter, addPipe } from './state-pipe.ts';

/** Reads the pipe statements of a sentence, if any. */
export function readPipes(reading: Reading, sentence: Sentence, found: SentenceClaims, isRunTalk: boolean): boolean {
  const run = currentRun(reading);
  if (!run || reading.isSummary || sentence.isQuestion) return false;
  const all = phrasesOf(sentence.phrases, 'material').filter((phrase) => phrase.material !== 'liner');
  const diameters = phrasesOf(sentence.phrases, 'diameter');
  if (all.length === 0 && diameters.length === 0) return false;
  const first = all[0] ?? diameters[0]!;
  const cues = phrasesOf(sentence.phrases, 'assertion')
    .filter((phrase) => Math.abs(phrase.from - first.from) <= NEAR_TOKENS)
    .map((phrase) => phrase.cue.axis);
  const places = phrasesOf(sentence.phrases, 'distance');
  const isElsewhere =
    cues.some((axis) => axis === 'past' || axis === 'elsewhere' || axis === 'planned') && places.length === 0;
  if (
    isElsewhere ||
    (cues.includes('general') && places.length === 0 && run.material !== null && !fromHere.test(sentence.text))
  )
    return false;
  if (run.way === 'back' && places.length === 0) return false;
  if (isOfOtherTalk(reading, sentence, first)) return false;
  const denied = deniedMaterials(sentence, all);
  const materials = distinct(all.filter((phrase) => !denied.has(phrase)));
  const stated = all.filter((phrase) => !denied.has(phrase) && isStated(reading, phrase));
  const material = lastStated(stated);
  if (addPipeAfterLiner(reading, sentence, run, materials, diameters, found)) return true;
  const hasPlace = isPlaced(reading, sentence);
  if (addPipeAfterPatch(reading, sentence, run, materials, found)) return true;
  const pair = changePair(reading, sentence, run, materials, all, hasPlace);
  if (pair) return addChange(reading, sentence, run, pair, diameters, found);
  if (material) return addPipe(reading, sentence, run, material, diameters, found, isRunTalk);
  if (diameters.length > 0 && materials.length === 0) return addDiameter(reading, sentence, run, diameters, found);
  return false;
}

const supposed =
  /\b(if (that|it|this|they|i|you|we) (was|were|had|went|go|switch)|(i|you|they|we|he|she) 'd (go|want|use|put|switch|change|replace|recommend)|(would|should|could) (go|use|put|be|switch|change|replace)|recommend|instead)\b/;

/** "Next door it goes to plastic at twenty", "the seller says it was changed": told of another pipe, another time, or a wish. */
function isOfOtherTalk(reading: Reading, sentence: Sentence, first: { from: number; to: number }): boolean {
  if (supposed.test(sentence.text)) return true;
  const claim = pipeClaim(first, phrasesOf(sentence.phrases, 'distance')[0] ?? null);
  const { aside } = assertClaim(claim, [claim], sentence, reading.phrases.tokens);
  return aside === 'chat' || aside === 'history';
}
