/** Sentences that are corrections as a whole: what opens them, what they take back, and how a speaker goes back to what was said. */
import { type PhraseOf, phrasesOf } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Sentence } from './sentence.ts';

/** What opens the sentence, when it opens with a correction. */
export function openingCorrection(sentence: Sentence, tokens: readonly Token[]): 'strong' | 'weak' | null {
  const opening = phrasesOf(sentence.phrases, 'correction').find(
    (cue) =>
      cue.cue.act === 'replace' &&
      // "No main today": the word is part of what is named.
      !sentence.phrases.some((phrase) => phrase.family === 'thing' && phrase.from <= cue.from && phrase.to >= cue.to) &&
      tokens
        .slice(sentence.from, cue.from)
        .every((token) => /^(oh|okay|um|uh|well|ah|hm|hmm|and|so|but|yeah|now|wait|hang|on)$/.test(token.text)),
  );
  if (opening) return opening.cue.strength;
  if (givesOtherName(sentence, tokens)) return 'strong';
  // "Thirty two, I mean.", "It's thirty two, actually."
  const closing = phrasesOf(sentence.phrases, 'correction').find(
    (cue) =>
      cue.to === sentence.to && /^(i mean|actually|sorry|rather|i should say|my mistake|correction)$/.test(cue.rule),
  );
  if (closing && sentence.to - sentence.from <= 7) return closing.cue.strength;
  const hasThing = sentence.phrases.some((phrase) => phrase.family === 'thing');
  const strong = phrasesOf(sentence.phrases, 'correction').some(
    (cue) => cue.cue.act === 'replace' && cue.cue.strength === 'strong',
  );
  return strong && !hasThing ? 'strong' : null;
}

/** "Scratch that, it's grease": another name for what is taken back. */
function givesOtherName(sentence: Sentence, tokens: readonly Token[]): boolean {
  const cue = isWithdrawing(sentence);
  const thing = phrasesOf(sentence.phrases, 'thing')[0];
  return (
    cue !== null &&
    thing !== undefined &&
    cue.to <= thing.from &&
    cue.from - sentence.from <= 2 &&
    !sentence.phrases.some(({ family }) => family === 'distance') &&
    /^((no|it|that|those|they|is|are|'s|'re|just|really|actually|a|an|some|more|like) ?)+$/.test(
      textOf(tokens, cue.to, thing.from),
    )
  );
}

export const isWithdrawing = (sentence: Sentence): PhraseOf<'correction'> | null =>
  phrasesOf(sentence.phrases, 'correction').find((cue) => cue.cue.act === 'withdraw') ?? null;

/** Words by which a speaker goes back to something said before. */
export const goesBack =
  /\b(i said|i called|i had (it|that|you|him|them) (down )?(as|at|for)|i told you|i gave you|my mistake|my error|wrong|correct|correction|amend|should be|should have been|looking at it again|on second (look|thought)|actually|turns out|closer look|closer inspection|now that i|really|reads|not \w+|was a|is a|make that|change (that|the)|fix (that|the)|not on|misread|misspoke|strike|scratch|isn't|wasn't|the one (i|at)|that one)\b/;
