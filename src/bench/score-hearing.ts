/**
 * Compares heard words with what was said: word errors, trade words and numbers found, times, and whether probabilities
 * mean what they say. Numbers are brought to digits on both sides first ("two oh nine" and "209" are the same hearing).
 */
import type { Word } from '../../shared/schemas/word.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { materials } from '../../shared/vocabulary/materials.ts';

export interface SaidLine {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly text: string;
}

export interface HearingScore {
  readonly said: number;
  readonly substituted: number;
  readonly deleted: number;
  readonly inserted: number;
  readonly tradeSaid: number;
  readonly tradeHeard: number;
  /** Trade words printed where none was said. */
  readonly tradeInvented: number;
  readonly numbersSaid: number;
  readonly numbersHeard: number;
  /** Seconds between a line's known beginning and that of its first word; the same for its end and last word. */
  readonly startErrors: readonly number[];
  readonly endErrors: readonly number[];
  /** Probability given and whether the word was right, for each heard word. */
  readonly claims: readonly (readonly [number, boolean])[];
  /** "said > heard" for each trade word or number that was not heard. */
  readonly misses: readonly string[];
}

interface Token {
  readonly text: string;
  /** Index of the line or word it came from. */
  readonly from: number;
}

const UNITS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const units = new Map<string, number>([...UNITS.map((word, value) => [word, value] as const), ['oh', 0], ['o', 0]]);
const tens = new Map<string, number>(TENS.map((word, index) => [word, (index + 2) * 10]));

/** "forty fives" and "45s" are the same hearing; "ones" is mostly no number. */
const plurals = new Map<string, string>(
  [...UNITS.slice(2), ...TENS].map((word) => [`${word.replace(/y$/, 'ie').replace(/x$/, 'xe')}s`, word]),
);

const plain = new Set(
  'the a an of in on at to and or is it out no not side end start line access pass through past stop main hub pipe here there up down turn water point joint old new city off over black white green plastic can could see sand dirt all another any away behind cannot different earlier eighty everywhere forty four from full further her hold holding little long lost never newer non our outside part place previous reach reached recent six some step steps that third this together two type was what whole without worn wrong zero'.split(
    ' ',
  ),
);

/** Single words of the trade, taken from the vocabulary; everyday words in it say nothing about hearing. */
export const tradeWords: ReadonlySet<string> = new Set(
  [...kinds, ...materials]
    .flatMap((entry) => [...entry.words])
    .flatMap((phrase) => phrase.toLowerCase().split(/[\s|?*]+/))
    .filter((word) => /^[a-z]{3,}$/.test(word) && !plain.has(word)),
);

/** Words in one form: lower case, no punctuation, numbers as digits. */
export function canonicalTokens(texts: readonly string[]): Token[] {
  const tokens: Token[] = [];
  for (const [from, text] of texts.entries()) {
    const cleaned = text
      .toLowerCase()
      .replace(/(\d)-(\d)\/(\d)/g, '$1 $2/$3')
      .replace(/(\d)\s*%/g, '$1 percent')
      .replace(/\bclean[ -]outs?\b/g, (found) => found.replace(/[ -]/, ''))
      .replace(/['’]/g, '')
      .replace(/channell/g, 'channel')
      .replace(/\bgray/g, 'grey')
      .replace(/\bback-?pitch/g, 'back pitch')
      .replace(/\ba bs\b/g, 'abs')
      .replace(/(\d),(\d{3})\b/g, '$1$2')
      // A number does not run on over a comma or a full stop.
      .replace(/[,.;:?!]+(\s|$)/g, ' | ')
      .replace(/[^a-z0-9./| ]+/g, ' ')
      .replace(/\.(?!\d)|(?<!\d)\./g, ' ');
    for (const printed of cleaned.split(/\s+/).filter(Boolean)) {
      const word = plurals.get(printed) ?? printed.replace(/^(\d+)s$/, '$1');
      const spelled = /^\d+(st|nd|rd|th)$/.test(word) ? word : word.split('/').join(' / ').trim();
      for (const part of spelled.split(' ')) if (part) tokens.push({ text: part, from });
    }
  }
  return joinHalves(joinLetters(joinNumbers(tokens)));
}

function joinNumbers(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  let groups: number[] = [];
  let texts = '';
  let first = 0;
  let last: 'tens' | 'hundred' | 'point' | 'other' = 'other';
  const flush = (): void => {
    if (groups.length > 0 || texts) out.push({ text: texts + groups.join(''), from: first });
    groups = [];
    texts = '';
    last = 'other';
  };
  for (const [index, token] of tokens.entries()) {
    const isOpen = groups.length > 0 || texts !== '';
    const unit = token.text === 'o' && !isOpen ? undefined : units.get(token.text);
    const ten = tens.get(token.text);
    const next = tokens[index + 1]?.text ?? '';
    if (!isOpen) first = token.from;
    if (unit !== undefined && !(token.text === 'oh' && !isOpen)) {
      if ((last === 'tens' && unit > 0 && unit < 10) || last === 'hundred') groups[groups.length - 1]! += unit;
      else groups.push(unit);
      last = last === 'point' ? 'point' : 'other';
    } else if (ten !== undefined) {
      if (last === 'hundred') groups[groups.length - 1]! += ten;
      else groups.push(ten);
      last = 'tens';
    } else if (/^\d+(\.\d+)?$/.test(token.text)) {
      texts += groups.join('') + token.text;
      groups = [];
      last = 'other';
    } else if (token.text === 'hundred') {
      if (groups.length > 0) groups[groups.length - 1]! *= 100;
      else if (texts) texts = String(Number(texts) * 100);
      else {
        if (out.at(-1)?.text === 'a') out.pop();
        groups.push(100);
      }
      last = 'hundred';
    } else if (token.text === 'thousand' && isOpen) {
      // What follows belongs to it: "two thousand nineteen" is 2019.
      groups = [Number(texts + groups.join('')) * 1000];
      texts = '';
      last = 'hundred';
    } else if (token.text === 'point' && isOpen && (units.has(next) || /^\d+$/.test(next))) {
      texts += `${groups.join('')}.`;
      groups = [];
      last = 'point';
    } else if (token.text === 'and' && last === 'hundred' && (units.has(next) || tens.has(next))) {
      // "a hundred and twelve": the word says nothing.
    } else {
      flush();
      if (token.text !== '|') out.push(token);
    }
  }
  flush();
  return out;
}

/** "P V C" is said letter by letter and printed as one. */
function joinLetters(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (const token of tokens) {
    const previous = out.at(-1);
    const isLetter = /^[b-hj-z]$|^a$/.test(token.text);
    const follows = previous && /^[a-z]{1,4}$/.test(previous.text) && lettersOnly.has(previous.text + token.text);
    if (isLetter && follows) out[out.length - 1] = { ...previous, text: previous.text + token.text };
    else out.push(token);
  }
  return out;
}
const lettersOnly = new Set([
  'pv',
  'pvc',
  'ab',
  'abs',
  'sd',
  'sdr',
  'vc',
  'vcp',
  'ci',
  'cip',
  'cipp',
  'hd',
  'hdp',
  'hdpe',
]);

/** "11 and a half" and "11.5" are the same. */
function joinHalves(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (const token of tokens) {
    const [number, and, a] = out.slice(-3);
    const fraction = token.text === 'half' ? '.5' : token.text === 'quarter' ? '.25' : null;
    if (fraction && and?.text === 'and' && a?.text === 'a' && /^\d+$/.test(number?.text ?? '')) {
      out.splice(-3, 3, { text: number!.text + fraction, from: number!.from });
    } else out.push(token);
  }
  return out;
}

/** Compares what was said with what was heard, both in order of time. */
export function scoreHearing(lines: readonly SaidLine[], words: readonly Word[]): HearingScore {
  const said = canonicalTokens(lines.map((line) => line.text));
  const heard = canonicalTokens(words.map((word) => word.text));
  const pairs = align(said, heard);
  const startErrors: number[] = [];
  const endErrors: number[] = [];
  const claims: [number, boolean][] = [];
  const misses: string[] = [];
  const counts = {
    substituted: 0,
    deleted: 0,
    inserted: 0,
    tradeSaid: 0,
    tradeHeard: 0,
    tradeInvented: 0,
    numbersSaid: 0,
    numbersHeard: 0,
  };
  const edges = new Map<number, { first?: Word; last?: Word }>();
  const firsts = new Map<number, Token>();
  const lasts = new Map<number, Token>();
  for (const token of said) {
    if (!firsts.has(token.from)) firsts.set(token.from, token);
    lasts.set(token.from, token);
  }
  for (const [index, [reference, hypothesis]] of pairs.entries()) {
    const isRight = reference?.text === hypothesis?.text;
    if (!reference) counts.inserted++;
    else if (!hypothesis) counts.deleted++;
    else if (!isRight) counts.substituted++;
    if (reference) {
      const around = () =>
        `${reference.text} > ${pairs
          .slice(Math.max(0, index - 1), index + 2)
          .map(([, token]) => token?.text ?? '-')
          .join(' ')}`;
      if (tradeWords.has(reference.text)) {
        counts.tradeSaid++;
        if (isRight) counts.tradeHeard++;
        else misses.push(around());
      }
      if (/^\d/.test(reference.text)) {
        counts.numbersSaid++;
        if (isRight) counts.numbersHeard++;
        else misses.push(around());
      }
      if (isRight && hypothesis) {
        const edge = edges.get(reference.from) ?? {};
        if (firsts.get(reference.from) === reference) edge.first = words[hypothesis.from]!;
        if (lasts.get(reference.from) === reference) edge.last = words[hypothesis.from]!;
        edges.set(reference.from, edge);
      }
    }
    if (hypothesis) {
      if (
        tradeWords.has(hypothesis.text) &&
        !isRight &&
        !pairs.slice(Math.max(0, index - 3), index + 4).some(([token]) => token?.text === hypothesis.text)
      )
        counts.tradeInvented++;
      const probability = words[hypothesis.from]!.probability;
      if (probability !== null) claims.push([probability, isRight]);
    }
  }
  for (const [line, edge] of edges) {
    if (edge.first) startErrors.push(Math.abs(edge.first.startSeconds - lines[line]!.startSeconds));
    if (edge.last) endErrors.push(Math.abs(edge.last.endSeconds - lines[line]!.endSeconds));
  }
  return { said: said.length, ...counts, startErrors, endErrors, claims, misses };
}

/** Least-change alignment; ties prefer a substitution. */
function align(said: readonly Token[], heard: readonly Token[]): [Token | undefined, Token | undefined][] {
  const width = heard.length + 1;
  const cost = new Uint32Array((said.length + 1) * width);
  for (let j = 0; j < width; j++) cost[j] = j;
  for (let i = 1; i <= said.length; i++) {
    cost[i * width] = i;
    for (let j = 1; j < width; j++) {
      const same = cost[(i - 1) * width + j - 1]! + (said[i - 1]!.text === heard[j - 1]!.text ? 0 : 1);
      cost[i * width + j] = Math.min(same, cost[(i - 1) * width + j]! + 1, cost[i * width + j - 1]! + 1);
    }
  }
  const pairs: [Token | undefined, Token | undefined][] = [];
  let i = said.length;
  let j = heard.length;
  while (i > 0 || j > 0) {
    const here = cost[i * width + j]!;
    const step = i > 0 && j > 0 ? (said[i - 1]!.text === heard[j - 1]!.text ? 0 : 1) : 9;
    if (i > 0 && j > 0 && here === cost[(i - 1) * width + j - 1]! + step) pairs.push([said[--i], heard[--j]]);
    else if (i > 0 && here === cost[(i - 1) * width + j]! + 1) pairs.push([said[--i], undefined]);
    else pairs.push([undefined, heard[--j]]);
  }
  return pairs.reverse();
}
