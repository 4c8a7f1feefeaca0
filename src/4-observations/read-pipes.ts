/**
 * What the pipe is, and where it turns into another: from material words, nominal sizes and the verbs between them.
 * "Goes to clay at 16" is a material change; "it's clay from here on" and "we're in clay now" say what the pipe is.
 */
import { looseNames, type MaterialName } from '../../shared/vocabulary/materials.ts';
import { type Phrase, type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { nominalInches } from '../3-phrases/size/lexicon.ts';
import { textOf } from '../3-phrases/token/token.ts';
import { addChange, isPlaced, pipeClaim } from './add-pipe.ts';
import { addPipeAfterFitting } from './after-fitting.ts';
import { addPipeAfterLiner, addPipeAfterPatch } from './after-liner.ts';
import { assertClaim } from './assert-claim.ts';
import { fromHere } from './change-words.ts';
import { openingKinds } from './kind-roles.ts';
import { changePair, deniedMaterials, distinct, isStated, lastStated, NEAR_TOKENS } from './pipe-words.ts';
import type { SentenceClaims } from './read-claims.ts';
import { currentRun, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { addDiameter, addPipe } from './state-pipe.ts';

/** The first pipe told with its size is told for itself: only what stands right beside it bears on it. */
const BESIDE_TOKENS = 5;

/** Reads the pipe statements of a sentence, if any. */
export function readPipes(reading: Reading, sentence: Sentence, found: SentenceClaims, isRunTalk: boolean): boolean {
  const run = currentRun(reading);
  if (!run || reading.isSummary || sentence.isQuestion) return false;
  const named = phrasesOf(sentence.phrases, 'material')
    .filter((phrase) => phrase.material !== 'liner')
    .map((phrase) => (isLooselyNamed(phrase.rule, run.material) ? { ...phrase, material: run.material! } : phrase));
  // "It's PVC, and I'd have bet on clay": what was looked for is not what is there.
  const all = named.filter((phrase) => !expected.test(textOf(reading.phrases.tokens, named[0]!.to, phrase.from)));
  const diameters = sizesOfPipe(reading, sentence, run);
  if (all.length === 0 && diameters.length === 0) return false;
  const first = all[0] ?? diameters[0]!;
  const isFirst = run.material === null && run.furthest === 0;
  const near = isFirst && all.length > 0 && diameters.length > 0 ? BESIDE_TOKENS : NEAR_TOKENS;
  const cues = phrasesOf(sentence.phrases, 'assertion')
    .filter((phrase) => Math.abs(phrase.from - first.from) <= near && !(isFirst && isRemark(phrase, first)))
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
  if (isOfOtherTalk(reading, sentence, first, isFirst)) return false;
  const denied = deniedMaterials(sentence, all);
  const materials = distinct(all.filter((phrase) => !denied.has(phrase)));
  const stated = all.filter((phrase) => !denied.has(phrase) && isStated(reading, phrase));
  const material = lastStated(stated);
  if (addPipeAfterLiner(reading, sentence, run, materials, diameters, found)) return true;
  const hasPlace = isPlaced(reading, sentence);
  if (addPipeAfterPatch(reading, sentence, run, materials, found)) return true;
  if (addPipeAfterFitting(reading, sentence, run, material, diameters, found)) return true;
  const pair = changePair(reading, sentence, run, materials, all, hasPlace);
  if (pair) return addChange(reading, sentence, run, pair, diameters, found);
  if (material) return addPipe(reading, sentence, run, material, diameters, found, isRunTalk);
  if (diameters.length > 0 && materials.length === 0) return addDiameter(reading, sentence, run, diameters, found);
  return false;
}

/** How many sentences after the pipe its size may be said. */
const SIZE_SENTENCES = 2;

const notAcross = /\b(deep|depth|high|tall|thick|long|water|flow|down|below|above)\b/;

/** "It's clay. Six inches across.": right after the first pipe, with nothing else named, any size is the pipe's. */
function sizesOfPipe(reading: Reading, sentence: Sentence, run: RunState): PhraseOf<'diameter'>[] {
  const said = phrasesOf(sentence.phrases, 'diameter');
  if (said.length === 0 && run.material === null && run.furthest === 0) return sizesWithMaterial(reading, sentence);
  const last = reading.focus.at(-1);
  const isFresh = last?.kind === 'pipe' && last.at === 0 && last.run === run.n && run.diameterIn === null;
  if (said.length > 0 || !isFresh || sentence.index - reading.focusSentence > SIZE_SENTENCES) return said;
  if (sentence.phrases.some(({ family }) => family === 'thing' || family === 'material' || family === 'distance'))
    return [];
  if (notAcross.test(sentence.text)) return [];
  return phrasesOf(sentence.phrases, 'inches')
    .filter((phrase) => nominalInches.has(phrase.inches))
    .map((phrase) => ({ ...phrase, family: 'diameter' as const }));
}

/** The smallest size a drain is laid in that a defect beside it is not as likely to measure. */
const LEAST_PIPE_INCHES = 2;

/** "Concrete pipe, hand poured, four inch": where the run's first pipe is named and nothing else, a size is the pipe's. */
function sizesWithMaterial(reading: Reading, sentence: Sentence): PhraseOf<'diameter'>[] {
  if (!sentence.phrases.some(({ family }) => family === 'material')) return [];
  if (
    sentence.phrases.some(
      (phrase) => phrase.family === 'distance' || (phrase.family === 'thing' && !openingKinds.has(phrase.kind)),
    )
  )
    return [];
  return phrasesOf(sentence.phrases, 'inches')
    .filter((phrase) => nominalInches.has(phrase.inches) && phrase.inches >= LEAST_PIPE_INCHES)
    .filter((phrase) => !notAcross.test(textOf(reading.phrases.tokens, phrase.to, phrase.to + 2)))
    .map((phrase) => ({ ...phrase, family: 'diameter' as const }));
}

/**
 * "Four inch clay, same as the neighbor's", "cast iron, which is not what I'd have bet on": the run's first pipe is named, and
 * what comes after it is a remark. What others said of it still counts.
 */
const isRemark = (phrase: Phrase, first: { from: number; to: number }): boolean =>
  phrase.family === 'assertion' &&
  phrase.from > first.to &&
  !/\b(said|says|told|tells|claims?|claimed|swears?|swore|according|supposed)\b/.test(phrase.rule);

/** "The black pipe", of a pipe known to be of another sort that is black. */
const isLooselyNamed = (words: string, known: MaterialName | null): boolean =>
  known !== null && (looseNames[words]?.includes(known) ?? false);

const expected =
  /\b(bet|expect|expected|expecting|thought|guess|guessed|figured|hoped|hoping|unlike|instead|rather|than)\b/;

const supposed =
  /\b(if (that|it|this|they|i|you|we) (was|were|had|went|go|switch)|(i|you|they|we|he|she) 'd (go|want|use|put|switch|change|replace|recommend)|(?<!\b(?:this|that|it|which|here) )(would|should|could) (go|use|put|be|switch|change|replace)|recommend|instead)\b/;

/** "Next door it goes to plastic at twenty", "the seller says it was changed": told of another pipe, another time, or a wish. */
function isOfOtherTalk(
  reading: Reading,
  sentence: Sentence,
  first: { from: number; to: number },
  isFirst: boolean,
): boolean {
  const { tokens } = reading.phrases;
  const text = isFirst ? textOf(tokens, sentence.from, first.to) : sentence.text;
  if (supposed.test(text)) return true;
  const claim = pipeClaim(first, phrasesOf(sentence.phrases, 'distance')[0] ?? null);
  const phrases = sentence.phrases.filter((phrase) => !(isFirst && isRemark(phrase, first)));
  const { aside } = assertClaim(claim, [claim], { ...sentence, phrases }, tokens);
  return aside === 'chat' || aside === 'history';
}
