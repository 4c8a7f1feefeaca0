/** Names taken back by people who hear themselves say them: "It's crushed. Crushed is wrong.", "Roots. Grease! I meant grease." */
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { phrasesOf } from '../3-phrases/phrase.ts';
import { textOf } from '../3-phrases/token/token.ts';
import type { Claim } from './claim.ts';
import { mentionAgain, withdrawItem } from './items.ts';
import { currentRun, focusedIn, type Item, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

const groupOf = new Map<string, string>(kinds.map((kind) => [kind.name, kind.group]));

const isWrong =
  /^(is|'s|was|would be|isn't|is not|not|wasn't)( really| probably| maybe| just)?( a| the| quite the| quite)? ?(wrong|wrong (word|term|name)|bad word|(right|best) (word|term|name)|right|word( for it)?|too strong( a word)?|too much|it)$/;
const saysNot = /\b(isn't|not|wasn't)\b/;

/** "Crushed is wrong.", "Collapse is too strong a word.": the next sentence gives the name. */
export function disownsName(reading: Reading, sentence: Sentence): boolean {
  const [named, other] = phrasesOf(sentence.phrases, 'thing');
  if (!named || other || sentence.isQuestion || sentence.index - reading.focusSentence > 1) return false;
  const tail = textOf(reading.phrases.tokens, named.to, sentence.to);
  const saysRight = /(right|best|word)( (word|term|name))?( for it)?$|it$/.test(tail) && !/wrong|strong|bad/.test(tail);
  if (!isWrong.test(tail) || (saysRight && !saysNot.test(tail))) return false;
  return reading.focus.some((item) => item.kind === named.kind && !item.isWithdrawn);
}

/** So many sentences back the first name may have been said. */
const SENTENCES = 3;

/** "I meant grease.", of what was just named anew: what stood at the same place before it was a slip of the tongue. */
export function replaceMisnamed(reading: Reading, sentence: Sentence, claim: Claim): Item | null {
  const run = currentRun(reading);
  const lead = textOf(reading.phrases.tokens, Math.max(sentence.from, claim.from - 3), claim.from);
  if (!run || sentence.isQuestion || !/\b(i|we) (meant|mean)( a| an| the| some)?$/.test(lead)) return null;
  const item = focusedIn(reading, run);
  if (!item || item.kind !== claim.kind || item.at === null || sentence.index - item.sentence > SENTENCES) return null;
  const slip = reading.items.findLast((other) => other !== item && !other.isWithdrawn && other.run === run.n);
  if (!slip || slip.at !== item.at || item.sentence - slip.sentence > SENTENCES || slip.kind === item.kind) return null;
  if (groupOf.get(slip.kind) !== groupOf.get(item.kind)) return null;
  withdrawItem(slip, `meant: "${sentence.text}"`);
  item.basis = slip.basis;
  item.evidence = { ...slip.evidence, source: item.evidence.source, rule: item.evidence.rule };
  item.corrected.push({ field: 'kind', was: slip.kind, from: sentence.from, to: sentence.to });
  mentionAgain(reading, item, sentence.from, sentence.to);
  return item;
}
