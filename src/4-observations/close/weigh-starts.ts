/**
 * Where runs may begin, with the close reader's word: it lifts or lowers what the signs of an announcement weigh, and where it is
 * sure of a start that no sign announces, there is one more. The counter has its say afterwards, as with any other.
 */
import { type Direction, directions } from '../../../shared/vocabulary/attributes.ts';
import type { Announcement } from '../announcements.ts';
import { noSignals } from '../run-signs.ts';
import type { Sentence } from '../sentence.ts';
import type { CloseReading } from './read-closely.ts';

/** What a logit weighs in an announcement's score, and where it is neutral. Fitted on talks the close reader had not seen. */
const WEIGHT = 0.4;
const NEUTRAL = -1;
const MOST = 5;
/** A start without any sign must be as likely as this, and is weighed from here. */
const UNSIGNED = 0.7;
const UNSIGNED_SCORE = -3;
/** An announcement speaks for the sentences beside it as well. */
const REACH = 1;
/** A direction counts from this chance on. */
const DIRECTED = 0.6;

export function weighStarts(
  announced: readonly Announcement[],
  sentences: readonly Sentence[],
  close: CloseReading | null,
): readonly Announcement[] {
  if (close === null) return announced;
  const chanceBetween = (from: number, to: number): number =>
    close.startChance(sentences[Math.max(0, from)]!.from, sentences[Math.min(sentences.length - 1, to)]!.to);
  const weigh = (chance: number): number => {
    const logit = Math.log(chance / (1 - chance));
    return WEIGHT * (Math.max(-MOST, Math.min(MOST, logit)) - NEUTRAL);
  };
  const weighed = announced.map((one) => ({
    ...one,
    score: one.score + weigh(chanceBetween(one.from - REACH, one.to + REACH)),
  }));
  const unsigned = sentences
    .filter(({ index }) => announced.every(({ from, to }) => index < from - REACH || index > to + REACH))
    .map(({ index, from, to }) => ({ index, alone: close.startChance(from, to) }))
    .filter(({ index, alone }, _, all) =>
      all.every((other) => other.index === index || Math.abs(other.index - index) > REACH || other.alone <= alone),
    )
    .map(({ index }) => ({ index, chance: chanceBetween(index - REACH, index + REACH) }))
    .filter(({ chance }) => chance >= UNSIGNED)
    .map(({ index, chance }) => ({
      from: index,
      to: index,
      signals: { ...noSignals, direction: directionOf(close, sentences, index) },
      score: UNSIGNED_SCORE + weigh(chance),
    }));
  return [...weighed, ...unsigned].sort((a, b) => a.from - b.from);
}

/** Which way the run goes that begins about a sentence; null where the close reader is not sure. */
function directionOf(close: CloseReading, sentences: readonly Sentence[], index: number): Direction | null {
  const from = sentences[Math.max(0, index - REACH)]!.from;
  const { to } = sentences[Math.min(sentences.length - 1, index + REACH)]!;
  const [best] = close.startFields(from, to).get('direction') ?? [];
  return best && best.chance >= DIRECTED ? (directions.find((way) => way === best.value) ?? null) : null;
}
