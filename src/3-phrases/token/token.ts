/**
 * Words come in as the recogniser printed them; tokens go out in the one form the rules read.
 * The library compromise cuts each word, so times never drift. Here "there's" becomes "there 's", "4-inch" becomes
 * "4 inch", "10%" becomes "10 %", "31-38" becomes "31 to 38", and letters spelled one by one ("P V C") or words torn
 * apart ("clean out") are joined.
 */
import nlp from 'compromise/one';
import type { Word } from '../../../shared/schemas/word.ts';
import { dropsApostrophes, withApostrophe } from './contractions.ts';
import { dialect } from './dialect.ts';
import { joinTokens } from './joins.ts';

/** How strongly the talk breaks off after a token. */
export type Break = 'none' | 'comma' | 'stop' | 'question';

export interface Token {
  /** Lower case, without punctuation. */
  readonly text: string;
  /** Index of the first and last word it was cut from. */
  readonly firstWord: number;
  readonly lastWord: number;
  readonly startSeconds: number;
  readonly endSeconds: number;
  /** The lowest word probability, or null when nothing is known. */
  readonly probability: number | null;
  readonly breakAfter: Break;
  /** Silence before the token, in seconds. */
  readonly pauseBeforeSeconds: number;
  readonly isCapitalised: boolean;
}

const clitic = /^(.+)('s|'re|'ve|'ll|'d|'m)$/;

/** The words of a stretch, one blank between two. */
export const textOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map((token) => token.text)
    .join(' ');

/** Lower-cases a printed piece, straightens apostrophes and cuts it into the forms that patterns use. */
export function normalizePiece(piece: string): string[] {
  let text = piece
    .toLowerCase()
    .replace(/[\u2018\u2019\u02bc]/g, "'")
    .replace(/^[^\p{L}\p{N}$%'¼½¾]+|[^\p{L}\p{N}%'"¼½¾]+$/gu, '');
  if (/^'(s|re|ve|ll|d|m)$/.test(text)) return [text];
  if (/^\p{L}+in'$/u.test(text)) text = `${text.slice(0, -1)}g`;
  const marked = text;
  const isFeetAndInches = /^\d+'\d+"?$/.test(text);
  text = isFeetAndInches ? text : text.replace(/^'+|'+$/g, '');
  if (text === '') return [];
  if (isFeetAndInches) {
    const [feet, inches] = text.replace('"', '').split("'");
    return [feet ?? '', 'foot', inches ?? ''];
  }
  text = text.replace(/^(\d{1,3}),(\d{3})$/, '$1$2');
  const isFeetMark = /^\d+(\.\d+)?['\u2032]$/.test(marked);
  if (isFeetMark) return [text, 'feet'];
  const fraction = /^(\d*)([¼½¾])$/.exec(text);
  if (fraction) {
    const part = fraction[2] === '¼' ? '1/4' : fraction[2] === '½' ? '1/2' : '3/4';
    return fraction[1] ? [fraction[1], 'and', part] : [part];
  }
  text = withApostrophe(text);
  const joined = clitic.exec(text);
  if (joined?.[1] && joined[2] && !/^\d/.test(text)) return [...normalizePiece(joined[1]), joined[2]];
  const measured = /^(\$?\d+(?:\.\d+)?)(%|"|ft|in|st|nd|rd|th|m|mm)$/.exec(text);
  if (measured?.[1] && measured[2]) {
    if (/^(st|nd|rd|th)$/.test(measured[2])) return [text];
    if (/^mm?$/.test(measured[2])) return [measured[1], measured[2]];
    const unit = measured[2] === '"' || measured[2] === 'in' ? 'inch' : measured[2] === 'ft' ? 'feet' : '%';
    return [measured[1], unit];
  }
  // Recognisers print a position on the clock as a time of day.
  const hour = /^(1[0-2]|[1-9]):00$/.exec(text);
  if (hour?.[1]) return [hour[1], "o'clock"];
  const range = /^(\d+(?:\.\d+)?)[-–](\d+(?:\.\d+)?)$/.exec(text);
  if (range?.[1] && range[2]) return [range[1], 'to', range[2]];
  if (/[-–—]/.test(text)) return text.split(/[-–—]+/).flatMap(normalizePiece);
  return [text];
}

function breakOf(post: string): Break {
  if (post.includes('?')) return 'question';
  if (/[.!;:]|\u2026/.test(post)) return 'stop';
  if (/[,()]|\s[-–—]+\s|[–—]/.test(post)) return 'comma';
  return 'none';
}

/** Silence that ends a sentence even where the recogniser printed no full stop, in seconds. */
const STOP_PAUSE_SECONDS = 1.2;

interface Piece {
  readonly text: string;
  readonly post: string;
}

/** Letters alone, with a mark behind them at most: nothing in it is to be cut. */
const plainWord = /^([A-Za-z]+)([.,?]?)$/;

/** Cuts one printed word. A dash that stands alone gives no text, only what comes after the word before it. */
function cutWord(text: string): Piece[] {
  const plain = plainWord.exec(text);
  if (plain) return [{ text: plain[1] ?? '', post: `${plain[2]} ` }];
  const terms = nlp.tokenize(`${text} `).document.flat();
  const pieces = terms.map((term) => ({ text: term.text.trim(), post: term.post }));
  return pieces.some((piece) => /[^-–—\s]/.test(piece.text)) ? pieces : [{ text: '', post: ` ${text} ` }];
}

/** Cuts words into tokens. Word indexes and times come along; nothing is dropped but bare punctuation. */
export function cutTokens(words: readonly Word[]): Token[] {
  // People use few different words, and cutting is slow: each is cut once.
  const cut = new Map<string, readonly Piece[]>();
  const tokens: Token[] = [];
  const isBare = dropsApostrophes(words);
  let lastEndSeconds = words[0]?.startSeconds ?? 0;
  for (const [wordIndex, word] of words.entries()) {
    let pieces = cut.get(word.text);
    if (!pieces) {
      pieces = cutWord(word.text);
      cut.set(word.text, pieces);
    }
    for (const piece of pieces) {
      const last = tokens.at(-1);
      if (piece.text === '') {
        if (last?.breakAfter === 'none') tokens[tokens.length - 1] = { ...last, breakAfter: breakOf(piece.post) };
        continue;
      }
      const printed = piece.text + (/^['"%]+/.exec(piece.post)?.[0] ?? '');
      const forms = normalizePiece(isBare && /^its$/i.test(printed) ? "it's" : printed);
      for (const [index, form] of forms.entries()) {
        tokens.push({
          text: dialect.get(form) ?? form,
          firstWord: wordIndex,
          lastWord: wordIndex,
          startSeconds: word.startSeconds,
          endSeconds: word.endSeconds,
          probability: word.probability,
          breakAfter: index === forms.length - 1 ? breakOf(piece.post) : 'none',
          pauseBeforeSeconds: index === 0 ? Math.max(0, word.startSeconds - lastEndSeconds) : 0,
          isCapitalised: /^\p{Lu}/u.test(piece.text),
        });
      }
      lastEndSeconds = word.endSeconds;
    }
  }
  return joinTokens(endSentencesAtPauses(readDictatedPunctuation(tokens)));
}

const dictated: ReadonlyMap<string, Break> = new Map([
  ['comma', 'comma'],
  ['period', 'stop'],
  ['colon', 'stop'],
  ['semicolon', 'stop'],
]);
/** Below this many, "period" and "comma" are words like others. */
const DICTATED_MARKS = 6;

/** Some people speak their punctuation. Where they do, the words become the marks. */
function readDictatedPunctuation(tokens: readonly Token[]): Token[] {
  const isMark = (index: number): Break | null => {
    const text = tokens[index]?.text ?? '';
    if (text === 'stop' && tokens[index - 1]?.text === 'full') return 'stop';
    if (text === 'mark' && tokens[index - 1]?.text === 'question') return 'question';
    return dictated.get(text) ?? null;
  };
  const marks = tokens.filter((_, index) => isMark(index) !== null).length;
  if (marks < DICTATED_MARKS) return [...tokens];
  const read: Token[] = [];
  tokens.forEach((token, index) => {
    const mark = isMark(index);
    const opensMark = /^(full|question)$/.test(token.text) && isMark(index + 1) !== null;
    if (mark !== null || opensMark) {
      const last = read.at(-1);
      if (last && mark !== null)
        read[read.length - 1] = { ...last, breakAfter: mark, lastWord: token.lastWord, endSeconds: token.endSeconds };
    } else read.push(token);
  });
  return read;
}

function endSentencesAtPauses(tokens: readonly Token[]): Token[] {
  return tokens.map((token, index) => {
    const next = tokens[index + 1];
    const isPause = next !== undefined && next.pauseBeforeSeconds >= STOP_PAUSE_SECONDS;
    return isPause && token.breakAfter !== 'question' ? { ...token, breakAfter: 'stop' as const } : token;
  });
}

/** The tokens of a pattern or an example, without times. */
export function cutPattern(text: string): string[] {
  return text.split(/\s+/).flatMap(normalizePiece);
}
