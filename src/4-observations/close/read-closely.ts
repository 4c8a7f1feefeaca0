/**
 * A second reading of the whole talk, by a network that reads words in their company: for any stretch of it how likely it
 * tells of a thing of some kind, and which fields it gives it. It keeps no runs, follows no camera and settles no
 * correction; where it and the rules differ, one of them errs.
 */
import type { Phrases } from '../../3-phrases/find-phrases.ts';
import type { Token } from '../../3-phrases/token/token.ts';
import { type FieldChances, type Likely, softmax } from './heads.ts';
import type { CloseReader } from './load-close-reader.ts';
import { type Pieces, type Place, readWindows } from './read-windows.ts';

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

export async function readClosely(phrases: Phrases, reader: CloseReader): Promise<CloseReading> {
  const { heads } = reader;
  const locate = await readWindows(cutPieces(phrases, reader), reader);
  const logitsOf = ({ window, first, last }: Place, kind: string): Float32Array => {
    const column = heads.kinds.indexOf(kind);
    return Float32Array.from(
      { length: last - first },
      (_, at) => window.kinds[(first + at) * heads.kinds.length + column]!,
    );
  };
  const logOdds = (place: Place, kind: string): number =>
    Math.log(logitsOf(place, kind).reduce((sum, logit) => sum + Math.exp(logit), 0));
  const chance = (kind: string, from: number, to: number): number => {
    const odds = Math.exp(mean(locate(from, to).map((place) => logOdds(place, kind))));
    return odds / (1 + odds);
  };
  const fieldsAt = (place: Place, kind: string): FieldChances => {
    const anchor = new Float32Array(heads.width);
    for (const [at, share] of softmax(logitsOf(place, kind)).entries()) {
      const row = (place.first + at) * heads.width;
      for (let column = 0; column < heads.width; column += 1)
        anchor[column]! += share * place.window.states[row + column]!;
    }
    return heads.fields(kind, anchor, place.window.keys, place.window.numbers);
  };
  const fields = (kind: string, from: number, to: number): FieldChances =>
    together(locate(from, to).map((place) => fieldsAt(place, kind)));
  return {
    kinds: heads.kinds.filter((kind) => kind !== START),
    chance,
    fields,
    startChance: (from, to) => chance(START, from, to),
    startFields: (from, to) => fields(START, from, to),
  };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** What several windows hold of the same fields: each value's mean chance, the likeliest first. */
function together(all: readonly FieldChances[]): FieldChances {
  const [first] = all;
  if (all.length === 1) return first!;
  return new Map(
    [...first!.keys()].map((field) => {
      const sums = new Map<Likely['value'], number>();
      for (const { value, chance } of all.flatMap((each) => each.get(field) ?? []))
        sums.set(value, (sums.get(value) ?? 0) + chance / all.length);
      const likely = [...sums].map(([value, chance]) => ({ value, chance }));
      return [field, likely.sort((a, b) => b.chance - a.chance)];
    }),
  );
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
