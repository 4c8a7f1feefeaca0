/**
 * The notation of the lexicons: space-separated words; `a|b` either of two; a word ending in `?` may be left out;
 * `*` up to three words of any sort; `#` a number. A pattern never crosses the end of a sentence, and crosses a comma only at `,`.
 * Patterns are kept in one tree keyed by word, so matching costs the same however many there are, and nothing
 * can backtrack without bound.
 */
import { joinTexts } from '../token/joins.ts';
import { cutPattern } from '../token/token.ts';

export interface LexiconEntry<Value> {
  readonly pattern: string;
  readonly value: Value;
}

export interface LexiconMatch<Value> {
  /** First token, and the one after the last. */
  readonly from: number;
  readonly to: number;
  readonly pattern: string;
  readonly value: Value;
}

interface Node<Value> {
  readonly next: Map<string, Node<Value>>;
  entries: LexiconEntry<Value>[];
}

export type Lexicon<Value> = Node<Value>;

export interface MatchableToken {
  readonly text: string;
  readonly breakAfter: string;
}

const GAP_WORDS = 3;

function newNode<Value>(): Node<Value> {
  return { next: new Map(), entries: [] };
}

/** The alternatives a pattern stands for, each a list of words. */
export function expandPattern(pattern: string): string[][] {
  let expanded: string[][] = [[]];
  for (const part of pattern.split(/\s+/).filter((item) => item !== '')) {
    const isOptional = part.endsWith('?') && part.length > 1;
    const bare = isOptional ? part.slice(0, -1) : part;
    const choices = bare
      .split('|')
      .map((choice) => (/^[*#,]$/.test(choice) ? [choice] : cutPattern(choice.replaceAll('_', ' '))));
    const longer = expanded.flatMap((words) => choices.map((choice) => [...words, ...choice]));
    expanded = isOptional ? [...expanded, ...longer] : longer;
  }
  return expanded.filter((words) => words.length > 0).map(joinTexts);
}

/** Builds the tree from entries. Throws when a pattern is empty. */
export function buildLexicon<Value>(entries: Iterable<LexiconEntry<Value>>): Lexicon<Value> {
  const root = newNode<Value>();
  for (const entry of entries) {
    const expanded = expandPattern(entry.pattern);
    if (expanded.length === 0) throw new Error(`The pattern "${entry.pattern}" is empty.`);
    for (const words of expanded) {
      let node = root;
      for (const word of words) {
        let child = node.next.get(word);
        if (!child) {
          child = newNode();
          node.next.set(word, child);
        }
        node = child;
      }
      if (!node.entries.includes(entry)) node.entries.push(entry);
    }
  }
  return root;
}

const numberShape = /^\d+(\.\d+)?$/;

/** Every match that starts at one token, longest first. `isNumberAt` tells how many tokens a number takes there (0: none). */
export function matchAt<Value>(
  lexicon: Lexicon<Value>,
  tokens: readonly MatchableToken[],
  from: number,
  numberLengthAt: (index: number) => number = (index) => (numberShape.test(tokens[index]?.text ?? '') ? 1 : 0),
): LexiconMatch<Value>[] {
  const matches: LexiconMatch<Value>[] = [];
  const opening = tokens[from]?.text ?? '';
  // Nearly every token opens no pattern at all.
  if (!lexicon.next.has(opening) && !lexicon.next.has('#') && !lexicon.next.has('*')) return matches;
  const walk = (node: Node<Value>, index: number, isAfterBreak: boolean): void => {
    if (index > from)
      for (const entry of node.entries) matches.push({ from, to: index, pattern: entry.pattern, value: entry.value });
    const token = tokens[index];
    const before = index > from ? tokens[index - 1]!.breakAfter : 'none';
    if (token === undefined || before === 'stop' || before === 'question') return;
    if (before === 'comma' && !isAfterBreak) {
      const comma = node.next.get(',');
      if (comma) walk(comma, index, true);
      return;
    }
    const child = node.next.get(token.text);
    if (child) walk(child, index + 1, false);
    const number = node.next.get('#');
    const numberLength = number ? numberLengthAt(index) : 0;
    if (number && numberLength > 0) walk(number, index + numberLength, false);
    const gap = node.next.get('*');
    if (gap)
      for (let skipped = 0; skipped <= GAP_WORDS; skipped += 1) {
        if (skipped > 0 && (tokens[index + skipped - 1]?.breakAfter ?? 'stop') !== 'none') break;
        walkGap(gap, index + skipped);
      }
  };
  const walkGap = (node: Node<Value>, index: number): void => {
    const token = tokens[index];
    if (token === undefined) return;
    const child = node.next.get(token.text);
    if (child) walk(child, index + 1, false);
  };
  walk(lexicon, from, false);
  return matches.sort((a, b) => b.to - a.to);
}

/** The longest match at each place, leftmost first, without overlaps. */
export function matchAll<Value>(
  lexicon: Lexicon<Value>,
  tokens: readonly MatchableToken[],
  numberLengthAt?: (index: number) => number,
): LexiconMatch<Value>[] {
  const found: LexiconMatch<Value>[] = [];
  for (let index = 0; index < tokens.length; ) {
    const best = matchAt(lexicon, tokens, index, numberLengthAt)[0];
    if (best) found.push(best);
    index = best ? best.to : index + 1;
  }
  return found;
}
