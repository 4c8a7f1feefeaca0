/**
 * A second reading of the whole talk, by a network that reads words in their company: for any stretch of it how likely it
 * tells of a thing of some kind, and which fields it gives it. It keeps no runs, follows no camera and settles no
 * correction; where it and the rules differ, one of them errs.
 */
import type { Phrases } from '../../3-phrases/find-phrases.ts';
import type { Token } from '../../3-phrases/token/token.ts';
import { type FieldChances, type NumberKey, softmax } from './heads.ts';
import type { CloseReader, CloseWindow } from './load-close-reader.ts';

/** It was taught on windows of about so many pieces of words; they overlap, so that each word has company on both sides. */
const WINDOW_PIECES = 188;
const STEP_PIECES = 110;
/** What a text begins and ends with. */
const OPENING = 101;
const CLOSING = 102;

/** Its last column stands for no thing in the pipe: it tells that a run begins. */
const START = 'run';

export interface CloseReading {
  readonly kinds: readonly string[];
  /** The chance that the words from one token to another tell of a thing of this kind, here and now. */
  chance(kind: string, from: number, to: number): number;
  /** What fields such a thing has. */
  fields(kind: string, from: number, to: number): FieldChances;
  /** The chance that a run begins within these words, and the fields it has: the direction. */
  startChance(from: number, to: number): number;
  startFields(from: number, to: number): FieldChances;
}

interface Window extends CloseWindow {
  /** The pieces of the talk in it; its first row is not one of them. */
  readonly from: number;
  readonly to: number;
  readonly numbers: readonly NumberKey[];
}

/** The talk in pieces of words. */
interface Pieces {
  readonly all: readonly number[];
  /** The first piece of each token, and the end. */
  readonly firsts: readonly number[];
  readonly numbers: readonly { readonly piece: number; readonly value: number }[];
}

export async function readClosely(phrases: Phrases, reader: CloseReader): Promise<CloseReading> {
  const pieces = cutPieces(phrases, reader);
  const windows = await readWindows(pieces, reader);
  const locate = makeLocator(pieces, windows);
  const { heads } = reader;
  const logitsOf = ({ window, first, last }: Place, kind: string): Float32Array => {
    const column = heads.kinds.indexOf(kind);
    return Float32Array.from(
      { length: last - first },
      (_, at) => window.kinds[(first + at) * heads.kinds.length + column]!,
    );
  };
  const chance = (kind: string, from: number, to: number): number => {
    const odds = logitsOf(locate(from, to), kind).reduce((sum, logit) => sum + Math.exp(logit), 0);
    return odds / (1 + odds);
  };
  const fields = (kind: string, from: number, to: number): FieldChances => {
    const place = locate(from, to);
    const anchor = new Float32Array(heads.width);
    for (const [at, share] of softmax(logitsOf(place, kind)).entries()) {
      const row = (place.first + at) * heads.width;
      for (let column = 0; column < heads.width; column += 1)
        anchor[column]! += share * place.window.states[row + column]!;
    }
    return heads.fields(kind, anchor, place.window.keys, place.window.numbers);
  };
  return {
    kinds: heads.kinds.filter((kind) => kind !== START),
    chance,
    fields,
    startChance: (from, to) => chance(START, from, to),
    startFields: (from, to) => fields(START, from, to),
  };
}

function cutPieces(phrases: Phrases, reader: CloseReader): Pieces {
  const all: number[] = [];
  const firsts: number[] = [];
  const numbers: { piece: number; value: number }[] = [];
  for (const { words, value } of printedWords(phrases)) {
    firsts.push(all.length);
    if (value !== null) numbers.push({ piece: all.length, value });
    for (const word of words) all.push(...reader.piecesOf(word));
  }
  firsts.push(all.length);
  return { all, firsts, numbers };
}

async function readWindows({ all, numbers }: Pieces, reader: CloseReader): Promise<Window[]> {
  const windows: Window[] = [];
  for (let from = 0; from === 0 || from + WINDOW_PIECES - STEP_PIECES < all.length; from += STEP_PIECES) {
    const to = Math.min(all.length, from + WINDOW_PIECES);
    windows.push({
      ...(await reader.read([OPENING, ...all.slice(from, to), CLOSING])),
      from,
      to,
      numbers: numbers
        .filter(({ piece }) => from <= piece && piece < to)
        .map(({ piece, value }) => ({ value, row: piece - from + 1 })),
    });
  }
  return windows;
}

/** The window in which a stretch has most company, and its rows there. */
interface Place {
  readonly window: Window;
  readonly first: number;
  readonly last: number;
}

function makeLocator({ all, firsts }: Pieces, windows: readonly Window[]) {
  const edge = (window: Window, piece: number): number =>
    Math.min(
      window.from === 0 ? Number.POSITIVE_INFINITY : piece - window.from,
      window.to === all.length ? Number.POSITIVE_INFINITY : window.to - piece,
    );
  const placeOf = (fromToken: number, toToken: number): Place => {
    const from = firsts[fromToken]!;
    const to = Math.max(from + 1, firsts[toToken]!);
    const middle = (from + to) / 2;
    const window = windows.reduce((best, each) => (edge(each, middle) > edge(best, middle) ? each : best));
    const first = Math.max(from, window.from) - window.from + 1;
    return { window, first, last: Math.max(first + 1, Math.min(to, window.to) - window.from + 1) };
  };
  const known = new Map<string, Place>();
  return (from: number, to: number): Place => {
    const key = `${from} ${to}`;
    const place = known.get(key) ?? placeOf(from, to);
    known.set(key, place);
    return place;
  };
}

const marks: Readonly<Record<Token['breakAfter'], readonly string[]>> = {
  none: [],
  comma: [','],
  stop: ['.'],
  question: ['?'],
};

/** Each token as it was taught: a number in figures where it begins and nothing where it goes on, then what is printed after it. */
export function printedWords({ tokens, numbers }: Pick<Phrases, 'tokens' | 'numbers'>) {
  const printed: { words: readonly string[]; value: number | null }[] = tokens.map(({ text, breakAfter }) => ({
    words: [text, ...marks[breakAfter]],
    value: null,
  }));
  for (const { from, to, value } of numbers) {
    printed.fill({ words: [], value: null }, from, to);
    printed[from] = { words: [String(value), ...marks[tokens[to - 1]!.breakAfter]], value };
  }
  return printed;
}
