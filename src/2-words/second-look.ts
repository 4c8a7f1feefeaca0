/**
 * A second look at words that the recogniser is known to print for a word of the trade ("why" for "wye"): the whole
 * window is scored once more with the other word in its place. How far it falls behind tells the reader what to make of
 * it; nothing is changed here. Of numbers those are looked at that sound alike ("fifteen" and "fifty"): a wrong one is
 * printed with a probability as high as a right one, but lies only a few nats before the other (see docs/hearing.md).
 */
import type { Word } from '../../shared/schemas/word.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { materials } from '../../shared/vocabulary/materials.ts';
import { services } from '../../shared/vocabulary/services.ts';
import { numberIn, soundsLikeNumber } from '../../shared/vocabulary/sounds-like-number.ts';
import { type Decoded, readText, type Sound } from './decode-beam.ts';
import { logSumExp } from './logits.ts';
import type { Recogniser } from './recogniser.ts';
import { expand } from './trade-phrases.ts';

/** Further behind than this another hearing is not worth the telling (research: true words fell at most 5.6 behind). */
const WORTH_TELLING_NATS = 6;
/** Each look reads the window's text once more. */
const MOST_LOOKS = 12;

export interface TextWord {
  /** Tokens of the word within the window's text. */
  readonly from: number;
  readonly to: number;
  readonly word: Word;
}

interface Look {
  readonly first: number;
  readonly count: number;
  readonly said: string;
}

/** What the recogniser prints, and what may have been said. */
function readMisheard(): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const entry of [...kinds, ...materials, ...services]) {
    const misheard =
      'misheard' in entry ? (entry.misheard as readonly { heard: string; said: string }[] | undefined) : undefined;
    for (const { heard, said } of misheard ?? []) {
      for (const text of expand(heard).map((spelled) => spelled.replaceAll('_', ' '))) {
        const known = found.get(text) ?? [];
        if (text !== said && !known.includes(said)) found.set(text, [...known, said]);
      }
    }
  }
  return found;
}

let misheard: Map<string, string[]> | null = null;

/** Adds `alternatives` to the words of one window that may be another. */
export async function lookAgain(
  recogniser: Recogniser,
  sound: Sound,
  opening: readonly number[],
  text: Pick<Decoded, 'tokens' | 'logProbs'>,
  words: readonly TextWord[],
): Promise<Word[]> {
  misheard ??= readMisheard();
  const looks = findLooks(words, misheard).slice(0, MOST_LOOKS);
  const out = words.map(({ word }) => word);
  for (const look of looks) {
    const first = words[look.first]!;
    const last = words[look.first + look.count - 1]!;
    const tail = /[,.;:?!]+$/.exec(last.word.text)?.[0] ?? '';
    const swapped = recogniser.tokens.encode(` ${matchCase(look.said, first.word.text)}${tail}`);
    const before = text.tokens.slice(0, first.from);
    const after = text.tokens.slice(last.to);
    // What was heard has been scored when it was decoded.
    const heard = text.logProbs.slice(first.from).reduce((sum, logProb) => sum + logProb, 0);
    const other = await scoreText(recogniser, sound, opening, [...before, ...swapped, ...after], first.from);
    const behindNats = Math.round((heard - other) * 100) / 100;
    if (behindNats > WORTH_TELLING_NATS) continue;
    const word = out[look.first]!;
    out[look.first] = { ...word, alternatives: [...(word.alternatives ?? []), { text: look.said, behindNats }] };
  }
  return out;
}

function findLooks(words: readonly TextWord[], table: ReadonlyMap<string, string[]>): Look[] {
  const looks: Look[] = [];
  const plain = words.map(({ word }) => word.text.toLowerCase().replace(/[^a-z0-9' ]/g, ''));
  for (const first of plain.keys()) {
    const number = soundsLikeNumber(numberIn(words[first]!.word.text));
    if (number !== null) looks.push({ first, count: 1, said: number });
    for (let count = 1; count <= 3 && first + count <= plain.length; count++) {
      for (const said of table.get(plain.slice(first, first + count).join(' ')) ?? [])
        looks.push({ first, count, said });
    }
  }
  return looks;
}

/** The log-probability of the text from one token on, the end included. */
async function scoreText(
  recogniser: Recogniser,
  sound: Sound,
  opening: readonly number[],
  textTokens: readonly number[],
  from: number,
): Promise<number> {
  const ids = [...opening, ...textTokens, recogniser.tokens.end];
  const firstPosition = opening.length + from - 1;
  const { logits } = await readText(recogniser, sound, [ids], firstPosition, ['logits']);
  const size = logits!.dims[2]!;
  const data = logits!.data as Float32Array;
  let sum = 0;
  for (let position = firstPosition; position + 1 < ids.length; position++) {
    const row = data.subarray((position - firstPosition) * size, (position - firstPosition + 1) * size);
    sum += row[ids[position + 1]!]! - logSumExp(row, recogniser.tokens.firstSpecial + 1);
  }
  logits!.dispose();
  return sum;
}

const matchCase = (said: string, heard: string): string =>
  /^[A-Z]/.test(heard) && /^[a-z]/.test(said) ? said[0]!.toUpperCase() + said.slice(1) : said;
