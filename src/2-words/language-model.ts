/**
 * What the trade's talk is like, as counts of its words, pairs and triples. A beam gains where the two words before make its
 * word more likely than the word is by itself, and loses where they make it less likely. Words and histories that were never
 * counted gain and lose nothing; other talk suffers all the same, and is told apart (`isTradeTalk`). Interpolated after Witten
 * and Bell (IEEE Transactions on Information Theory 37, 1991, method C); taking the chance of the word by itself away stands for
 * what the recogniser already holds of it (after the density ratio of McDermott, Sak and Variani, 2019; both from memory).
 */
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { z } from 'zod';
import { type CountedTalk, plainWords, SENTENCE_EDGE } from './count-talk.ts';
import { checkModelFiles, modelsFolder } from './model-files.ts';

/** In `models/`, written by `npm run teach`. */
export const LANGUAGE_FILE = 'language-model.json';

/** Natural logarithm of how much more or less likely a word may become. */
const LEAST_NATS = -2;
const MOST_NATS = 4;
/** Words before that are looked at. */
const HISTORY = 2;

export interface LanguageModel {
  /** How much likelier, in nats, `word` is after `before` than by itself. */
  gainOf(word: string, before: readonly string[]): number;
}

/** Where one beam stands: the words before, and the letters of the word it is in. */
export interface LanguageWalk {
  readonly before: readonly string[];
  readonly letters: string;
}

export const AT_SENTENCE_START: LanguageWalk = { before: [SENTENCE_EDGE], letters: '' };

/** The walk once its word is over, and what the word gains. */
export function endWord(model: LanguageModel, walk: LanguageWalk): { gain: number; before: readonly string[] } {
  let gain = 0;
  let before = walk.before;
  for (const word of plainWords(walk.letters, before.at(-1))) {
    if (word !== SENTENCE_EDGE) gain += model.gainOf(word, before);
    before = word === SENTENCE_EDGE ? [word] : [...before, word].slice(-HISTORY);
  }
  return { gain, before };
}

/** Below this many nats a word a text is other talk than the trade's: so is most reading aloud, and hardly any narration. */
const LEAST_LIKENESS_NATS = 0.6;
/** Of fewer words it cannot be told. */
const FEWEST_WORDS = 12;

/** Whether a text is of the kind that was counted: its words are much likelier in their order than by themselves. */
export function isTradeTalk(model: LanguageModel, text: string): boolean {
  const pieces = text.split(/(?=\s)/);
  let gained = 0;
  let before = AT_SENTENCE_START.before;
  for (const letters of pieces) {
    const ended = endWord(model, { before, letters });
    gained += ended.gain;
    before = ended.before;
  }
  return pieces.length >= FEWEST_WORDS && gained >= LEAST_LIKENESS_NATS * pieces.length;
}

// The numbers one by one are not checked: SHA256SUMS vouches for the file.
const countedSchema = z.object({
  words: z.custom<CountedTalk['words']>((value) => typeof value === 'object' && value !== null),
  pairs: z.custom<CountedTalk['pairs']>((value) => typeof value === 'object' && value !== null),
  triples: z.custom<CountedTalk['triples']>((value) => typeof value === 'object' && value !== null),
});

let loaded: Promise<{ model: LanguageModel; sha256: string }> | null = null;

/** @throws HearingError when the file is missing or damaged. */
export function loadLanguageModel(): Promise<{ model: LanguageModel; sha256: string }> {
  loaded ??= (async () => {
    const sha256 = await checkModelFiles(modelsFolder(), [LANGUAGE_FILE]);
    const text = await readFile(path.join(modelsFolder(), LANGUAGE_FILE), 'utf8');
    return { model: makeLanguageModel(countedSchema.parse(JSON.parse(text))), sha256 };
  })();
  return loaded;
}

/** What follows one history: how often which word, how often any, and how many different ones. */
interface Followers {
  readonly counts: Readonly<Record<string, number>>;
  readonly total: number;
  readonly different: number;
}

export function makeLanguageModel({ words, pairs, triples }: CountedTalk): LanguageModel {
  const total = sum(words);
  // A talk meets few of the histories: each is added up when it is first met, and the file is kept as it was read.
  const known = new Map<string, Followers | null>();
  const after = (history: string): Followers | null => {
    const found = known.get(history) ?? followers(history);
    known.set(history, found);
    return found;
  };
  const followers = (history: string): Followers | null => {
    const [first = '', second] = history.split(' ');
    const counts = own(second === undefined ? pairs : triples, history);
    if (!counts) return null;
    const kept = sum(counts);
    // Triples that were met once are not kept, but they were met: how often the pair before them was tells.
    const met = second === undefined ? kept : (own(own(pairs, first) ?? {}, second) ?? kept);
    return { counts, total: kept, different: Object.keys(counts).length + Math.max(0, met - kept) };
  };
  return {
    gainOf(word, before) {
      const count = own(words, word);
      if (!count) return 0;
      const alone = count / total;
      let chance = alone;
      for (let length = 1; length <= before.length; length++) {
        const found = after(before.slice(-length).join(' '));
        if (found)
          chance = ((own(found.counts, word) ?? 0) + found.different * chance) / (found.total + found.different);
      }
      return Math.min(MOST_NATS, Math.max(LEAST_NATS, Math.log(chance / alone)));
    },
  };
}

/** A key's value; "constructor" is a word like any other. */
const own = <T>(record: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined;

const sum = (counts: Readonly<Record<string, number>>): number =>
  Object.values(counts).reduce((total, count) => total + count, 0);
