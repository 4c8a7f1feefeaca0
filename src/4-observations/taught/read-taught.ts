/**
 * A reader that was taught from examples instead of written down: for each sentence the chance that it finds a thing of
 * each kind. It knows no places, runs or corrections, and it errs in other ways than the rules do: where the rules name
 * what it would not, or make nothing of what it would name, the inspector is asked to look.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { modelsFolder } from '../../2-words/model-files.ts';
import type { Phrases } from '../../3-phrases/find-phrases.ts';
import type { Sentence } from '../sentence.ts';
import { featuresOfWord, NUMBER, pairsOf, plainWords, wordsBetween } from './features.ts';
import type { Taught } from './teach.ts';

/** In `models/`, written by `npm run teach`. */
export const TAUGHT_FILE = 'taught-reader.json';

/** The weights one by one are not checked: that takes longer than reading a talk, and SHA256SUMS vouches for the file. */
const taughtSchema = z.object({
  kinds: z.array(z.string()),
  bias: z.array(z.number()),
  weights: z.custom<Taught['weights']>((value) => typeof value === 'object' && value !== null),
});

/** It was taught on sentences of about this length, in words; a longer one is read in windows. */
const LONGEST_WINDOW = 24;
const WINDOW_STEP = 8;

export interface TaughtReader {
  /** The chance, from 0 to 1, that `words` find a thing of each kind, by the kind's name. */
  chances(words: readonly string[]): ReadonlyMap<string, number>;
  /** How much a word alone speaks for a kind. */
  weight(word: string, kind: string): number;
}

/** Makes a reader of what was taught. What it worked out of a word is kept: most words come again and again. */
export function makeReader({ kinds, bias, weights }: Taught): TaughtReader {
  const known = new Map<string, { readonly sums: Float64Array; readonly count: number }>();
  const weigh = (features: readonly string[]) => {
    const sums = new Float64Array(kinds.length);
    for (const feature of features) {
      const pairs = Object.hasOwn(weights, feature) ? weights[feature]! : [];
      for (let at = 0; at < pairs.length; at += 2) sums[pairs[at]!]! += pairs[at + 1]!;
    }
    return { sums, count: features.length };
  };
  const weighWord = (word: string) => {
    const found = known.get(word) ?? weigh(featuresOfWord(word));
    known.set(word, found);
    return found;
  };
  return {
    chances(words) {
      const parts = [...words.map(weighWord), weigh(pairsOf(words))];
      const length = Math.sqrt(parts.reduce((sum, { count }) => sum + count, 0));
      return new Map(
        kinds.map((kind, index) => {
          const sum = parts.reduce((total, { sums }) => total + sums[index]!, 0);
          return [kind, 1 / (1 + Math.exp(-(bias[index]! + sum / length)))];
        }),
      );
    },
    weight: (word, kind) => weighWord(word).sums[kinds.indexOf(kind)] ?? 0,
  };
}

const shipped = new Map<string, TaughtReader>();

/** The reader whose weights are in a file of `models/`; loaded once. */
export function shippedReader(file: string = TAUGHT_FILE): TaughtReader {
  const reader =
    shipped.get(file) ??
    makeReader(taughtSchema.parse(JSON.parse(readFileSync(path.join(modelsFolder(), file), 'utf8'))));
  shipped.set(file, reader);
  return reader;
}

export interface TaughtReading {
  /** The chance that the sentence finds a thing of each kind, by the kind's name. */
  chances(sentence: Sentence): ReadonlyMap<string, number>;
  /** The chance of a kind when the numbers of the sentence are left out. */
  chanceOfWords(sentence: Sentence, kind: string): number;
  /** The token of the sentence that speaks most for the kind; null when none does by itself. */
  headOf(sentence: Sentence, kind: string): number | null;
}

/** Reads the sentences of a talk when they are asked for, each once. */
export function readTaught(phrases: Phrases, reader: TaughtReader = shippedReader()): TaughtReading {
  const talk = plainWords(phrases);
  const known = new Map<number, ReadonlyMap<string, number>>();
  const read = ({ from, to }: Sentence): ReadonlyMap<string, number> => {
    const words = wordsBetween(talk, from, to);
    let most = reader.chances(words.slice(0, LONGEST_WINDOW));
    for (let start = WINDOW_STEP; start + LONGEST_WINDOW - WINDOW_STEP < words.length; start += WINDOW_STEP) {
      const here = reader.chances(words.slice(start, start + LONGEST_WINDOW));
      most = new Map([...most].map(([kind, chance]) => [kind, Math.max(chance, here.get(kind)!)]));
    }
    return most;
  };
  return {
    chances(sentence) {
      const chances = known.get(sentence.from) ?? read(sentence);
      known.set(sentence.from, chances);
      return chances;
    },
    chanceOfWords: ({ from, to }, kind) =>
      reader.chances(wordsBetween(talk, from, to).filter((word) => word !== NUMBER)).get(kind) ?? 0,
    headOf({ from, to, phrases }, kind) {
      const isFree = (at: number): boolean => !phrases.some((phrase) => phrase.from <= at && at < phrase.to);
      let head: number | null = null;
      let most = 0;
      for (let at = from; at < to; at += 1) {
        const word = talk[at] ?? null;
        const weight = word === null || !isFree(at) ? 0 : reader.weight(word, kind);
        if (weight <= most) continue;
        head = at;
        most = weight;
      }
      return head;
    },
  };
}
