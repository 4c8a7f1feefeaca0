/** "She bells out. Six inch tile.": what the pipe is past a fitting that changes its size is said right after it. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { addPipeItem } from './add-pipe.ts';
import { sizeKinds } from './kind-roles.ts';
import type { MaterialPhrase } from './pipe-words.ts';
import type { SentenceClaims } from './read-claims.ts';
import { isPlaceGuessed, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** So many sentences after the fitting, in a statement no longer than so many words. */
const LATER_SENTENCES = 2;
const SHORT_TOKENS = 8;

export function addPipeAfterFitting(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  material: MaterialPhrase | null,
  diameters: readonly PhraseOf<'diameter'>[],
  found: SentenceClaims,
): boolean {
  const fitting = reading.focus.findLast(({ kind }) => sizeKinds.has(kind));
  const size = diameters.at(-1)?.inches ?? null;
  if (!fitting || fitting.run !== run.n || size === null) return false;
  if (sentence.index === fitting.sentence || sentence.index - reading.focusSentence > LATER_SENTENCES) return false;
  if (sentence.to - sentence.from > SHORT_TOKENS || found.claims.length > 0) return false;
  if (phrasesOf(sentence.phrases, 'distance').length > 0 || phrasesOf(sentence.phrases, 'relative').length > 0)
    return false;
  const since = sentence.index - fitting.sentence;
  const isGuess = isPlaceGuessed(fitting);
  addPipeItem(reading, sentence, run, material, size, fitting.at, fitting.basis, 'past the fitting', since, isGuess);
  return true;
}
