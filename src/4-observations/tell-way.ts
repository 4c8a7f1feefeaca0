/** "Roots at nine. They're coming in from the top.": told of what was just found, with no subject of its own. */
import { textOf } from '../3-phrases/token/token.ts';
import type { Assertion } from './assert-claim.ts';
import { type Claim, kindTakes } from './claim.ts';
import { fillFields, mentionAgain } from './items.ts';
import { defectKinds, yieldingKinds } from './kind-roles.ts';
import { currentRun, focusedIn, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** What may stand before it where it is said of the thing before: a pronoun, or nothing, and what was thought of that thing. */
const noSubject =
  /^(?:(?:and|so|now|okay|yeah|well|mostly|just|all|again|looks? like|i 'd (?:call|say) (?:that|it|them) (?:\w+ )?|(?:that|it|they|these|those) (?:'s|'re|is|are|was|were) (?:light|minor|moderate|medium|heavy|bad|fine)) ?)*(?:(?:it|they|these|those|that) ?(?:'s|'re|is|are|was|were)? ?)?(?:all|mostly|just|really|still|kind of|sort of)? ?$/;
/** Said of water, hair and soil more often than of a pipe. */
const waysIn = /^(?:it 's |they 're |that 's )?(?:coming|comes|come|came|growing|pushing|poking|hanging|working)\b/;

/** Gives what is said of the way something comes in to the finding just made; null where it tells of a drain. */
export function tellWay(reading: Reading, sentence: Sentence, claim: Claim, assertion: Assertion): Item | null {
  if (claim.source !== 'sign' || !yieldingKinds.has(claim.kind)) return null;
  if (claim.place !== null || claim.relative !== null || claim.fields.serves != null) return null;
  if (assertion.aside !== null || reading.isSummary || sentence.index - reading.focusSentence > 1) return null;
  const { tokens } = reading.phrases;
  if (!noSubject.test(`${textOf(tokens, sentence.from, claim.from)} `.trimStart())) return null;
  if (!waysIn.test(textOf(tokens, claim.from, claim.to))) return null;
  const last = focusedIn(reading, currentRun(reading));
  if (!last || !defectKinds.has(last.kind) || !kindTakes(last.kind, 'position')) return null;
  if (last.fields.position !== null || last.fields.clock !== null) return null;
  fillFields(last, claim);
  mentionAgain(reading, last, sentence.from, sentence.to);
  return last;
}
