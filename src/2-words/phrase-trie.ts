/**
 * The trade's words and the speaker's own, as paths of tokens. While a beam walks along a path it holds a bonus on trust;
 * the bonus stays only when a whole phrase is followed by the beginning of a new word, and is taken back when the path
 * breaks off. Without the taking back, " w" of "wye" turns "water" into "wye-ter".
 */
import type { TokenTable } from './token-table.ts';

interface Node {
  readonly next: Map<number, Node>;
  isPhrase: boolean;
  /** Nats on trust at this node, counted from the beginning of the phrase. */
  trust: number;
}

/** Where one beam stands: `kept` is earned, `node`'s trust is not yet. */
export interface TrieWalk {
  readonly node: Node | null;
  /** Trust of the last whole phrase that was passed and properly ended, while a longer one is tried. */
  readonly safe: number;
}

export const AT_START: TrieWalk = { node: null, safe: 0 };

export interface PhraseTrie {
  /** The walk after `token` and how the bonus changes with it. */
  step(walk: TrieWalk, token: number): { walk: TrieWalk; gain: number };
  /** Tokens that would go on with a phrase from here. */
  continuations(walk: TrieWalk): Iterable<number>;
  readonly size: number;
}

export interface Phrase {
  readonly text: string;
  /** Nats for each token. */
  readonly bonus: number;
}

const made = new WeakMap<TokenTable, WeakMap<readonly Phrase[], PhraseTrie>>();

/** The trie of a list of phrases, made once: that takes a third of a second, and every batch of windows needs the same. */
export function phraseTrieOf(phrases: readonly Phrase[], tokens: TokenTable): PhraseTrie {
  const ofTokens = made.get(tokens) ?? new WeakMap<readonly Phrase[], PhraseTrie>();
  made.set(tokens, ofTokens);
  const trie = ofTokens.get(phrases) ?? makePhraseTrie(phrases, tokens);
  ofTokens.set(phrases, trie);
  return trie;
}

export function makePhraseTrie(phrases: readonly Phrase[], tokens: TokenTable): PhraseTrie {
  const root: Node = { next: new Map(), isPhrase: false, trust: 0 };
  let size = 0;
  for (const phrase of phrases) {
    for (const text of new Set([phrase.text, capital(phrase.text)])) {
      let node = root;
      for (const token of tokens.encode(` ${text}`)) {
        let next = node.next.get(token);
        if (!next) {
          next = { next: new Map(), isPhrase: false, trust: 0 };
          node.next.set(token, next);
        }
        next.trust = Math.max(next.trust, node.trust + phrase.bonus);
        node = next;
      }
      node.isPhrase = true;
      size++;
    }
  }
  return {
    size,
    step(walk, token) {
      const held = walk.node?.trust ?? 0;
      const isWordEnd = tokens.beginsWord(token);
      // A whole phrase whose word has ended is safe, whatever comes.
      const safe = walk.node?.isPhrase && isWordEnd ? held : walk.safe;
      const onward = walk.node?.next.get(token);
      if (onward) return { walk: { node: onward, safe }, gain: onward.trust - held };
      const fresh = isWordEnd ? root.next.get(token) : undefined;
      return { walk: { node: fresh ?? null, safe: 0 }, gain: safe - held + (fresh?.trust ?? 0) };
    },
    *continuations(walk) {
      if (walk.node) yield* walk.node.next.keys();
      yield* root.next.keys();
    },
  };
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
