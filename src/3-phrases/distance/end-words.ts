/**
 * Words before a number that say a stretch ends there, by their frame: something lasts, and then "to", "until" or "by". How far
 * the camera goes ("I'm up to twenty") ends nothing.
 */
import { isSilentBefore } from '../token/silence.ts';
import { type Token, textOf } from '../token/token.ts';

/** How far before a number, in tokens, such words are looked for. */
const REACH_TOKENS = 10;

const soft =
  "( about| around| maybe| say| roughly| nearly| almost| just| past| over| under| oh| um| uh| what| like| let 's see| let me see| lemme see| where are we| what is it| what 's it say| hold on| hang on| call it)*";
const stays =
  /\b(still|same(?! (again|thing|deal|story|sort|kind|idea|business)\b))( \S+){0,2}( like| this| that| there| here| way| in it| under| going| bad| heavy| wet)* (at|around|by)( about| around)?$/;
const loses =
  /\b(i|we) (lose|lost|lose sight of|drop|leave|left) (it|them|that|the \w+)( again)?( (at|around|by|about|near)){1,2}$/;
const upToWhere =
  /\b(up|down|out|on|along|clear|all the way|right|back|from (here|there)) (to|till|until) (about )?(where|as far as|the (edge|point))( \S+){1,7}$/;
const until = /\b(until|till|til)( \S+){0,6}$/;
const reaches = new RegExp(
  `\\b(up|down|out|on|along|clear|all the way|far|from (here|there|then)|with (us|me)|here|there|stays|stayed|lasts|lasting|keeps|keeps up|holds|continues|go(es)?|runs?|carr(y|ies)|carr(y|ies) on|extends?|reaches|spreads|whole way)( out| on| up| down| along| over| like that| that way| all the way| clear){0,2} (to|through|thru)${soft}$`,
);
const gives = new RegExp(
  `\\b(lets? up|let up|gives out|gave out|dies out|died out|thins out|thinned out|eases( off| up)?|finish(es|ed)?( up)?|letting go( of \\w+)?|(it|that) ?('s|is) (up|out|dry|clear|clean|over|done|gone|level)( again)? (at|by)|(pops?|popped) (up|out)|ends?|ended|ending|quits?|peters out|tapers (off|out)|fades( out)?|(last|end|edge) of (it|that|this|them)( is| 's)?|come(s)? back( up)?|regained|restored|recovered|returns|(get|got|have|had|getting|regain|restore) (it|her|(the |my |our )?(view|picture|image|sight))( back)?|back up|picks up again|(good|sound|clean|clear|dry|round|solid|smooth|normal|straight|level) again)( again| now| there| here)?( at| by| after| from| around| near){0,2}${soft}$`,
);
/** The camera, or who pushes it, is what goes. */
const goer =
  /\b(i|we|i 'm|we 're|i 've|we 've|i 'll|we 'll|let 's|camera|head|counter|reel|coming|gonna|pushing|push)( \S+){0,3} (up|down|out|on|over|through|back|going|go|to|until|till|til|all the way)\b/;
const losesSight = /\b(don't|doesn't|didn't|do not|does not|never|not|lose|lost|out of)\b/;

/** "Cut out at thirty two": what was done there; "this run ends at 35": the run, and no stretch in it. */
const otherEnd =
  /\b(cut|cuts|cutting|rusted|rotted|rotten|worn|knocked|broken|busted|blown|burst|eaten|washed|hollowed|bulged|bulging|fallen|fell|sticks|sticking|pokes|poking|pulled|jutting|opened|reinstated)( it| them| that| this)?( back)? out (at|by)$|\b(this|that|the|my|our|first|second|third|last)? ?(run|survey|inspection|recording|pass|push|footage|video) (ends|ended|ending|finishes|finished|stops|stopped|terminates|is over|quits) (at|by)$|\b(bottom|invert|floor|top|crown|wall|side|piece|chunk|section|half|quarter|hub|bell)( of (it|this|the pipe))?( 's| is| was| has| are)( all| just| completely| plain| about| clean| nearly| rotted| eaten)* gone (at|by|from|around)$/;

export const isOtherEnd = (tokens: readonly Token[], at: number): boolean => otherEnd.test(leadOf(tokens, at));

/** Whether the words before the number at `at` say that something ends there. */
export const isEndLed = (tokens: readonly Token[], at: number): boolean => {
  const lead = leadOf(tokens, at);
  // "They lined the good end … thirty six, the liner's come away": after a silence only a word that waits for it leads to a number.
  if (
    isSilentBefore(tokens[at]) &&
    !/^(at|by|to|until|till|til|through|around|about)$/.test(tokens[at - 1]?.text ?? '')
  )
    return false;
  if (isGoing(lead)) return false;
  if (loses.test(lead) || stays.test(lead)) return true;
  if (upToWhere.test(lead) && / (is|at|about|around|it|that|call it|say|say it 's|like|maybe)$/.test(lead)) return true;
  return until.test(lead) ? isAskedFor(lead) : reaches.test(lead) || gives.test(lead);
};

/** "We push until forty": the camera goes on, and nothing ends. */
export const goesOnUntil = (tokens: readonly Token[], at: number): boolean => {
  const lead = leadOf(tokens, at);
  return until.test(lead) && isGoing(lead);
};

const isGoing = (lead: string): boolean => goer.test(lead) && !losesSight.test(lead);

function leadOf(tokens: readonly Token[], at: number): string {
  let from = at;
  while (from > 0 && at - from < REACH_TOKENS) {
    const token = tokens[from - 1]!;
    if (token.breakAfter === 'stop' || token.breakAfter === 'question' || /^\d/.test(token.text)) break;
    from -= 1;
  }
  return textOf(tokens, from, at);
}

/** "Until we meet the footing at thirty one": the number is of what it lasts until. */
const isAskedFor = (lead: string): boolean => {
  const words = (until.exec(lead)?.[0] ?? '').split(' ').slice(1);
  return words.length <= 2 || /^(at|by|around|about|say|say,|oh|uh|um|maybe)$/.test(words.at(-1) ?? '');
};
