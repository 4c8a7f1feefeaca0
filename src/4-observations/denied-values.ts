/** Values that are named only to be ruled out: "on the right, not on the left", "I wouldn't call them heavy". */
import type { Phrase } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import { isReplaceable, sameSort, sameValue } from './phrase-value.ts';
import type { Sentence } from './sentence.ts';

export function findDeniedValues(sentence: Sentence, tokens: readonly Token[]): Phrase[] {
  const values = sentence.phrases.filter(isReplaceable);
  const denied = values.filter((value) => {
    const lead = textOf(tokens, Math.max(sentence.from, value.from - 4), value.from);
    const isDenied =
      /\b(not|isn't|wasn't|instead of|rather than)( just| only| really)?( on| at| the| a| an| from| to| for| in| of| about)*$/.test(
        lead,
      );
    return (
      isRuledOut(value, sentence, tokens) ||
      (isDenied && values.some((other) => other !== value && sameSort(other, value) && !sameValue(other, value)))
    );
  });
  // "From the top, they come in all around, not just from the crown": it was said before, and is taken back there too.
  const before = values.filter((value) =>
    denied.some(
      (other) =>
        other !== value &&
        value.to <= other.from &&
        value.family === other.family &&
        value.family !== 'distance' &&
        sameValue(value, other) &&
        values.some((instead) => instead.from >= value.to && sameSort(instead, value) && !sameValue(instead, value)),
    ),
  );
  return [...denied, ...before];
}

/** How far before a value, in tokens, it may be ruled out. */
const LEAD_TOKENS = 9;
const rulesOut =
  /(^|\s)(not|never|hardly|scarcely|nowhere near|far from|anything but|by no means|without being|neither|nor|\S+n't)( (a|an|the|on|at|in|from|to|of|along|all|just|only|really|even|quite|exactly|terribly|particularly|especially|overly|super|real|very|too|that|so|it|them|this|those|these|they|be|being|been|is|are|was|'s|'re|call|called|calling|say|saying|said|rate|mark|log|put|describe|consider|think|look|looks|looking|seem|seems|mean|as|what|i|we|'d|would|going|gonna|anywhere|near|necessarily|far|go|goes|come|comes|coming|reach|reaches|run|runs))*$/;

/** How much of it and where it is are also ruled out where nothing is said instead: "not so light", "not all the way around". */
function isRuledOut(value: Phrase, sentence: Sentence, tokens: readonly Token[]): boolean {
  if (!/^(degree|position|clock)$/.test(value.family) || sentence.isQuestion) return false;
  let from = value.from;
  while (from > sentence.from && value.from - from < LEAD_TOKENS && tokens[from - 1]?.breakAfter === 'none') from -= 1;
  const lead = textOf(tokens, from, value.from);
  // "Nothing heavy" is light; "nothing on the bottom" is nowhere.
  return (
    rulesOut.test(lead) ||
    (value.family !== 'degree' &&
      /(^|\s)(nothing|none)( at all| much| there| else)?( (on|at|in|along|from|to|over|the))*$/.test(lead))
  );
}
