/**
 * Whether a value said in a sentence of its own is said of the thing at hand: "it's about half", "I'd call that moderate", "left
 * side". "The driveway's heavy with ice", "I'm about half done" and "it's a heavy camera" speak of something else.
 */
import type { Phrase } from '../3-phrases/phrase.ts';
import { type Token, textOf } from '../3-phrases/token/token.ts';
import type { Sentence } from './sentence.ts';

const clauseOpener = /^(and|but|so|because|though|although|which|then|since|while|or)$/;
const verb =
  /^('s|is|are|was|were|'re|'m|am|has|have|had|'ve|wants?|needs?|says?|said|likes?|got|gets?|went|goes|ran|left|took|takes|told|uses?|used|keeps?|kept|looks?|feels?|sounds?)$/;
const pronoun = /^(it|that|they|this|these|those|there|which|what|you|one|ones|both|all|some|most|here|she|he)$/;
/** What a speaker does who gives a value. */
const judges =
  /^(say|call|make|put|rank|grade|give|rate|figure|guess|think|mean|see|reckon|measure|get|got|have|judge|read|come|suppose|believe|estimate|bet|want|lost|lose|take|hit|found|find|ran|run|show|shows)$/;
/** Parts and measures of whatever is spoken of: their size is its size. */
const partNouns =
  /^(pipe|line|bore|opening|depth|deepest|worst|level|loss|size|gap|wall|walls|inside|part|rest|middle|end|water|pieces?|bits?|picture|damage|side|joint|lip|figure|number|deep|mess|whole|thing|stuff|flow|room|hole|section|spot|growth|buildup|width|height|diameter)$/;

const small =
  /^(a|an|the|of|at|in|on|to|and|so|or|it|that|this|there|here|now|is|'s|again|too|anyway|though|but|all|at|for|from|with|up|down|over|across|deep|wide|high|tall|long|thick|full|gone|blocked|closed|left|then|about|maybe|really|pretty|side|hand|one|ones|kind|sort|amount|i|'d|say|they|them|by|as|if|you|time|way|end)$/;

/** "The top's clean.": nothing is there. */
const saysAllIsWell =
  /^(('s|is|looks|are|was|seems|and|the|other) )*(still |all |nice and |pretty |perfectly |just )?(clean|clear|fine|good|okay|ok|sound|solid|intact|dry|perfect|smooth|nothing)\b/;

function clauseStart(sentence: Sentence, tokens: readonly Token[], phrase: Phrase): number {
  let from = phrase.from;
  while (from > sentence.from) {
    const before = tokens[from - 1]!;
    if (before.breakAfter !== 'none' || clauseOpener.test(before.text)) break;
    from -= 1;
  }
  return from;
}

/** "It's a heavy camera", "a bit of a character": the value describes what is named right after it. */
function describesOther(phrase: Phrase, sentence: Sentence, tokens: readonly Token[]): boolean {
  if (!/^(degree|inches|diameter)$/.test(phrase.family)) return false;
  if ((tokens[phrase.to - 1]?.breakAfter ?? 'stop') !== 'none' || phrase.to >= sentence.to) return false;
  const hasArticle =
    /^(a|an|my|our|your|his|her)$/.test(tokens[phrase.from - 1]?.text ?? '') ||
    /^an? /.test(textOf(tokens, phrase.from, phrase.to));
  const next = tokens[phrase.to]?.text ?? '';
  const isKnown = sentence.phrases.some((other) => other.from <= phrase.to && other.to > phrase.to);
  return hasArticle && !isKnown && !small.test(next) && !partNouns.test(next);
}

export function speaksOfThing(phrase: Phrase, sentence: Sentence, tokens: readonly Token[]): boolean {
  if (describesOther(phrase, sentence, tokens)) return false;
  if (phrase.family === 'service') return true;
  if (/^(position|clock)$/.test(phrase.family) && saysAllIsWell.test(textOf(tokens, phrase.to, sentence.to)))
    return false;
  const from = clauseStart(sentence, tokens, phrase);
  const words = tokens.slice(from, phrase.from).map((token) => token.text);
  const at = words.findIndex((word) => verb.test(word));
  if (at < 0) return true;
  const first = words.find((word) => !/^(um|uh|oh|well|yeah|okay|no|now|and|so|by|like)$/.test(word)) ?? '';
  if (pronoun.test(first)) return true;
  const isSpeaker = words.slice(0, at + 1).some((word) => /^(i|we)$/.test(word));
  if (isSpeaker) {
    if (words.some((word, index) => judges.test(word) || (word === 'with' && words[index - 1] === 'going')))
      return true;
    return phrase.family === 'share' && !phrase.isBare;
  }
  const head = words[at - 1] ?? '';
  const isNamed = sentence.phrases.some(
    (other) => other.from <= from + at - 1 && other.to > from + at - 1 && other.family !== 'assertion',
  );
  return at === 0 || pronoun.test(head) || partNouns.test(head) || isNamed;
}
