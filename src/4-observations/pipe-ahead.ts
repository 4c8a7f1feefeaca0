/** "Six inch clay. I'm in at the manhole, going up to the house.": what the pipe is may be told before the run is announced. */
import { phrasesOf } from '../3-phrases/phrase.ts';
import { tokenGap } from './name-things.ts';
import { readClaims } from './read-claims.ts';
import { readPipes } from './read-pipes.ts';
import { currentRun, type Reading } from './reading.ts';
import { type Sentence, tellsOfOther } from './sentence.ts';

/** So many sentences before the run, with so many words between the material and the size. */
const AHEAD_SENTENCES = 4;
const BESIDE_TOKENS = 3;

const doubted = /^(denied|hedged)$/;

/** Reads the pipe that was told just before the first run began; the talk of the run itself may say more of it. */
export function readPipeAhead(reading: Reading, sentence: Sentence): void {
  const run = currentRun(reading);
  if (run?.n !== 1) return;
  const before = reading.sentences.slice(Math.max(0, run.sentence - AHEAD_SENTENCES), sentence.index);
  const told = before.findLast(tellsPipe);
  if (told) readPipes(reading, told, readClaims(told, reading.phrases.tokens), false);
}

function tellsPipe(sentence: Sentence): boolean {
  const { phrases } = sentence;
  if (
    sentence.isQuestion ||
    tellsOfOther(sentence) ||
    phrasesOf(phrases, 'distance').some(({ distance }) => distance.feet > 0)
  )
    return false;
  if (phrasesOf(phrases, 'assertion').some(({ cue }) => doubted.test(cue.axis))) return false;
  return phrasesOf(phrases, 'material').some((material) =>
    phrasesOf(phrases, 'diameter').some((size) => tokenGap(material, size) <= BESIDE_TOKENS),
  );
}
