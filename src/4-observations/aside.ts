/** Why a sentence that gave nothing was set aside, in a word the inspector can check it by. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';

const goodWords =
  /\b(good|fine|clear|clean|tight|sound|nice|pretty|beautiful|perfect|solid|textbook|boring|seated|smooth|straight|round)\b/;

export function reasonAside(reading: Reading, sentence: Sentence): string {
  const axes = phrasesOf(sentence.phrases, 'assertion').map((phrase) => phrase.cue.axis);
  const hasThing = sentence.phrases.some((phrase) => phrase.family === 'thing');
  if (sentence.isQuestion) return 'question';
  if (phrasesOf(sentence.phrases, 'camera').some((phrase) => phrase.cue === 'pull-back')) return 'camera';
  if (axes.includes('past')) return 'history';
  if (axes.includes('planned')) return 'plan';
  if (axes.includes('general') && hasThing) return 'teaching';
  if (isAfterSummary(reading, sentence)) return 'summary';
  if (phrasesOf(sentence.phrases, 'distance').length > 0) return 'counter';
  if (goodWords.test(sentence.text)) return 'good';
  return 'chat';
}

function isAfterSummary(reading: Reading, sentence: Sentence): boolean {
  return (
    reading.isSummary && sentence.phrases.some((phrase) => phrase.family === 'thing' || phrase.family === 'material')
  );
}
