/**
 * Whether a bare "no" says that a thing is not there. It is the shortest word of denial and has most other uses: it answers,
 * corrects, exclaims ("oh no, there's a hole"), and denies what stands beside the thing ("a hole, no pipe at all").
 */

import type { PhraseOf } from '../3-phrases/phrase.ts';
import { isSilentBefore } from '../3-phrases/token/silence.ts';
import type { Token } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import type { Sentence } from './sentence.ts';

type Cue = PhraseOf<'assertion'>;

const bareNo = /^(no|nope|nah|naw|nil|zero|zip|nada)$/;
/** The same, and what denies all there is: neither goes on past the statement it stands in. */
const denyingAll = /^(no|nope|nah|naw|nope no|nothing|none|never|nowhere|zip|nada)$/;

/** What begins a statement of its own after a "no". */
const statementOpens =
  /^(there|here|that|this|these|those|it|they|i|we|you|he|she|let|call|make|wait|hang|hold|sorry|okay|ok|actually|mean|just|sir|ma'am)$/;
/** What joins another statement to one that denies. */
const joins = /^(and|then|until|till|okay|ok|but|so|now)$/;
const statementAfterJoin = /^(i|we|it|there|that|this|here|at|then|a|an|the|now|you|they|she|he)$/;

/** "No, there's a hole", "nothing for twelve feet and I'm in the main": the denial ends before this token. */
export function endsDenial(cue: Cue, at: number, tokens: readonly Token[]): boolean {
  if (cue.cue.axis !== 'denied') return false;
  const text = tokens[at]?.text ?? '';
  const next = tokens[at + 1]?.text ?? '';
  // "No it is": an address or an answer, and then a statement.
  if (bareNo.test(cue.rule) && statementOpens.test(text)) return true;
  return (
    denyingAll.test(cue.rule) && joins.test(text) && (statementAfterJoin.test(next) || /^(until|till)$/.test(text))
  );
}

/** What may follow a "no" that denies what stands before it. */
const closing =
  /^(also|either|here|there|anywhere|at|all|in|on|through|this|that|run|section|line|one|today|so|far|yet|any|none|of|it|them|these|nope|no|not|sir|ma'am)$/;
const opensAnother = /^(and|but|so|then|now|okay|ok|at|i|we|there|that|it|they|those|you|just|only|wait)$/;

/** "Roots no", "roots no cracks no", but not "an offset, no roots in it" nor "caved in, no way through". */
export function deniesBefore(
  cue: Cue,
  claims: readonly Claim[],
  sentence: Sentence,
  tokens: readonly Token[],
): boolean {
  // "A wye that goes nowhere" leads to nothing, and is there.
  if (cue.rule === 'nowhere')
    return !/^(go|goes|going|gone|went|lead|leads|led|leading|to)$/.test(tokens[cue.from - 1]?.text ?? '');
  if (!bareNo.test(cue.rule)) return true;
  let end = cue.to;
  while (end < sentence.to && tokens[end - 1]?.breakAfter === 'none' && !isSilentBefore(tokens[end])) end += 1;
  if (end === cue.to) return true;
  const next = tokens[cue.to]?.text ?? '';
  if (claims.some((claim) => claim.from === cue.to || claim.things.some((thing) => thing.from === cue.to))) {
    // Which of the two is denied shows at the end of the list.
    const last = Math.max(...claims.filter((claim) => claim.to <= end).map((claim) => claim.to));
    return sentence.phrases.some(
      (phrase) => phrase.family === 'assertion' && bareNo.test(phrase.rule) && phrase.from === last,
    );
  }
  if (opensAnother.test(next)) return true;
  if (sentence.phrases.some((phrase) => phrase.family === 'distance' && phrase.from === cue.to)) return true;
  return tokens.slice(cue.to, end).every(({ text }) => closing.test(text));
}
