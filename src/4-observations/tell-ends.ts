/** How people say where a stretch ends, when the place is all a sentence gives: "out of it at forty", "Clear. Forty.", "Up to nine." */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { kindTakes } from './claim.ts';
import type { Sentence } from './sentence.ts';

/** Words that end a stretch wherever they stand beside a place. */
export const endingWords =
  /\b(out of (it|that|them|this|(the|that|this) (water|belly|sag|dip|roots?|grease|mud|scale|bad|worst|mess))|out the (other|far|street|house|back|opposite)( (side|end))?|clears|cleared|ends|ended|ending|quits|quit|stops|lets go|let go|lets up|let up|until|till|tapers|peters|fades|(clean|clear|good|dry|round|fine) (by|at)|gone (by|at)|done (by|at|with)|over (by|at|with)|finish(es|ed)? (by|at)|dry (again|by|at)|carries on|carry on|continues|keeps (on|going) (to|till|until)|runs? (on )?to|runs out|goes( on| out)? to|all the way to|clear (out )?to|(come|comes|coming) (back )?up|levels? (out|off)|flattens out|straightens|terminat\w*|^(\S+ ){1,4}it 's (all )?gone$|gone again|dry (land|ground|pipe)|(up )?into (the )?(air|clear)|(is|are|'s) behind|far end|other end|(last|end|edge) of (it|that|this|the \w+)|back out|surfac\w*|(it|picture|view|vision|image|sight) (is |'s )?back|(got|have|get|getting) (my|the|our|a) (picture|view|image|eyes?|sight) back|clos(es|ed) (back )?up|heals up|tight again|sound again|whole again|solid again|normal again|straight again|restored|can see again|see again|clear again|clean again|good again|round again|back to (normal|good|clean|round)|lens clears|behind (us|me)|thins out|level (again|now)|^(and |then |it 's |we 've got |got )*(clean|clear|good|smooth|dry|fine|nice|round)( pipe)?( again)? (from|after|past)|that 's (all|the last|the end) of (it|that|this|them))\b/;
/** A sentence that is nothing but one of these ways of ending. */
const onlyEnds = (...ways: readonly string[]): RegExp =>
  new RegExp(
    `^(?:(?:and|then|now|there|okay|so|finally|alright|it|it 's|i 'm|we 're|we|i) )*(?:${ways.join('|')})(?: again| here| now| there)*$`,
  );
/** Ways of ending that are told of the place before as well as of the one after. */
const ends: readonly string[] = [
  "quits|finishes|'s stopped|has stopped|lets up|closes(?: back)? up|clears up|peters out|fades(?: out)?",
  '(?:come |comes |came |get |pop )?(?:out|out of (?:it|that|there|the \\w+)|back out|out again)',
  'clear of it|dry|(?:the )?end of (?:it|that|the \\w+)',
  "(?:view|picture) (?:is |'s )?(?:back|restored)|restored|(?:good|clean) again",
];
/** "Out of it." with the number in the sentence after. */
const endsNext = onlyEnds(
  ...ends,
  "quit|stops|stopped|finished|'s quit|let up|ends|ended|clear(?:ed|s)?(?: up)?|through it|through|done|gone|over",
  'back (?:up )?(?:in|into) (?:the )?(?:air|clear|light|daylight)',
);
/** "Thirty seven." with "Dry again." in the sentence after. */
const endedThen = onlyEnds(
  ...ends,
  'it ends|ends there|(?:got )?(?:my|the) (?:picture|view) back|(?:come |comes |came |get |pop )?up out of (?:it|that)|dry land|gone again',
  "(?:view|picture) (?:is |'s )?clear|vision (?:is |'s )?(?:back|restored|clear)|clear again|can see again",
);
/** "Up to nine." by itself. */
const endsAlone =
  /^(and |then |it goes |goes |runs |on |all )*(up |out |on |down |the way |clear |clean |back )*(to|till|until|through|thru) (about |around |maybe |say |almost |just past )?\S+( \S+){0,3}$/;

/** "I'm ending this one there", "this run ends at thirty five": what ends is the run. */
const stopsHere =
  /\b(run|survey|inspection|recording|pass|video) (ends|ended|finishes|finished|stops|stopped|terminates|is over)\b|\b(i|we)( 'm| 're| 'll|'m|'re|'ll| am| are)?( just)? (end|ending|stop|stopping|quit|quitting|((push|go|run|keep|head|feed|carry)\w*( \S+){0,3} (until|till|to)))\b/;

const SHORT_TOKENS = 7;
/** A sentence of so few tokens is a place and no more. */
const LONE_TOKENS = 4;

const isNaming = (sentence: Sentence): boolean => sentence.phrases.some((phrase) => phrase.family === 'thing');
const hasPlace = (sentence: Sentence): boolean => phrasesOf(sentence.phrases, 'distance').length > 0;

/** A place further than this, in sentences, from the stretch it may end ends nothing. */
const OPEN_SENTENCES = 12;

/** Whether something that has a length was named not long ago. */
const isAnythingOpen = (sentences: readonly Sentence[], sentence: Sentence): boolean =>
  sentences
    .slice(Math.max(0, sentence.index - OPEN_SENTENCES), sentence.index)
    .some((before) => phrasesOf(before.phrases, 'thing').some((thing) => kindTakes(thing.kind, 'to')));

/** Whether a sentence that gives a place and names no thing says where something ends. */
export const tellsEnd = (sentences: readonly Sentence[], sentence: Sentence): boolean =>
  endTold(sentences, sentence) !== null;

/**
 * How plainly such a sentence says that something ends: in its own words, or only by the short sentence beside it, which
 * may as well be a word on the pipe between two things ("Clear. Forty. Wye.").
 */
export function endTold(sentences: readonly Sentence[], sentence: Sentence): 'plain' | 'beside' | null {
  const place = phrasesOf(sentence.phrases, 'distance').at(-1);
  if (!place || stopsHere.test(sentence.text)) return null;
  if (place.distance.isEnd === true) return 'plain';
  if (place.distance.toFeet !== null) return null;
  if (endingWords.test(sentence.text) || endsAlone.test(sentence.text)) return 'plain';
  if (!isAnythingOpen(sentences, sentence)) return null;
  const before = sentences[sentence.index - 1];
  const next = sentences[sentence.index + 1];
  const isLone = sentence.to - sentence.from <= LONE_TOKENS && !isNaming(sentence);
  if (isLone && next && !isNaming(next) && !hasPlace(next) && endedThen.test(next.text)) return 'beside';
  const earlier = sentences[sentence.index - 2];
  // "Thirty seven. Dry again. Forty one.": the ending has its place already.
  // "Sag. Eighteen. Out. Twenty four.": the first number is where it begins.
  const first = sentences[sentence.index - 3];
  const isBegun =
    first !== undefined &&
    !hasPlace(first) &&
    phrasesOf(first.phrases, 'thing').some((thing) => kindTakes(thing.kind, 'to'));
  const isTaken =
    before !== undefined &&
    !isBegun &&
    earlier !== undefined &&
    earlier.to - earlier.from <= LONE_TOKENS &&
    hasPlace(earlier) &&
    !isNaming(earlier) &&
    (endedThen.test(before.text) || endsNext.test(before.text));
  const isToldBefore =
    before !== undefined &&
    !isTaken &&
    before.to - before.from <= SHORT_TOKENS &&
    sentence.to - sentence.from <= SHORT_TOKENS &&
    endsNext.test(before.text) &&
    !before.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'distance');
  return isToldBefore ? 'beside' : null;
}
