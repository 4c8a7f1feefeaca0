/** The pipe that comes back where a liner or a repair ends: named, it is a pipe of its own, even where it is the one from before. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { addPipeItem, isPlaced, placeOf } from './add-pipe.ts';
import { isStated, type MaterialPhrase, namesPipe } from './pipe-words.ts';
import type { SentenceClaims } from './read-claims.ts';
import { liveItems, type Reading, type RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How long after the end of a liner the pipe may be named, in sentences. */
const LATER_SENTENCES = 3;
const bareAgain = /\b(back in|back to|back into|back on|again|host|existing|original|old|parent|exposed|beyond)\b/;

export function addPipeAfterLiner(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  materials: readonly MaterialPhrase[],
  diameters: readonly PhraseOf<'diameter'>[],
  found: SentenceClaims,
): boolean {
  const material = materials[0];
  if (!material || materials.length > 1 || run.way === 'back' || !namesPipe(reading, material)) return false;
  const items = liveItems(reading, run.n);
  const liner = items.findLast((item) => item.kind === 'liner-start' || item.kind === 'liner-end');
  const endsHere = found.claims.find((claim) => claim.kind === 'liner-end' && !claim.isRejected);
  const isJustEnded =
    liner?.kind === 'liner-end' &&
    sentence.index - liner.sentence <= LATER_SENTENCES &&
    !items.some((item) => item.kind === 'pipe' && item.sentence >= liner.sentence);
  const size = diameters.at(-1)?.inches ?? null;
  if (endsHere && endsHere.from < material.from) {
    const placing = placeOf(reading, sentence, found, endsHere);
    addPipeItem(
      reading,
      sentence,
      run,
      material,
      size,
      placing.at,
      placing.basis,
      placing.rule,
      placing.sentencesBack,
      placing.isGuess,
    );
    return true;
  }
  const isSaidAgain = bareAgain.test(sentence.text);
  if (isJustEnded && liner.at !== null && (isSaidAgain || isStated(reading, material))) {
    addPipeItem(
      reading,
      sentence,
      run,
      material,
      size,
      liner.at,
      'nearby',
      'where the liner ended',
      sentence.index - liner.sentence,
      false,
    );
    return true;
  }
  // "It finishes at twenty, and we're back in clay": the end of the liner is told by the pipe that follows.
  const isInLiner = liner?.kind === 'liner-start' && isPlaced(reading, sentence);
  if (!isInLiner || !/\b(back (in|to|into|on)|again|host pipe)\b/.test(sentence.text) || !isStated(reading, material))
    return false;
  const placing = placeOf(reading, sentence, found, material);
  addPipeItem(
    reading,
    sentence,
    run,
    material,
    size,
    placing.at,
    placing.basis,
    placing.rule,
    placing.sentencesBack,
    placing.isGuess,
  );
  return true;
}

const comesBack = /\b(back (in|to|into|on)|again)\b/;

/** "They let in a piece of PVC from 30 to 34, then back to clay." */
export function addPipeAfterPatch(
  reading: Reading,
  sentence: Sentence,
  run: RunState,
  materials: readonly MaterialPhrase[],
  found: SentenceClaims,
): boolean {
  const material = materials.find((phrase) => phrase.material === run.material);
  if (!material || run.way === 'back' || !comesBack.test(sentence.text) || !namesPipe(reading, material)) return false;
  const claim = found.claims.find((other) => other.kind === 'patch' && !other.isRejected);
  const length = phrasesOf(sentence.phrases, 'length')[0]?.feet ?? null;
  const item = liveItems(reading, run.n).findLast((other) => other.at !== null);
  const recent = item?.kind === 'patch' && sentence.index - item.sentence <= LATER_SENTENCES ? item : null;
  const start = claim?.place?.distance.feet ?? null;
  const end =
    claim?.place?.distance.toFeet ??
    claim?.fields.to ??
    (start !== null && length !== null ? start + length : null) ??
    recent?.fields.to ??
    null;
  if (end === null) return false;
  addPipeItem(reading, sentence, run, material, null, end, 'relative', 'where the repair ended', 0, false);
  return true;
}
