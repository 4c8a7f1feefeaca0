/**
 * Cuts the talk into sentences: at full stops and question marks, at long pauses, and, where a recogniser printed no stops
 * at all, before the words that open a new statement.
 */

import type { Phrases } from '../3-phrases/find-phrases.ts';
import type { Phrase } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';

export interface Sentence {
  readonly index: number;
  /** First token, and the one after the last. */
  readonly from: number;
  readonly to: number;
  readonly phrases: readonly Phrase[];
  readonly isQuestion: boolean;
  readonly text: string;
}

/** A stretch this long without a comma or a stop is printed without punctuation. */
const LONG_STRETCH_TOKENS = 18;

const openers = /^(okay|ok|alright|now|anyway|oh|well)$/;
const turning = /^(pulling|coming|backing) (back|home|up|out|in)$/;
const existentials = /^(there|here)$/;
const denials = /^(no|didn't|don't)$/;
/** Small words that lead into a place and go with it. */
const leads = /^(at|from|to|about|around|say|then|and|so|between|station|another|on|until|till|out|up)$/;

const isThing = (phrase: Phrase): boolean =>
  phrase.family === 'thing' || phrase.family === 'material' || (phrase.family === 'angle' && phrase.isNoun);
const isPlace = (phrase: Phrase): boolean =>
  phrase.family === 'distance' || (phrase.family === 'relative' && phrase.relative.shape !== 'same');

/** Whether the speaker gives the place first and then the thing, told by which stands nearer over the whole talk. */
function saysPlaceFirst(phrases: readonly Phrase[]): boolean {
  const marks = phrases.filter((phrase) => isThing(phrase) || isPlace(phrase));
  let before = 0;
  let after = 0;
  marks.forEach((mark, index) => {
    if (!isThing(mark)) return;
    const previous = marks[index - 1];
    const next = marks[index + 1];
    const gapBefore = previous && isPlace(previous) ? mark.from - previous.to : null;
    const gapAfter = next && isPlace(next) ? next.from - mark.to : null;
    if (gapBefore !== null && (gapAfter === null || gapBefore <= gapAfter)) before += 1;
    else if (gapAfter !== null) after += 1;
  });
  return before >= after;
}

function softStarts(
  tokens: readonly Token[],
  from: number,
  to: number,
  phrases: readonly Phrase[],
  placeFirst: boolean,
): number[] {
  const starts: number[] = [];
  let hasPlace = false;
  let hasThing = false;
  let thingSincePlace = false;
  let lastThingHasPlace = false;
  for (let at = from; at < to; at += 1) {
    const text = tokens[at]?.text ?? '';
    const next = tokens[at + 1]?.text ?? '';
    const place = phrases.find((phrase) => isPlace(phrase) && phrase.from === at);
    const isAttached =
      place !== undefined &&
      (place.family === 'relative'
        ? false
        : (place.family === 'distance' && place.distance.isEnd === true) ||
          /^(a|the|of|by|or|no|make|sorry|mean|wait)$/.test(tokens[at - 1]?.text ?? '') ||
          /^(make that|make it|call it|out of it at)$/.test(
            tokens
              .slice(Math.max(from, at - 2), at)
              .map((token) => token.text)
              .join(' '),
          ));
    const isBare = place?.family === 'distance' && place.distance.frame === 'bare';
    const followsThing = phrases.some(
      (phrase) => phrase.to === at && !isPlace(phrase) && phrase.family !== 'assertion',
    );
    const opensBare = isBare && hasThing && thingSincePlace && !(followsThing && !hasPlace && !placeFirst);
    const opensFramed = place !== undefined && !isBare && hasThing && thingSincePlace && placeFirst;
    const startsAtPlace = place !== undefined && !isAttached && (opensBare || opensFramed);
    const isIntroduced = existentials.test(text) && /^('s|is|are|comes|goes)$/.test(next);
    const startsNew =
      (isIntroduced && hasThing && !(placeFirst && hasPlace && !thingSincePlace)) ||
      ((openers.test(text) || turning.test(`${text} ${next}`)) &&
        (hasThing || hasPlace) &&
        !(placeFirst && hasPlace && !thingSincePlace)) ||
      (denials.test(text) &&
        hasThing &&
        phrases.some((phrase) => phrase.family === 'thing' && phrase.from > at && phrase.from <= at + 3)) ||
      (!placeFirst &&
        hasPlace &&
        hasThing &&
        thingSincePlace === false &&
        phrases.some((phrase) => isThing(phrase) && phrase.from === at));
    if ((startsAtPlace || startsNew) && at > from) {
      let start = at;
      while (startsAtPlace && start - 1 > from && leads.test(tokens[start - 1]?.text ?? '') && at - start < 3)
        start -= 1;
      starts.push(start);
      hasPlace = false;
      hasThing = false;
      thingSincePlace = false;
      lastThingHasPlace = false;
    }
    if (place) {
      hasPlace = true;
      thingSincePlace = false;
      lastThingHasPlace = hasThing;
    }
    if (phrases.some((phrase) => isThing(phrase) && phrase.from === at)) {
      hasThing = true;
      thingSincePlace = true;
    }
  }
  return starts;
}

function bareStretch(tokens: readonly Token[], from: number, to: number): boolean {
  if (to - from < LONG_STRETCH_TOKENS) return false;
  const commas = tokens.slice(from, to).filter((token) => token.breakAfter === 'comma').length;
  return commas === 0 || (to - from >= 2 * LONG_STRETCH_TOKENS && commas * LONG_STRETCH_TOKENS < to - from);
}

const interrogatives =
  /^(is|are|was|were|do|does|did|can|could|would|will|should|has|have|had|what|where|which|who|when|why|how|any|see|you|isn't|aren't|doesn't|and|so|okay|oh|hmm|hm|wait|or|the|a|main|tell)$/;

/** "That could be an offset?" is a doubtful statement; "Is that an offset?" asks. */
function asks(tokens: readonly Token[], from: number, to: number): boolean {
  let start = from;
  for (let at = from; at < to - 1; at += 1) {
    if (tokens[at]?.breakAfter !== 'comma') continue;
    // "Steam on the lens, did somebody shower?" states first; "Denny, is that a crack?" only calls.
    if (at + 1 - start > 2)
      return (
        interrogatives.test(tokens[start]?.text ?? '') &&
        !/^(and|so|okay|oh|hmm|hm|wait|or|the|a|main)$/.test(tokens[start]?.text ?? '')
      );
    start = at + 1;
  }
  const opening = tokens.slice(start, Math.min(to, start + 3)).map((token) => token.text);
  const first = opening.find((word) => !/^(um|uh|okay|oh|hmm|hm|so|and|well|now)$/.test(word)) ?? '';
  if (/^(that|this|it|there|i|looks)$/.test(first)) return false;
  return (
    interrogatives.test(first) ||
    to - start <= 4 ||
    tokens.slice(start, to).some((token) => /^(is|are|does|do|did|can|what|how)$/.test(token.text))
  );
}

/** The sentences of a talk; together they cover every token once. */
export function cutSentences({ tokens, phrases }: Phrases): Sentence[] {
  const bounds: { from: number; to: number }[] = [];
  let from = 0;
  const placeFirst = saysPlaceFirst(phrases);
  tokens.forEach((token, index) => {
    const isNumberTorn = phrases.some(
      (phrase) => phrase.from <= index && phrase.to > index + 1 && phrase.family !== 'relative',
    );
    const ends = (token.breakAfter === 'stop' || token.breakAfter === 'question') && !isNumberTorn;
    if (!ends && index < tokens.length - 1) return;
    const to = index + 1;
    const inside = phrases.filter((phrase) => phrase.from >= from && phrase.from < to);
    const starts = bareStretch(tokens, from, to) ? softStarts(tokens, from, to, inside, placeFirst) : [];
    for (const start of starts) {
      bounds.push({ from, to: start });
      from = start;
    }
    bounds.push({ from, to });
    from = to;
  });
  return bounds.map((bound, index) => ({
    index,
    ...bound,
    phrases: phrases.filter((phrase) => phrase.from >= bound.from && phrase.from < bound.to),
    isQuestion: tokens[bound.to - 1]?.breakAfter === 'question' && asks(tokens, bound.from, bound.to),
    text: tokens
      .slice(bound.from, bound.to)
      .map((token) => token.text)
      .join(' '),
  }));
}
