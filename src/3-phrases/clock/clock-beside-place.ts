/**
 * "Fifteen, a crack at three": where a place was said and a thing named, a number up to twelve that lies before that place is the
 * hour the thing sits at; nobody reads the counter backwards in one breath.
 */
import type { Phrase, PhraseOf } from '../phrase.ts';
import type { Token } from '../token/token.ts';

/** How far apart, in tokens, the place and the hour of one thing are said. */
const REACH_TOKENS = 12;

const isHour = ({ distance, from, to }: PhraseOf<'distance'>): boolean =>
  distance.frame === 'at' &&
  distance.toFeet === null &&
  distance.isEnd !== true &&
  to - from === 1 &&
  Number.isInteger(distance.feet) &&
  distance.feet >= 1 &&
  distance.feet <= 12;

/** Turns such places into hours. Phrases are in order of their first token. */
export function hoursBesidePlaces(tokens: readonly Token[], phrases: readonly Phrase[]): Phrase[] {
  let place: PhraseOf<'distance'> | null = null;
  /** What was named last, and what had been named before the place. */
  let named: Phrase | null = null;
  let ahead: Phrase | null = null;
  return phrases.map((phrase, index) => {
    if (phrase.family === 'thing') named = phrase;
    if (phrase.family !== 'distance') return phrase;
    const hour = hourOf(tokens, phrase, place, named, ahead);
    if (hour !== null && !namesNext(tokens, phrases, index)) return hour;
    place = phrase;
    ahead = named;
    return phrase;
  });
}

function hourOf(
  tokens: readonly Token[],
  phrase: PhraseOf<'distance'>,
  place: PhraseOf<'distance'> | null,
  named: Phrase | null,
  ahead: Phrase | null,
): Phrase | null {
  if (place === null || named === null || !isHour(phrase) || tokens[phrase.from - 1]?.text !== 'at') return null;
  if (phrase.from - place.to > REACH_TOKENS || phrase.distance.feet >= place.distance.feet) return null;
  if (breaksBetween(tokens, place.to, phrase.from)) return null;
  // "A wye at fifteen and roots at twelve" gives each its own place; "crack, fifteen, at three" has one thing only.
  const isOwn = ahead !== null && !breaksBetween(tokens, ahead.to, place.from);
  const isThingBetween = named.from >= place.to && named.to <= phrase.from;
  const isSaidOn = isOwn && phrase.from - place.to === 1;
  if (!(isThingBetween && !isOwn) && !isSaidOn) return null;
  const { from, to } = phrase;
  return { family: 'clock', hour: phrase.distance.feet, toHour: null, from, to, rule: 'at <hour>' };
}

const breaksBetween = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from - 1, to).some(({ breakAfter }) => breakAfter === 'stop' || breakAfter === 'question');

/** "At three there's a wye": what follows at once has the number for its place. */
function namesNext(tokens: readonly Token[], phrases: readonly Phrase[], index: number): boolean {
  const { to } = phrases[index]!;
  if ((tokens[to - 1]?.breakAfter ?? 'stop') !== 'none') return false;
  const next = phrases.slice(index + 1).find(({ family }) => family === 'thing' || family === 'distance');
  return /^(there|we|i|it|a|an|the)$/.test(tokens[to]?.text ?? '') || (next?.family === 'thing' && next.from - to <= 2);
}
