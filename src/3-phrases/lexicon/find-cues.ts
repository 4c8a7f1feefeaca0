/** Finds cue words of a family; stretches listed as looking like a cue and being none switch off what they hold. */
import type { Token } from '../token/token.ts';
import { buildLexicon, type Lexicon, type LexiconEntry, matchAll, matchAt } from './pattern.ts';

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
  const isHidden = new Array<boolean>(tokens.length).fill(false);
  for (const match of hiding) isHidden.fill(true, match.from, match.to);
  const found: CueMatch<Cue>[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const matches = matchAt(finder.cues, tokens, at);
    const longest = matches[0];
    if (!longest) continue;
    for (const match of matches) {
      if (match.to !== longest.to && match.value !== longest.value) continue;
      if (match.to !== longest.to) continue;
      const hider = hiding.find((other) => other.from <= match.from && other.to >= match.to);
      if (
        hider &&
        !(hider.from === match.from && hider.to === match.to && hider.to - hider.from < match.to - match.from)
      )
        continue;
      if (!hider && isHidden[match.from] && hiding.some((other) => other.from < match.from && other.to > match.from))
        continue;
      if (found.some((other) => other.from === match.from && other.to === match.to && other.cue === match.value))
        continue;
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
