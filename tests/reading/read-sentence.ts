/** A typed sentence becomes words with even timing, as if a careful recogniser had heard it. */
import { createHash } from 'node:crypto';
import type { Draft } from '../../shared/schemas/draft.ts';
import type { Words } from '../../shared/schemas/word.ts';
import { findPhrases, type Phrases } from '../../src/3-phrases/find-phrases.ts';
import { draftWords } from '../../src/4-observations/draft-words.ts';

/** Every example is read after this, so that a run exists. It gives one observation: the pipe at the start. */
export const OPENING = 'Front cleanout, heading downstream. Four inch clay.';

const WORD_SECONDS = 0.35;

export function wordsOf(text: string): Words {
  const texts = text.split(/\s+/).filter((part) => part !== '');
  return {
    schema: 'lineword/words@1',
    recording: {
      file: 'typed.vtt',
      sha256: createHash('sha256').update(text).digest('hex'),
      seconds: texts.length * WORD_SECONDS,
    },
    hearing: { model: 'transcript', sha256: null },
    words: texts.map((word, index) => ({
      text: word,
      startSeconds: Math.round(index * WORD_SECONDS * 1000) / 1000,
      endSeconds: Math.round((index + 1) * WORD_SECONDS * 1000) / 1000,
      probability: null,
    })),
    lost: [],
  };
}

export const draftSentence = (text: string): Draft => draftWords(wordsOf(`${OPENING} ${text}`));
export const phrasesIn = (text: string): Phrases => findPhrases(wordsOf(text).words);
