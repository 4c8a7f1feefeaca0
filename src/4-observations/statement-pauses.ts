/**
 * Whether the silences of a talk stand between statements. With one speaker each breath holds a place and what is there,
 * always in the same order: then silence ends a statement though no stop is printed. With another it falls anywhere.
 */
import type { Phrase } from '../3-phrases/phrase.ts';
import { isSilentBefore } from '../3-phrases/token/silence.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { pausesAt, tearsAt } from './clause-start.ts';
import { isPlace, isThing } from './pair-places.ts';

/** Silences that tear so few words from the next one they need, of all, stand between statements too. */
const FEW_TORN = 0.1;
/** So many whole statements, and such a share of them in one order, show it. */
const LEAST_STATEMENTS = 5;
const SAME_ORDER = 0.75;

/** The tokens before which a silence ends a statement; none where silence tells nothing. */
export function statementPauses(tokens: readonly Token[], phrases: readonly Phrase[]): readonly number[] {
  const pauses = tokens.flatMap((_, at) => (at > 0 && pausesAt(tokens, at) ? [at] : []));
  const silences = tokens.filter((token, at) => at > 0 && isSilentBefore(token)).length;
  const torn = tokens.filter((_, at) => at > 0 && tearsAt(tokens, at)).length;
  if (torn <= FEW_TORN * silences) return pauses;
  const ends = tokens.flatMap(({ breakAfter }, at) =>
    breakAfter === 'stop' || breakAfter === 'question' ? [at + 1] : [],
  );
  const edges = [...new Set([...pauses, ...ends, tokens.length])].sort((a, b) => a - b);
  let placeFirst = 0;
  let thingFirst = 0;
  let next = 0;
  for (const edge of edges) {
    const first: { thing?: Phrase; place?: Phrase } = {};
    for (; next < phrases.length && phrases[next]!.from < edge; next += 1) {
      const phrase = phrases[next]!;
      if (isThing(phrase)) first.thing ??= phrase;
      else if (isPlace(phrase)) first.place ??= phrase;
    }
    if (!first.thing || !first.place) continue;
    if (first.place.from < first.thing.from) placeFirst += 1;
    else thingFirst += 1;
  }
  const whole = placeFirst + thingFirst;
  return whole >= LEAST_STATEMENTS && Math.max(placeFirst, thingFirst) >= SAME_ORDER * whole ? pauses : [];
}
