/** Finds cue words of a family; stretches listed as looking like a cue and being none switch off what they hold. */
import type { Token } from '../token/token.ts';
import { buildLexicon, type Lexicon, type LexiconEntry, type LexiconMatch, matchAll, matchAt } from './pattern.ts';

export interface CueMatch<Cue> {
  readonly from: number;
  readonly to: number;
  readonly rule: string;
  readonly cue: Cue;
}

export interface CueFinder<Cue> {
  readonly cues: Lexicon<Cue>;
  readonly hidden: Lexicon<null>;
}

export function buildCueFinder<Cue>(
  lists: readonly { readonly cue: Cue; readonly words: readonly string[] }[],
  hidden: readonly string[],
): CueFinder<Cue> {
  return {
    cues: buildLexicon(
      lists.flatMap(({ cue, words }) => words.map((pattern): LexiconEntry<Cue> => ({ pattern, value: cue }))),
    ),
    hidden: buildLexicon(hidden.map((pattern) => ({ pattern, value: null }))),
  };
}

/** How many matches before and after can overlap one. */
const NEAR_MATCHES = 24;

/** Every cue; one that lies inside a longer one is dropped. */
export function findCues<Cue>(finder: CueFinder<Cue>, tokens: readonly Token[]): CueMatch<Cue>[] {
  const hiding = matchAll(finder.hidden, tokens);
  const hiderAt = new Map<number, LexiconMatch<null>>();
  for (const match of hiding) for (let at = match.from; at < match.to; at += 1) hiderAt.set(at, match);
  const found: CueMatch<Cue>[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const matches = matchAt(finder.cues, tokens, at);
    const longest = matches[0];
    if (!longest) continue;
    // Hidden stretches do not overlap, so the one at the first token is the only one that can hide.
    const hider = hiderAt.get(at);
    if (hider && (hider.from < at || hider.to >= longest.to)) continue;
    const cues = new Set<Cue>();
    for (const match of matches) {
      if (match.to !== longest.to || cues.has(match.value)) continue;
      cues.add(match.value);
      found.push({ from: match.from, to: match.to, rule: match.pattern, cue: match.value });
    }
  }
  // Starts only grow, so a match that holds another stands at most a few places before it.
  return found.filter(
    (match, index) =>
      !found
        .slice(Math.max(0, index - NEAR_MATCHES), index + NEAR_MATCHES)
        .some(
          (other) =>
            other !== match &&
            other.from <= match.from &&
            other.to >= match.to &&
            other.to - other.from > match.to - match.from,
        ),
  );
}
