/** Joins places into stretches and lists: "31 to 38 feet", "starts at 19 and goes to 27", "12 feet, 15 feet and 21". */
import { phraseAt, phraseBefore, phraseSet, wordsBetween } from '../number/surroundings.ts';
import type { Phrase, PhraseOf } from '../phrase.ts';
import { isSilentBefore } from '../token/silence.ts';
import { type Token, textOf } from '../token/token.ts';
import { beginsAtNamed } from './from-start.ts';
import { rangeBetween } from './lexicon.ts';
import type { Place } from './read-place.ts';
import { endPlace, middlePlace, samePlace, startPlace } from './word-places.ts';

const range = phraseSet(rangeBetween);
const between = phraseSet(['between', 'anywhere between', 'somewhere between']);
const hedges =
  /\b(about|around|oh|well|what|let 's see|let me see|i 'd say|call it|maybe|like|roughly|say|approximately|almost|nearly|um|uh|just past|just over|just under)\b/g;

const squeeze = (text: string): string =>
  text
    .replace(hedges, '')
    .replace(/\s+/g, ' ')
    .replace(/^(, )+|( ,)+$/g, '')
    .trim()
    .replace(/^(\S+)( ,)+$/, '$1');

function rangeWords(
  tokens: readonly Token[],
  first: Place,
  second: Place,
  holdsThing: HoldsThing,
  firstThing: FirstThing,
): string | null {
  const gap = wordsBetween(tokens, first.to, second.from);
  if (gap === null) return null;
  const bare = squeeze(gap);
  if (range.has(gap.trim()) || range.has(bare)) return bare === '' ? 'to' : bare;
  if (bare === 'and' && phraseBefore(tokens, first.from, between)) return 'between … and';
  // "from thirty to, where are we, thirty eight"
  if (
    /^(up |out |on |down )?(to|till|until|through) ,( \S+){1,5} ,( (up |out |on )?(to|till|until|through))?$/.test(
      gap,
    ) &&
    !holdsThing(first.to, second.from)
  )
    return 'to';
  // "in at 12, out at 20": a gap of free words that ends in the words of an ending.
  // "hole at 35, and it ends at 40": what is named between them has the first for its place.
  const reach = begun.test(textOf(tokens, Math.max(0, first.from - 4), first.from)) ? BEGUN_WORDS : 8;
  if (!second.isEnd || gap.split(' ').length > reach || holdsThing(first.to, second.from)) return null;
  // "Twenty two … it's full of water from here to twenty five": the first number was said by itself.
  return isSilentBefore(tokens[first.to]) && firstThing(first.to, second.from) ? null : gap;
}

/** "It commences about four feet in, and it's bad, and it don't let up till twelve": so many words may stand between. */
const BEGUN_WORDS = 20;
const begun =
  /\b(start|begin|commenc|pick|kick|set|show)(s|ed|ing|ning|es)?( (up|in))?( (at|about|around|from|near|just past))*$|\b(began|begun)( \S+)?$/;

/** Whether something is named between two tokens. */
type HoldsThing = (from: number, to: number) => boolean;
/** The first thing named between two tokens. */
export type FirstThing = (from: number, to: number) => { readonly from: number; readonly to: number } | undefined;

/** Turns places into distance and relative phrases. */
export function joinPlaces(
  tokens: readonly Token[],
  places: readonly Place[],
  holdsThing: HoldsThing,
  firstThing: FirstThing,
): Phrase[] {
  const phrases: Phrase[] = [];
  for (let index = 0; index < places.length; index += 1) {
    const first = places[index]!;
    if (first.sign !== null) {
      phrases.push(relativePhrase(tokens, first, firstThing));
      continue;
    }
    const second = places[index + 1];
    if (first.isFromStart === true) {
      phrases.push(distancePhrase({ ...first, feet: 0 }, first, 'from the start to <distance>'));
      continue;
    }
    const words = second && second.sign === null ? rangeWords(tokens, first, second, holdsThing, firstThing) : null;
    // "as far as sixteen, it begins at ten": the end is said first.
    if (second && isToldBackwards(tokens, first, second)) {
      phrases.push({
        ...distancePhrase(
          { ...second, from: first.from, to: second.to },
          { ...first, to: second.to },
          '<distance>, from <distance>',
        ),
      });
      index += 1;
      continue;
    }
    const isOr = words === 'or' || words === 'or maybe';
    // "from ten back to six": said from the far end.
    if (second && words !== null && /\bback( \w+)? to$/.test(words) && second.feet < first.feet) {
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
    const start = beginsAtNamed(tokens, first.from);
    if (start) {
      phrases.push(startPhrase(start), distancePhrase({ ...first, isEnd: true }, null, 'from <thing> to <distance>'));
      continue;
    }
    phrases.push(distancePhrase(first, null, first.isEnd ? 'out of it at <distance>' : `<distance> (${first.frame})`));
  }
  return phrases;
}

const upTo = phraseSet([
  'up to',
  'to',
  'as far as',
  'until',
  'till',
  'out to',
  'all the way to',
  'through to',
  'down to',
  'clear to',
]);
const startsAt = phraseSet([
  'starting at',
  'starting from',
  'starts at',
  'it starts at',
  'beginning at',
  'begins at',
  'began at',
  'begin at',
  'started at',
  'begin at about',
  'begins at about',
  'starting at about',
  'starts at about',
  'from',
  'from about',
]);

function isToldBackwards(tokens: readonly Token[], first: Place, second: Place): boolean {
  if (second.sign !== null || second.feet >= first.feet) return false;
  if (
    !phraseBefore(tokens, first.from, upTo) ||
    /^(coming|'re|'m|we|i|get|got)$/.test(tokens[first.from - 3]?.text ?? '')
  )
    return false;
  return second.from - first.to <= 7 && phraseBefore(tokens, second.from, startsAt) !== null;
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
/** A name begins so soon after the words that lead to it, in tokens ("past the first little wye"). */
const NAME_TOKENS = 4;

/** What may stand before the name itself: "the first little wye", "the end of that old liner". */
const describes =
  /^(the|that|this|those|these|a|an|my|our|your|his|her|first|second|third|fourth|last|other|next|previous|same|one|two|big|little|small|tiny|bad|nasty|ugly|old|new|long|short|left|right|top|bottom|upper|lower|heavy|light|said|main|of|in|end|start|edge|lip|mouth|far|near)$/;

/** Where the one thing that a way is counted from is named: what comes after its name is told of another. */
function nameEnd(tokens: readonly Token[], from: number, firstThing: FirstThing): number {
  const whole = anchorEnd(tokens, from);
  if (/^(it|them|there)$/.test(tokens[from]?.text ?? '')) return Math.min(whole, from + 1);
  const thing = firstThing(from, whole);
  if (thing === undefined) return whole;
  const isNamed =
    thing.from - from < NAME_TOKENS && tokens.slice(from, thing.from).every(({ text }) => describes.test(text));
  return Math.min(whole, isNamed ? thing.to : from + 2);
}

function anchorEnd(tokens: readonly Token[], from: number): number {
  let to = from;
  while (to < tokens.length && to < from + ANCHOR_WORDS) {
    to += 1;
    if ((tokens[to - 1]?.breakAfter ?? 'stop') !== 'none') break;
    if (/^(there|is|'s|we|i|it|comes|comes_in)$/.test(tokens[to]?.text ?? '') && to > from + 1) break;
    // "Between the coupling and the wye a branch enters".
    const opensThing = /^(a|an|another)$/.test(tokens[to]?.text ?? '') && to > from + 1;
    if (opensThing && !/^(and|of|with|to|or|from|by|in|on|like)$/.test(tokens[to - 1]?.text ?? '')) break;
  }
  return to;
}

function relativePhrase(tokens: readonly Token[], place: Place, firstThing: FirstThing): PhraseOf<'relative'> {
  const anchor = place.needsAnchor ? { from: place.to, to: nameEnd(tokens, place.to, firstThing) } : null;
  return {
    family: 'relative',
    from: place.from,
    to: place.to,
    rule: place.needsAnchor ? '<feet> past <thing>' : '<feet> further',
    relative: {
      feet: round(place.feet * (place.sign ?? 1)),
      anchor,
      shape: place.isInside === true ? 'inside' : 'offset',
    },
  };
}

/** "From the tee to twenty one": the stretch begins where the tee was. */
const startPhrase = (anchor: { readonly from: number; readonly to: number }): PhraseOf<'relative'> => ({
  family: 'relative',
  from: anchor.from - 1,
  to: anchor.from,
  rule: 'from <thing> to <distance>',
  relative: { feet: 0, anchor, shape: 'offset' },
});

/** Word lists that name a place by its words alone, and what they come to. The middle and the ends need an anchor. */
const wordPlaces = [
  {
    set: phraseSet(middlePlace),
    shapeOf: (text: string) => (/between/.test(text) ? ('between' as const) : ('middle' as const)),
  },
  { set: phraseSet(endPlace), shapeOf: () => 'end' as const },
  { set: phraseSet(startPlace), shapeOf: () => 'start' as const },
  { set: phraseSet(samePlace), shapeOf: () => 'same' as const },
] as const;

const openingWords: ReadonlySet<string> = new Set(
  wordPlaces.flatMap(({ set }) => [...set].map((words) => words.split(' ', 1)[0] ?? '')),
);

/** "same spot", "halfway between …", "right where it ends". */
export function readWordPlaces(tokens: readonly Token[]): PhraseOf<'relative'>[] {
  const found: PhraseOf<'relative'>[] = [];
  let from = 0;
  while (from < tokens.length) {
    if (!openingWords.has(tokens[from]?.text ?? '')) {
      from += 1;
      continue;
    }
    let best: PhraseOf<'relative'> | null = null;
    for (const { set, shapeOf } of wordPlaces) {
      const match = phraseAt(tokens, from, set);
      if (!match || (best && best.to >= match.to)) continue;
      const shape = shapeOf(match.text);
      const isWhole = /^(start|end)$/.test(shape) && !/ (of|into|inside)$/.test(match.text);
      const anchor = shape === 'same' ? null : { from: match.to, to: isWhole ? match.to : anchorEnd(tokens, match.to) };
      const feet = shape === 'same' ? 0 : null;
      best = { family: 'relative', from, to: match.to, rule: match.text, relative: { feet, anchor, shape } };
    }
    if (best) found.push(best);
    from = best?.to ?? from + 1;
  }
  return found;
}

/** Counters are read to a tenth; feet and inches give finer values. */
const round = (feet: number): number => Math.round(feet * 1000) / 1000;
