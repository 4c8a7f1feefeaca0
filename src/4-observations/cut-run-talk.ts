/**
 * Finds, in talk printed without stops, the stretches in which a run is announced ("okay second one same hole going up zero"),
 * so that they are read as sentences of their own and no finding before or after is mixed in.
 */
import type { Phrase, PhraseOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';

/** What each sign adds; a stretch must reach the sum. */
const weights = { 'next-run': 2, zero: 2, 'same-access': 1.5, access: 1, enter: 0.5, heading: 1 } as const;
const SUM = 3;
/** Signs further apart than this, in tokens, are no one announcement. */
const GAP_TOKENS = 7;
/** How far a stretch reaches back over the words that lead in, and on to what is named next. */
const LEAD_TOKENS = 6;
const TAIL_TOKENS = 10;

const leads =
  /^(okay|ok|alright|all|right|now|so|and|then|next|well|um|uh|i|we|'m|'re|'ll|'ve|let|me|'s|there|here|the|a|an|another|got|have|going|to|gonna|that|this|is|one|out|in|at|from|for|my|our|of|want|it|on|back|up|down|she|he)$/;
const opens = /^(okay|ok|alright|now|next|so|let|then|third|second)$/;

type Sign = PhraseOf<'camera'> | PhraseOf<'heading'>;

const weightOf = (sign: Sign): number =>
  sign.family === 'heading' ? weights.heading : ((weights as Readonly<Record<string, number>>)[sign.cue] ?? 0);

const isNamed = (phrase: Phrase): boolean =>
  phrase.family === 'thing' ||
  phrase.family === 'material' ||
  phrase.family === 'diameter' ||
  (phrase.family === 'distance' && phrase.distance.feet > 0);

interface Stretch {
  readonly from: number;
  readonly to: number;
}

export function runTalk(tokens: readonly Token[], from: number, to: number, phrases: readonly Phrase[]): Stretch[] {
  const signs = phrases.filter(
    (phrase): phrase is Sign => (phrase.family === 'camera' && weightOf(phrase) > 0) || phrase.family === 'heading',
  );
  // What the announcement itself is made of (the opening, the main that is headed for) is not named by it.
  const inSign = new Set<number>();
  for (const sign of signs) for (let at = sign.from; at < sign.to; at += 1) inSign.add(at);
  const named = phrases.filter((phrase) => isNamed(phrase) && !inSign.has(phrase.from) && !inSign.has(phrase.to - 1));
  const namedEnds = new Set(named.map((phrase) => phrase.to));
  const namedStarts = new Set(named.map((phrase) => phrase.from));
  const groups: Sign[][] = [];
  let reach = 0;
  for (const sign of signs) {
    const last = groups.at(-1);
    const isNear = sign.from - reach <= GAP_TOKENS;
    if (last && isNear && !hasAny(namedStarts, reach, sign.from)) last.push(sign);
    else groups.push([sign]);
    reach = Math.max(last === groups.at(-1) ? reach : 0, sign.to);
  }
  return groups.flatMap((group) => {
    const cues = new Set(group.map((sign) => (sign.family === 'heading' ? 'heading' : sign.cue)));
    const sum = [...cues].reduce((all, cue) => all + ((weights as Readonly<Record<string, number>>)[cue] ?? 0), 0);
    const isNew = cues.has('next-run') || cues.has('zero') || cues.has('same-access');
    const isEntry = cues.has('access') && cues.has('heading') && cues.has('enter');
    const first = group[0];
    if (!first || !((isNew && sum >= SUM) || isEntry)) return [];
    const end = Math.max(...group.map((sign) => sign.to));
    return [{ from: leadIn(tokens, from, first.from, namedEnds), to: tailOf(tokens, end, to, namedStarts) }];
  });
}

const hasAny = (places: ReadonlySet<number>, from: number, to: number): boolean => {
  for (let at = from; at < to; at += 1) if (places.has(at)) return true;
  return false;
};

function leadIn(tokens: readonly Token[], floor: number, at: number, namedEnds: ReadonlySet<number>): number {
  let start = at;
  while (
    start > floor &&
    at - start < LEAD_TOKENS &&
    !namedEnds.has(start) &&
    leads.test(tokens[start - 1]?.text ?? '')
  ) {
    start -= 1;
    if (opens.test(tokens[start]?.text ?? '') && !opens.test(tokens[start - 1]?.text ?? '')) break;
  }
  return start;
}

/** The announcement goes on to what is named next, but not far. */
function tailOf(tokens: readonly Token[], at: number, to: number, namedStarts: ReadonlySet<number>): number {
  let end = at;
  while (end < to && end - at <= TAIL_TOKENS && !namedStarts.has(end)) end += 1;
  if (!namedStarts.has(end)) return Math.min(to, at);
  while (
    end > at &&
    /^(a|an|the|this|that|it|there|here|is|'s|at|we|'ve|got|and|then)$/.test(tokens[end - 1]?.text ?? '')
  )
    end -= 1;
  return end;
}
