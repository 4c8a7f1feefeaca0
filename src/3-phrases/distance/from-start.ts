/** Stretches that begin where the run does: "from the word go up to six feet", "for the first eleven feet", "right off the bat to nine". */
import { readNumber } from '../number/read-number.ts';
import { type Token, textOf } from '../token/token.ts';
import { leadStart } from './lead.ts';

/** How far before a number, in tokens, the words are looked for. */
const REACH_TOKENS = 16;

const start =
  '(from|since|at) (right )?(the )?(very )?(start|beginning|word go|get go|git go|off|outset|first foot|first inch|mouth|threshold|opening|entrance|entry|flange|zero|nought|where (i|we) (went|go|came|come|start|started|dropped) in)|right (off|away|at the start)( the bat)?|straight (off|away)( the bat)?|off the bat';
const until =
  "(up|out|down|on|along|clear|all the way|right|running|going|goes|runs|through)?( out| up| on)? ?(to|until|till|til|through|thru)( about| around| maybe| say| roughly| nearly| almost| just| past| over| like| oh| uh| um| the| let 's see| i 'd say| what){0,3}$";
const fromStart = new RegExp(`\\b(${start})\\b( \\S+){0,8} ${until}`);
const firstFeet = /\b(the|those|these|your|our|its) (first|opening)( good| maybe| about| roughly)?$/;
/** What was done there once, or whose first feet they are. */
const otherwise =
  /^(of the (liner|repair|patch|drop|stack)|(was|were|has|have|had|got|is|are|'s|been) (been )?(replaced|redone|relined|lined|new|dug|fine|good|clean|clear|okay))\b/;

/** "PVC for the first four feet, then a coupling": the number is of what comes then. */
const thenAnother =
  /^(and )?(then|before|until|till|where|and) (a|an|the|we|you|there|it 's|it (turns|changes|goes|becomes|is)|into|you 're)\b/;

/** Whether the stretch that ends at a number begins at nought; `after` is the token behind the number and its unit. */
export function beginsAtStart(tokens: readonly Token[], at: number, after: number, hasUnit: boolean): boolean {
  const from = leadStart(tokens, at, REACH_TOKENS);
  const lead = textOf(tokens, from, at);
  const next = textOf(tokens, after, after + 5);
  // "The first, thirty feet, at the top": the first of several.
  const isJoined = tokens[at - 1]?.breakAfter === 'none';
  if (hasUnit && isJoined && firstFeet.test(lead)) return !otherwise.test(next) && !thenAnother.test(next);
  if (!fromStart.test(lead)) return false;
  // "Right off the bat, heavy, one to eight": it begins at a number of its own.
  for (let back = from; back < at; back += 1)
    if (!/^(zero|nought|off|first)$/.test(tokens[back]!.text) && readNumber(tokens, back) !== null) return false;
  return true;
}

const named =
  /(^| )from (about |around |right |roughly |just |maybe )?((the|that|this) (?!very|start|beginning|top|bottom|left|right|outset|word|get|off|first)\S+( \S+){0,2}?)( (on|out|down|up|along|over|clear|right|through|all the way))? (to|till|until)( about| around| maybe| roughly| nearly| almost| say)?$/;

/** "From the tee to twenty one", "from that y on down to thirteen": the words that name where a stretch begins, or null. */
export function beginsAtNamed(tokens: readonly Token[], at: number): { from: number; to: number } | null {
  const start = leadStart(tokens, at, REACH_TOKENS);
  const lead = textOf(tokens, start, at);
  const match = named.exec(lead);
  if (match === null) return null;
  const words = (match[3] ?? '').split(' ');
  const before = lead.slice(0, match.index).split(' ').filter(Boolean).length;
  const from = start + before + 1 + (match[2] ?? '').split(' ').filter(Boolean).length;
  const to = from + words.length;
  // "From the crack at twenty four to twenty eight": it has a number of its own.
  for (let inside = from; inside < to; inside += 1) if (readNumber(tokens, inside) !== null) return null;
  return { from, to };
}
