/** Joins places into stretches and lists: "31 to 38 feet", "starts at 19 and goes to 27", "12 feet, 15 feet and 21". */
import { phraseAt, phraseBefore, phraseSet, wordsBetween } from '../number/surroundings.ts';
import type { Phrase, PhraseOf } from '../phrase.ts';
import type { Token } from '../token/token.ts';
import { middlePlace, rangeBetween, samePlace } from './lexicon.ts';
import type { Place } from './read-place.ts';

const range = phraseSet(rangeBetween);
const between = phraseSet(['between', 'anywhere between', 'somewhere between']);
const hedges =
  /\b(about|around|maybe|like|roughly|say|approximately|almost|nearly|um|uh|just past|just over|just under)\b/g;

const squeeze = (text: string): string =>
  text
    .replace(hedges, '')
    .replace(/\s+/g, ' ')
    .replace(/^(, )+|( ,)+$/g, '')
    .trim();

function rangeWords(tokens: readonly Token[], first: Place, second: Place): string | null {
  const gap = wordsBetween(tokens, first.to, second.from);
  if (gap === null) return null;
  const bare = squeeze(gap);
  if (range.has(gap.trim()) || range.has(bare)) return bare === '' ? 'to' : bare;
  if (bare === 'and' && phraseBefore(tokens, first.from, between)) return 'between … and';
  // "in at 12, out at 20": a gap of free words that ends in the words of an ending.
  return second.isEnd && gap.split(' ').length <= 8 ? gap : null;
}

/** Turns places into distance and relative phrases. */
export function joinPlaces(tokens: readonly Token[], places: readonly Place[]): Phrase[] {
  const phrases: Phrase[] = [];
  for (let index = 0; index < places.length; index += 1) {
    const first = places[index]!;
    if (first.sign !== null) {
      phrases.push(relativePhrase(tokens, first));
      continue;
    }
    const second = places[index + 1];
    const words = second && second.sign === null ? rangeWords(tokens, first, second) : null;
    const isOr = words === 'or' || words === 'or maybe';
    // "from ten back to six": said from the far end.
    if (second && words === 'back to' && second.feet < first.feet) {
      phrases.push({
        ...distancePhrase(
          { ...second, from: first.from, to: second.to },
          { ...first, to: second.to },
          '<distance> back to <distance>',
        ),
      });
      index += 1;
      continue;
    }
    if (second && words !== null && !isOr && second.feet > first.feet && second.frame !== 'counter') {
      phrases.push(distancePhrase(first, second, `<distance> ${words} <distance>`));
      index += 1;
      continue;
    }
    phrases.push(distancePhrase(first, null, first.isEnd ? 'out of it at <distance>' : `<distance> (${first.frame})`));
  }
  return phrases;
}

function distancePhrase(first: Place, second: Place | null, rule: string): PhraseOf<'distance'> {
  return {
    family: 'distance',
    from: first.from,
    to: second?.to ?? first.to,
    rule,
    distance: {
      feet: round(first.feet),
      toFeet: second ? round(second.feet) : null,
      frame: second && second.frame === 'unit' ? 'unit' : first.frame,
      isEnd: first.isEnd && second === null,
      ...(first.respelled ? { respelled: first.respelled } : {}),
    },
  };
}

const ANCHOR_WORDS = 9;

function anchorEnd(tokens: readonly Token[], from: number): number {
  let to = from;
  while (to < tokens.length && to < from + ANCHOR_WORDS) {
    to += 1;
    if ((tokens[to - 1]?.breakAfter ?? 'stop') !== 'none') break;
    if (/^(there|is|'s|we|i|it|comes|comes_in)$/.test(tokens[to]?.text ?? '') && to > from + 1) break;
  }
  return to;
}

function relativePhrase(tokens: readonly Token[], place: Place): PhraseOf<'relative'> {
  const anchor = place.needsAnchor ? { from: place.to, to: anchorEnd(tokens, place.to) } : null;
  return {
    family: 'relative',
    from: place.from,
    to: place.to,
    rule: place.needsAnchor ? '<feet> past <thing>' : '<feet> further',
    relative: { feet: round(place.feet * (place.sign ?? 1)), anchor, shape: 'offset' },
  };
}

const same = phraseSet(samePlace);
const middle = phraseSet(middlePlace);

/** "same spot", "halfway between …", found by their words alone. */
export function readWordPlaces(tokens: readonly Token[]): PhraseOf<'relative'>[] {
  const found: PhraseOf<'relative'>[] = [];
  let from = 0;
  while (from < tokens.length) {
    const halfway = phraseAt(tokens, from, middle);
    const here = phraseAt(tokens, from, same);
    const to = Math.max(halfway?.to ?? 0, here?.to ?? 0);
    if (halfway && halfway.to === to) {
      const anchor = { from: to, to: anchorEnd(tokens, to) };
      const shape = halfway.text.includes('between') ? 'between' : 'middle';
      found.push({ family: 'relative', from, to, rule: halfway.text, relative: { feet: null, anchor, shape } });
    } else if (here) {
      found.push({
        family: 'relative',
        from,
        to,
        rule: here.text,
        relative: { feet: 0, anchor: null, shape: 'same' },
      });
    }
    from = Math.max(to, from + 1);
  }
  return found;
}

/** Counters are read to a tenth; feet and inches give finer values. */
const round = (feet: number): number => Math.round(feet * 1000) / 1000;
