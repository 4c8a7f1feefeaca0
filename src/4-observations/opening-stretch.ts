/**
 * The first pipe told with how far it goes and what comes then: "Clay for the first seven feet, and at seven it becomes cast iron",
 * "iron from zero to thirteen, then clay". It turns where the stretch ends, and the first of the two is the pipe the run begins in.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { RunState } from './reading.ts';
import type { Sentence } from './sentence.ts';

const spans =
  /\b(first|for|until|till|up to|out to|from (zero|here|the start|the beginning)|as far as)\b|\bto \S+( feet)? (and|then)\b/;

/** Where the pipe turns, in feet, where a sentence tells of the pipe from the start of the run; or null. */
export function turnOfOpening(run: RunState, sentence: Sentence, at: number | null): number | null {
  if (run.furthest > 0 || !(at === null || at === 0)) return null;
  const places = phrasesOf(sentence.phrases, 'distance').map(({ distance }) => distance);
  const later = places.find(({ feet }) => feet > 0)?.feet ?? places.find(({ toFeet }) => toFeet !== null)?.toFeet;
  const length = places.length === 0 ? phrasesOf(sentence.phrases, 'length')[0]?.feet : undefined;
  return later ?? length ?? null;
}

/** Whether a sentence tells of the pipe that the run begins in before what it turns into. */
export const opensRun = (run: RunState, sentence: Sentence): boolean =>
  run.material === null && run.furthest === 0 && spans.test(sentence.text);
