/** How people say where a stretch ends, when the place is all a sentence gives: "out of it at forty", "Clear. Forty.", "Up to nine." */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Sentence } from './sentence.ts';

/** Words that end a stretch wherever they stand beside a place. */
const endingWords =
  /\b(out of (it|that|them|this|the (water|belly|sag|dip|roots?|grease|mud|scale|bad|worst|mess))|out the other|clears|cleared|ends|ended|ending|quits|quit|stops|lets go|let go|lets up|let up|until|till|tapers|peters|fades|gone (by|at)|done (by|at|with)|over (by|at|with)|finish(es|ed)? (by|at)|dry (again|by|at)|carries on|carry on|continues|keeps (on|going) (to|till|until)|runs? (on )?to|runs out|goes( on| out)? to|all the way to|clear (out )?to|(come|comes|coming) (back )?up|levels? (out|off)|flattens out|straightens|terminat\w*|far end|other end|end of (it|that)|back out|surfac\w*|(it|picture|view|vision) 's back|restored|can see again|see again|clear again|clean again|good again|round again|back to (normal|good|clean|round)|lens clears|behind (us|me))\b/;
/** "Out of it." with the number in the sentence after. */
const endsNext =
  /^((and|then|now|there|okay|so|finally|alright|it|it 's|i 'm|we 're|and i 'm|we|i) )*((come |comes |came |get |pop )?(out|out of (it|that|there|the \w+)|back out|out again)|it ends|ends|ended|clear(ed|s)?( up)?|clear of it|through it|through|dry( again)?|done|gone|over|(the )?end of (it|that|the \w+)|(view|picture) (is |'s )?(back|restored)|restored|good again|clean again)( again| here| now| there)*$/;
/** "Up to nine." by itself. */
const endsAlone =
  /^(and |then |it goes |goes |runs |on |all )*(up |out |on |down |the way |clear |clean |back )*(to|till|until|through|thru) (about |around |maybe |say |almost |just past )?\S+( \S+){0,3}$/;

const SHORT_TOKENS = 7;

/** Whether a sentence that gives a place and names no thing says where something ends. */
export function tellsEnd(sentences: readonly Sentence[], sentence: Sentence): boolean {
  const place = phrasesOf(sentence.phrases, 'distance').at(-1);
  if (!place) return false;
  if (place.distance.isEnd === true) return true;
  if (place.distance.toFeet !== null) return false;
  const before = sentences[sentence.index - 1];
  const isToldBefore =
    before !== undefined &&
    before.to - before.from <= SHORT_TOKENS &&
    sentence.to - sentence.from <= SHORT_TOKENS &&
    endsNext.test(before.text) &&
    !before.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'distance');
  return isToldBefore || endingWords.test(sentence.text) || endsAlone.test(sentence.text);
}
