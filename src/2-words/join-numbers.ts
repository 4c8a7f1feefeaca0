/**
 * Brings the numbers of one talk to one form before anybody reads them: the recogniser prints the same "eleven and a half"
 * as "11. And a half", "Eleven and a half" and "11 point 5". Digits come out; what was printed stays in `printed`.
 * Only joins what cannot mean anything else: "50 to feet" is 52 feet, "50 to 60 feet" stays a range.
 */
import type { Word } from '../../shared/schemas/word.ts';

const TEENS = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const UNITS = 'one two three four five six seven eight nine'.split(' ');

const teens = new Map(TEENS.map((word, index) => [word, index + 10]));
const tens = new Map(TENS.map((word, index) => [word, (index + 2) * 10]));
const units = new Map(UNITS.map((word, index) => [word, index + 1]));
/** Every word that is a number or part of one. */
export const numberWords: ReadonlySet<string> = new Set([...TEENS, ...TENS, ...UNITS, 'zero', 'hundred']);
/** What a unit digit sounds like: believed only between tens and a unit of length. */
const soundsLikeUnit = new Map([
  ['won', 1],
  ['to', 2],
  ['too', 2],
  ['for', 4],
  ['fore', 4],
  ['ate', 8],
]);
const isLength = (word: string): boolean => /^(feet|foot|ft)$/.test(word);
/** Said in one breath: nothing longer lies between the words of a number. */
const LONGEST_GAP_SECONDS = 0.6;

/** One rule: how many words from `at` on become which text, or `null`. */
type Rule = (words: readonly Word[], at: number) => { count: number; text: string } | null;

const rules: readonly Rule[] = [
  joinHyphenated,
  joinHundreds,
  joinPoint,
  joinTensUnit,
  joinSpelledDigits,
  spellDigits,
  joinHalf,
];

/** Gives the words with their numbers in one form; times and the lowest probability of the joined words are kept. */
export function joinNumbers(words: readonly Word[]): Word[] {
  let current = [...words];
  for (const rule of rules) {
    const next: Word[] = [];
    for (let at = 0; at < current.length; ) {
      const found = rule(oneBreath(current, at), 0);
      if (found) {
        next.push(merge(current.slice(at, at + found.count), found.text));
        at += found.count;
      } else next.push(current[at++]!);
    }
    current = next;
  }
  return joinAndHalf(current);
}

/** "twenty-three", "Forty-Won": the hyphen makes it one word. */
function joinHyphenated(words: readonly Word[], at: number) {
  const [first, second, ...rest] = bare(words[at]).split('-');
  if (!second) return null;
  const ten = tens.get(first!);
  const unit = units.get(second) ?? soundsLikeUnit.get(second);
  if (ten === undefined || unit === undefined) return null;
  const tail = rest.length > 0 ? ` ${rest.join(' ')}` : '';
  return { count: 1, text: `${ten + unit}${tail}` };
}

/** "a hundred and twelve", "one hundred six", "1 hundred". */
function joinHundreds(words: readonly Word[], at: number) {
  if (bare(words[at + 1]) !== 'hundred' || endsClause(words[at])) return null;
  const first = bare(words[at]);
  const hundreds = first === 'a' ? 1 : (units.get(first) ?? (/^[1-9]$/.test(first) ? Number(first) : undefined));
  if (hundreds === undefined) return null;
  if (endsClause(words[at + 1])) return { count: 2, text: String(hundreds * 100) };
  const skip = bare(words[at + 2]) === 'and' ? 1 : 0;
  const rest = readSmall(words, at + 2 + skip);
  return rest
    ? { count: 2 + skip + rest.count, text: String(hundreds * 100 + rest.value) }
    : { count: 2, text: String(hundreds * 100) };
}

/** A number below one hundred that begins at `at`. */
function readSmall(words: readonly Word[], at: number): { count: number; value: number } | null {
  const text = bare(words[at]);
  if (/^\d{1,2}$/.test(text)) return { count: 1, value: Number(text) };
  const whole = teens.get(text) ?? units.get(text);
  if (whole !== undefined) return { count: 1, value: whole };
  const ten = tens.get(text);
  if (ten === undefined) return null;
  const unit = endsClause(words[at]) ? undefined : units.get(bare(words[at + 1]));
  return unit === undefined ? { count: 1, value: ten } : { count: 2, value: ten + unit };
}

/** "eleven point five", "11 point oh 5". */
function joinPoint(words: readonly Word[], at: number) {
  const whole =
    readSmall(words, at) ?? (/^\d{3}$/.test(bare(words[at])) ? { count: 1, value: Number(bare(words[at])) } : null);
  if (!whole || bare(words[at + whole.count]) !== 'point' || endsClause(words[at + whole.count - 1])) return null;
  let digits = '';
  let count = whole.count + 1;
  for (; digits.length < 2; count++) {
    const text = bare(words[at + count]);
    const digit =
      text === 'oh' || text === 'zero' ? 0 : (units.get(text) ?? (/^\d{1,2}$/.test(text) ? text : undefined));
    if (digit === undefined) break;
    digits += digit;
    if (endsClause(words[at + count])) {
      count++;
      break;
    }
  }
  return digits ? { count, text: `${whole.value}.${digits}` } : null;
}

/** "forty two", "40 2 feet", "50 to feet", "sixty": tens and what belongs to them. */
function joinTensUnit(words: readonly Word[], at: number) {
  const text = bare(words[at]);
  const spelled = tens.get(text);
  const ten = spelled ?? (/^[2-9]0$/.test(text) ? Number(text) : undefined);
  if (ten === undefined) return teens.has(text) ? { count: 1, text: String(teens.get(text)) } : null;
  const next = bare(words[at + 1]);
  const isFollowedByLength = isLength(bare(words[at + 2]));
  const unit = units.get(next) ?? (/^[1-9]$/.test(next) ? Number(next) : undefined);
  if (spelled !== undefined && units.has(next) && !endsClause(words[at]))
    return { count: 2, text: String(ten + unit!) };
  // Digits stand apart only when they were said apart, unless a unit of length follows the second.
  const heard = unit ?? soundsLikeUnit.get(next);
  if (heard !== undefined && isFollowedByLength) return { count: 2, text: String(ten + heard) };
  return spelled !== undefined ? { count: 1, text: String(ten) } : null;
}

/** "one oh six": digits said one by one, with an "oh" among them. */
function joinSpelledDigits(words: readonly Word[], at: number) {
  const digits: string[] = [];
  for (let count = 0; count < 4; count++) {
    const text = bare(words[at + count]);
    const digit = text === 'oh' && count > 0 ? 0 : (units.get(text) ?? (/^\d{1,2}$/.test(text) ? text : undefined));
    if (digit === undefined) break;
    digits.push(String(digit));
    if (endsClause(words[at + count])) break;
  }
  const isSpelled = digits.length >= 2 && digits.slice(1).includes('0') && bare(words[at + 1]) === 'oh';
  return isSpelled ? { count: digits.length, text: digits.join('') } : null;
}

/** "eleven" for itself; "one" to "nine" stay words, since "one" is mostly no number. */
function spellDigits(words: readonly Word[], at: number) {
  const value = teens.get(bare(words[at]));
  return value === undefined ? null : { count: 1, text: String(value) };
}

/** "11-1/2" and "11½". */
function joinHalf(words: readonly Word[], at: number) {
  const found = /^(\d+)(?:-1\/2|½)$/.exec(bare(words[at]));
  return found ? { count: 1, text: `${found[1]}.5` } : null;
}

/** "11. And a half": the recogniser took the breath for the end of a sentence. */
function joinAndHalf(words: readonly Word[]): Word[] {
  const out = [...words];
  for (let at = 0; at + 3 < out.length; at++) {
    const [number, and, a, part] = out.slice(at, at + 4) as [Word, Word, Word, Word];
    const isSplit = /^\d+[.,]$/.test(number.text) || (/^\d+$/.test(number.text) && and.text === 'And');
    if (!isSplit || bare(and) !== 'and' || bare(a) !== 'a' || !/^(half|quarter)$/.test(bare(part))) continue;
    out[at] = { ...number, text: bare(number), printed: number.printed ?? number.text };
    if (and.text !== 'and') out[at + 1] = { ...and, text: 'and', printed: and.text };
  }
  return out;
}

/** Several words as one; times, the lowest probability, closing punctuation and what was printed are kept. */
export function merge(words: readonly Word[], text: string): Word {
  const first = words[0]!;
  const last = words.at(-1)!;
  const tail = /[,.;:?!]+$/.exec(last.text)?.[0] ?? '';
  const printed = words.map((word) => word.printed ?? word.text).join(' ');
  if (printed === text + tail) return first;
  const known = words.flatMap((word) => (word.probability === null ? [] : [word.probability]));
  return {
    text: text + tail,
    startSeconds: first.startSeconds,
    endSeconds: last.endSeconds,
    probability: known.length > 0 ? Math.min(...known) : null,
    printed,
    ...(words.some((word) => word.besideCut) ? { besideCut: true } : {}),
  };
}

/** The few words from `at` on that were said without a pause. */
function oneBreath(words: readonly Word[], at: number): Word[] {
  let end = at + 1;
  while (
    end < words.length &&
    end < at + 8 &&
    words[end]!.startSeconds - words[end - 1]!.endSeconds < LONGEST_GAP_SECONDS
  )
    end++;
  return words.slice(at, end);
}

const bare = (word: Word | undefined): string =>
  word ? word.text.toLowerCase().replace(/^[("']+|[,.;:?!)"']+$/g, '') : '';
const endsClause = (word: Word | undefined): boolean => /[,.;:?!]$/.test(word?.text ?? '');
