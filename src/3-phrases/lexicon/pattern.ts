/**
 * The notation of the lexicons: space-separated words; `a|b` either of two; a word ending in `?` may be left out;
 * `*` up to three words of any sort; `#` a number; `^` and `$` the edges of a sentence. A pattern never crosses the end of a sentence, and crosses a comma only at `,`.
 * Each pattern is a short chain of places with a link for every alternative, so that many alternatives cost their sum and
 * not their product. Which places a word leads to is worked out when it is first met and kept, so matching costs the
 * same however many patterns there are, and nothing can backtrack without bound.
 */
import { joinTexts, mayJoin } from '../token/joins.ts';
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
  /** How many tokens stand between the words of the pattern that are no part of it. */
  readonly parted?: number;
}

/** Tells how many tokens may be passed over at one token. */
export type AsideReader = (index: number) => readonly number[];

/** A place in a pattern: the words that lead on from it, and the entries that end here. */
interface Node<Value> {
  readonly next: Map<string, Node<Value>[]>;
  readonly entries: LexiconEntry<Value>[];
}

/** All places the same words lead to. */
interface Places<Value> {
  readonly nodes: readonly Node<Value>[];
  readonly entries: readonly LexiconEntry<Value>[];
  readonly known: Map<string, Places<Value> | null>;
}

export type Lexicon<Value> = Places<Value>;

export interface MatchableToken {
  readonly text: string;
  readonly breakAfter: string;
}

const GAP_WORDS = 3;

const newNode = <Value>(): Node<Value> => ({ next: new Map(), entries: [] });

function placesOf<Value>(nodes: readonly Node<Value>[]): Places<Value> {
  return { nodes, entries: [...new Set(nodes.flatMap((node) => node.entries))], known: new Map() };
}

/** Where a word leads from some places, or null. */
function step<Value>(places: Places<Value>, word: string): Places<Value> | null {
  const known = places.known.get(word);
  if (known !== undefined) return known;
  const nodes = new Set(places.nodes.flatMap((node) => node.next.get(word) ?? []));
  const reached = nodes.size > 0 ? placesOf([...nodes]) : null;
  places.known.set(word, reached);
  return reached;
}

/** One part of a pattern: what may stand there. */
interface Part {
  readonly choices: readonly (readonly string[])[];
  readonly isOptional: boolean;
}

function partsOf(pattern: string): Part[] {
  return pattern
    .split(/\s+/)
    .filter((item) => item !== '')
    .map((item) => {
      const isOptional = item.endsWith('?') && item.length > 1;
      const bare = isOptional ? item.slice(0, -1) : item;
      const choices = bare
        .split('|')
        .map((choice) => (/^[*#,^$]$/.test(choice) ? [choice] : cutPattern(choice.replaceAll('_', ' '))));
      return { choices, isOptional };
    });
}

/** The form of a pattern with one number: each part takes the choice its share of the number says; 0 leaves an optional part out. */
function formAt(parts: readonly Part[], number: number): string[] {
  const words: string[] = [];
  let rest = number;
  for (const { choices, isOptional } of parts) {
    const ways = choices.length + (isOptional ? 1 : 0);
    const choice = choices[(rest % ways) - (isOptional ? 1 : 0)];
    if (choice) words.push(...choice);
    rest = Math.floor(rest / ways);
  }
  return words;
}

/** How far apart the forms of a sample are: a share of all that fits no small number of choices, so that each choice comes up. */
const SAMPLE_STRIDE = (Math.sqrt(5) - 1) / 2;

function expandParts(parts: readonly Part[], most = Number.POSITIVE_INFINITY): string[][] {
  const all = parts.reduce((ways, { choices, isOptional }) => ways * (choices.length + (isOptional ? 1 : 0)), 1);
  const numbers = Array.from({ length: Math.min(all, most) }, (_, index) =>
    all <= most ? index : Math.floor(((index * SAMPLE_STRIDE) % 1) * all),
  );
  return numbers.map((number) => formAt(parts, number)).filter((words) => words.length > 0);
}

/** The alternatives a pattern stands for, each a list of words; of those that stand for more than `most`, that many from all over. */
export function expandPattern(pattern: string, most?: number): string[][] {
  return expandParts(partsOf(pattern), most).map(joinTexts);
}

/** Whether words of two parts, the second right after the first, are printed as one ("clean|cleaned out"). */
function joinsAcross(parts: readonly Part[], first: number, second: number): boolean {
  if (parts.slice(first + 1, second).some((part) => !part.isOptional)) return false;
  return parts[first]!.choices.some((before) =>
    parts[second]!.choices.some((after) => mayJoin(before.at(-1) ?? '', after[0] ?? '')),
  );
}

/** The parts with those made one whose words may be joined. */
function joinedParts(pattern: string): Part[] {
  let parts = partsOf(pattern);
  for (let first = 0; first < parts.length; first += 1) {
    const second = parts.findLastIndex((_, index) => index > first && joinsAcross(parts, first, index));
    if (second < 0) continue;
    const inside = parts.slice(first, second + 1);
    const choices = expandParts(inside);
    const isOptional = inside.every((part) => part.isOptional);
    parts = [...parts.slice(0, first), { choices, isOptional }, ...parts.slice(second + 1)];
    first = -1;
  }
  return parts.map((part) => ({ ...part, choices: part.choices.map((words) => joinTexts(words)) }));
}

/** Builds the lexicon from entries. Throws when a pattern is empty. */
export function buildLexicon<Value>(entries: Iterable<LexiconEntry<Value>>): Lexicon<Value> {
  const root = newNode<Value>();
  for (const entry of entries) addEntry(root, entry);
  return placesOf([root]);
}

function addEntry<Value>(root: Node<Value>, entry: LexiconEntry<Value>): void {
  const parts = joinedParts(entry.pattern);
  if (parts.every((part) => part.choices.every((words) => words.length === 0)))
    throw new Error(`The pattern "${entry.pattern}" is empty.`);
  let open: Node<Value>[] = [root];
  for (const [index, { choices, isOptional }] of parts.entries()) {
    const end = newNode<Value>();
    if (parts.slice(index + 1).every((part) => part.isOptional)) end.entries.push(entry);
    for (const words of choices) {
      let target = end;
      for (const word of [...words].reverse().slice(0, -1)) {
        const before = newNode<Value>();
        before.next.set(word, [target]);
        target = before;
      }
      for (const node of open) link(node, words[0], target);
    }
    open = isOptional ? [...open, end] : [end];
  }
}

function link<Value>(from: Node<Value>, word: string | undefined, to: Node<Value>): void {
  if (word === undefined) return;
  const known = from.next.get(word);
  if (known) known.push(to);
  else from.next.set(word, [to]);
}

/** Whether a sentence ends after a token, or none stands there. */
const isEdge = (token: MatchableToken | undefined): boolean =>
  token === undefined || token.breakAfter === 'stop' || token.breakAfter === 'question';

const numberShape = /^\d+(\.\d+)?$/;

/** Reads how many tokens a number takes at one token (0: none). */
export type NumberLength = (index: number) => number;

/** One search from one token on. */
interface Search<Value> {
  readonly tokens: readonly MatchableToken[];
  readonly from: number;
  readonly numberLengthAt: NumberLength | undefined;
  readonly asidesAt: AsideReader | undefined;
  readonly matches: LexiconMatch<Value>[];
  /** How many tokens were passed over so far. */
  parted: number;
}

const opens = <Value>(places: Places<Value>, word: string): boolean =>
  (step(places, word) ?? step(places, '#') ?? step(places, '*')) !== null;

/** Every match that starts at one token, longest first. Without `numberLengthAt` a number is one printed in figures. */
export function matchAt<Value>(
  lexicon: Lexicon<Value>,
  tokens: readonly MatchableToken[],
  from: number,
  numberLengthAt?: NumberLength,
  asidesAt?: AsideReader,
): LexiconMatch<Value>[] {
  const opening = tokens[from]?.text ?? '';
  const start = isEdge(tokens[from - 1]) ? step(lexicon, '^') : null;
  // Nearly every token opens no pattern at all.
  if (!opens(lexicon, opening) && !(start && opens(start, opening))) return [];
  const search: Search<Value> = { tokens, from, numberLengthAt, asidesAt, matches: [], parted: 0 };
  walk(search, lexicon, from, false);
  if (start) walk(search, start, from, false);
  return search.matches.sort((a, b) => b.to - a.to);
}

function addMatches<Value>({ from, matches, parted }: Search<Value>, places: Places<Value> | null, to: number): void {
  for (const { pattern, value } of places?.entries ?? [])
    matches.push({ from, to, pattern, value, ...(parted ? { parted } : {}) });
}

function numberLength({ numberLengthAt, tokens }: Search<unknown>, index: number): number {
  if (numberLengthAt) return numberLengthAt(index);
  return numberShape.test(tokens[index]?.text ?? '') ? 1 : 0;
}

function walk<Value>(search: Search<Value>, places: Places<Value>, index: number, isAfterBreak: boolean): void {
  const { tokens, from } = search;
  if (index > from) addMatches(search, places, index);
  if (index > from && (index === tokens.length || isEdge(tokens[index - 1])))
    addMatches(search, step(places, '$'), index);
  const token = tokens[index];
  const before = index > from ? tokens[index - 1]!.breakAfter : 'none';
  if (token === undefined || before === 'stop' || before === 'question') return;
  if (before === 'comma' && !isAfterBreak) {
    const comma = step(places, ',');
    if (comma) walk(search, comma, index, true);
    return;
  }
  const child = step(places, token.text);
  if (child) walk(search, child, index + 1, false);
  const number = step(places, '#');
  const length = number ? numberLength(search, index) : 0;
  if (number && length > 0) walk(search, number, index + length, false);
  const gap = step(places, '*');
  if (gap)
    for (let skipped = 0; skipped <= GAP_WORDS; skipped += 1) {
      if (skipped > 0 && (tokens[index + skipped - 1]?.breakAfter ?? 'stop') !== 'none') break;
      walkGap(search, gap, index + skipped);
    }
  if (index > from) walkPast(search, places, index);
}

/** "The joint at fourteen is open", "it's just sitting": once in a match, words may stand between that say something else. */
function walkPast<Value>(search: Search<Value>, places: Places<Value>, index: number): void {
  const { tokens, asidesAt } = search;
  if (search.parted > 0 || !asidesAt) return;
  for (const length of asidesAt(index)) {
    if (tokens.slice(index, index + length).some((token) => token.breakAfter !== 'none')) continue;
    const child = step(places, tokens[index + length]?.text ?? '');
    if (!child) continue;
    search.parted = length;
    walk(search, child, index + length + 1, false);
    search.parted = 0;
  }
}

function walkGap<Value>(search: Search<Value>, places: Places<Value>, index: number): void {
  const token = search.tokens[index];
  const child = token && step(places, token.text);
  if (child) walk(search, child, index + 1, false);
}

/** The longest match at each place, leftmost first, without overlaps. */
export function matchAll<Value>(
  lexicon: Lexicon<Value>,
  tokens: readonly MatchableToken[],
  numberLengthAt?: NumberLength,
): LexiconMatch<Value>[] {
  const found: LexiconMatch<Value>[] = [];
  for (let index = 0; index < tokens.length; ) {
    const best = matchAt(lexicon, tokens, index, numberLengthAt)[0];
    if (best) found.push(best);
    index = best ? best.to : index + 1;
  }
  return found;
}
