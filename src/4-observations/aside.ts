/** Why a sentence that gave nothing was set aside, in a word the inspector can check it by. */
import { kindTitle } from '../../shared/vocabulary/kind-titles.ts';
import { type Phrase, phrasesOf } from '../3-phrases/phrase.ts';
import type { Owner, Reading } from './reading.ts';
import type { Sentence } from './sentence.ts';
import { likelyIn } from './taught/opinion.ts';

const goodWords =
  /\b(good|fine|clear|clean|tight|sound|nice|pretty|beautiful|perfect|solid|textbook|boring|seated|smooth|straight|round)\b/;

/** Below this a word is as likely another: chosen on heard narrations, where it costs one look in a hundred. */
const WEAKLY_HEARD = 0.6;
/** What is said of a thing, never of the counter. */
const ofThings: ReadonlySet<Phrase['family']> = new Set([
  'position',
  'clock',
  'degree',
  'share',
  'inches',
  'angle',
  'service',
]);
const presents =
  /\b(there|here|that) (is|are|was|'s) (a|an|some|one|the)\b|\b(got|have|has|see|find|found|comes?) (a|an|some|one|in)\b/;

/** What a sentence is set aside for when nothing speaks against a finding in it. */
const isPlain: ReadonlySet<string> = new Set(['chat', 'counter', 'good']);

/** From this chance on a person has to look: on talk it had not seen, more than half of those held a finding. */
const LIKELY = 0.6;

/** The same where something speaks against it: it is asked, taught, planned or past. */
const LIKELY_ALL_THE_SAME = 0.9;

/**
 * What becomes of a sentence that nothing was made of. With a distance and what is only said of things (a side, a size, a
 * share, a drain), or a distance and "there's a", it names a thing in words that are not known: a person has to look.
 */
export function leftOver(reading: Reading, sentence: Sentence): Exclude<Owner, null> {
  const why = reasonAside(reading, sentence);
  const likely =
    why === 'summary' ? null : likelyIn(reading.taught, sentence, isPlain.has(why) ? LIKELY : LIKELY_ALL_THE_SAME);
  if (likely)
    return { sort: 'unplaced', why: `may be ${kindTitle(likely).toLowerCase()}, by its likeness to other talk` };
  const isAtPlace = why === 'counter' && !goodWords.test(sentence.text);
  if (!isAtPlace) return { sort: 'aside', why };
  const isOfThing = sentence.phrases.some(({ family }) => ofThings.has(family)) || presents.test(sentence.text);
  if (isOfThing) return { sort: 'unplaced', why: 'words not known, at a place' };
  const isWeak = reading.phrases.tokens
    .slice(sentence.from, sentence.to)
    .some(({ probability }) => probability !== null && probability < WEAKLY_HEARD);
  return isWeak ? { sort: 'unplaced', why: 'heard weakly, at a place' } : { sort: 'aside', why };
}

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
