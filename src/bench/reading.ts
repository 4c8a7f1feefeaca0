/**
 * Reading apart from hearing: the sample's talk, repeated to ten minutes and to an hour, from words to draft.
 * The peer is compromise alone on the same text (its tagger and its numbers): a general reader of English that
 * makes nothing of what it reads.
 */
import nlp from 'compromise';
import type { Words } from '../../shared/schemas/word.ts';
import { draft, transcribed } from '../pipeline.ts';
import { type Figure, medianSeconds, peakMegabytes } from './figure.ts';
import { sample } from './sample.ts';

export async function benchReading(): Promise<Figure[]> {
  const once = await transcribed(sample.transcript);
  const figures: Figure[] = [];
  for (const [title, seconds] of [
    ['reading, ten minutes', 600],
    ['reading, an hour', 3600],
  ] as const) {
    const words = repeatTo(once, seconds);
    const text = words.words.map((word) => word.text).join(' ');
    const workSeconds = await medianSeconds(5, () => draft(words));
    const peerSeconds = await medianSeconds(5, () => nlp(text).numbers().json());
    figures.push({
      title,
      workSeconds,
      recordingSeconds: words.recording.seconds,
      peakMegabytes: peakMegabytes(),
      peer: { title: 'compromise tagging the same text', workSeconds: peerSeconds },
    });
  }
  return figures;
}

/** The same talk over and over, until it is `seconds` long. */
export function repeatTo(once: Words, seconds: number): Words {
  const length = once.recording.seconds + 1;
  const times = Math.ceil(seconds / length);
  const words = Array.from({ length: times }, (_, turn) =>
    once.words.map((word) => ({
      ...word,
      startSeconds: word.startSeconds + turn * length,
      endSeconds: word.endSeconds + turn * length,
    })),
  ).flat();
  return { ...once, words, recording: { ...once.recording, seconds: times * length } };
}
