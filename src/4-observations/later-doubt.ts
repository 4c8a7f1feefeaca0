/** A sentence of nothing but doubt or certainty, after the thing it speaks of: "Crack at twenty. I can't be sure." */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { defectKinds } from './kind-roles.ts';
import { type Item, own, type Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

/** How long such a sentence may be, in tokens. */
const DOUBT_TOKENS = 12;
/** Words by which a doubt turns to a cause, an owner or a size. */
const ofSomethingElse =
  /\b(where|who|whose|why|how|what|which|when|from|because|age|old|size|deep|long|far|footage|number|distance|material|serves|belongs|caused)\b/;
const ofItself =
  /\b(sure|certain|confirm|swear|tell|say for|quote me|hold me|question|maybe|possibl[ey]|perhaps|wrong|positive|make out|bet|mistaken|doubt|inconclusive|unclear|suspicion|suspected|could be|might be|verify|definite)\b/;

/** Turns the doubt or the certainty of a whole sentence on the defect the sentence before has named. */
export function doubtLast(reading: Reading, sentence: Sentence): void {
  if (sentence.isQuestion || reading.isSummary || sentence.to - sentence.from > DOUBT_TOKENS) return;
  const cues = phrasesOf(sentence.phrases, 'assertion').map((phrase) => phrase.cue.axis);
  const isHedge = cues.includes('hedged');
  const isSure = cues.includes('sure');
  if (isHedge === isSure) return;
  if (sentence.phrases.some((phrase) => !/^(assertion|correction|position|camera|degree)$/.test(phrase.family))) return;
  if (!ofItself.test(sentence.text) || ofSomethingElse.test(sentence.text)) return;
  const item = reading.focus.findLast((other) => !other.isWithdrawn);
  if (!item || !defectKinds.has(item.kind) || sentence.index - reading.focusSentence !== 1) return;
  const said = reading.sentences[sentence.index - 1];
  if (said?.isQuestion || sentence.index - item.sentence > 2) return;
  // "Roots, from the maple.", "serving the laundry.": the doubt may be of that.
  if (
    !said ||
    said.phrases.some((phrase) => phrase.family === 'service') ||
    /\b(from|because|caused)\b/.test(said.text)
  )
    return;
  settle(item, isHedge);
  own(reading, sentence.from, sentence.to, { sort: 'item', item, isAgain: true });
  item.again.push({ from: sentence.from, to: sentence.to });
}

function settle(item: Item, isHedge: boolean): void {
  if (isHedge && item.status === 'present') {
    item.status = 'suspected';
    item.evidence.isHedged = true;
    item.evidence.notes.push('hedged after');
  } else if (!isHedge && item.status === 'suspected') {
    item.status = 'present';
    item.evidence.notes.push('confirmed after');
  }
}
