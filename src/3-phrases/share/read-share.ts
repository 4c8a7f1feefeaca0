/** Shares of the bore as percent: "thirty percent", "a third of the pipe", "half full", "two thirds". */
import { type NumberPhrase, readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet, wordsBetween } from '../number/surroundings.ts';
import type { PhraseOf } from '../phrase.ts';
import type { Token } from '../token/token.ts';
import { shareAfter, shareBefore } from './lexicon.ts';

const after = phraseSet(shareAfter);
const before = phraseSet(shareBefore);
const unit = phraseSet(['%']);
const notShares = phraseSet([
  '% off the|your|our|my|his price|bill|list|total|top_price|cost|next|job',
  '% off ,',
  '% fall|slope|grade|pitch|chance|battery|charge|charged|sure|certain|positive|discount|humidity|down|deposit|commission',
]);
const notBefore = phraseSet([
  "battery|batteries 's|is|at|says|says_about|down_to",
  "battery 's at",
  'battery is at',
  'battery says',
  'battery , ',
  'chance of rain',
  'humidity',
  'a grade of',
  'slope of',
  'fall of',
  'grade is',
]);
const inchUnit = phraseSet([
  'inch',
  'inches',
  'of an inch',
  'an inch',
  'hour',
  'of an hour',
  'mile',
  'of a mile',
  'million',
  'bath',
  'an hour',
  'a mile',
  'dozen',
  'a dozen',
  'bend',
  'the time',
  'of the time',
  'the houses',
  'of them',
  'the town',
  'the neighborhood',
  'the street',
  'of the house',
  'the block',
  'past',
  'turn',
  'the yard',
  'the day',
  'of my',
  'a day',
  'the reason',
  'the price',
  'price',
  'the battle',
  'feet',
  'foot',
  'a foot',
  'way',
  'story',
  'brick',
  'wall',
  'basement',
  'right',
  'moon',
  'and half',
]);

const coinBefore = phraseSet([
  'like',
  'size of',
  'big as',
  'bigger than',
  'smaller than',
  'wide as',
  'round as',
  'fit',
]);

const looseEnd = phraseSet(
  "or so;or thereabouts;maybe;probably;easy;easily;i 'd say;i guess;tops;at most;at best;at least;there;here".split(
    ';',
  ),
);

/** A smaller part of one, said alone, is of an inch. */
const LEAST_BARE = 0.1;

/** How many tokens after a share may tell that it is what is left, not what is taken. */
const LEFT_TOKENS = 7;
const leftBefore =
  /\b(leaves|leave|leaving|left|(?:down|closed|narrowed|reduced|choked|squeezed) to)( us| me| you| her| only| just| about| maybe| roughly| barely| at best)*$/;
const leftAfter =
  /^(%|percent)? ?((of|in) (the|it|that|this|our|my|her) ?)?((full |original )?(pipe|bore|opening|line|diameter|section|hole) )?((is|'s|that 's|are|still|only|all that 's|remains|stays) )*(left|open|clear|remaining|remains|usable|to work with)$/;

/** "leaves about twenty percent of the pipe open", "a third of it is left": the rest is blocked. */
function isLeftOpen(tokens: readonly Token[], from: number, to: number): boolean {
  let lead = '';
  for (let at = from - 1; at >= Math.max(0, from - LEFT_TOKENS); at -= 1) {
    if ((tokens[at]?.breakAfter ?? 'stop') !== 'none') break;
    lead = `${tokens[at]!.text} ${lead}`;
  }
  const leaves = leftBefore.test(lead.trim());
  let text = '';
  for (let at = to - 1; at < Math.min(tokens.length, to + LEFT_TOKENS); at += 1) {
    const token = tokens[at]!;
    if (at >= to) text = `${text} ${token.text}`.trim();
    const says = /(left|open|clear|remaining|remains|usable|with)$/.test(text) && leftAfter.test(text);
    // "Twenty percent open joint", "a third left side": the word goes on to something else.
    const next = tokens[at + 1]?.text;
    if (says && (token.breakAfter !== 'none' || next === undefined || /^(and|but|so|for|in|at|if)$/.test(next)))
      return true;
    if (token.breakAfter !== 'none') break;
  }
  const ends = (tokens[to - 1]?.breakAfter ?? 'stop') !== 'none';
  return leaves && (ends || /^(of|open|clear|for|and|now|here)$/.test(tokens[to]?.text ?? ''));
}

/** Between the two ends of a guess: "ten to fifteen percent", "twenty, twenty five percent", "a third to a half". */
const spans = /^(to|or|and|through|up to|maybe|, maybe|, or|or maybe|, or maybe|to maybe|,|to about|to a)$/;

/** The other end of a guess whose unit is said once, and the middle that stands for both. */
function readSpan(tokens: readonly Token[], number: NumberPhrase): { middle: NumberPhrase; isSpan: boolean } {
  const alone = { middle: number, isSpan: false };
  let at = number.to;
  while (at < tokens.length && at < number.to + 3 && /^(to|or|and|through|up|maybe|about)$/.test(tokens[at]!.text))
    at += 1;
  const other = readNumber(tokens, at);
  const between = other ? wordsBetween(tokens, number.to, other.from) : null;
  if (!other || between === null || !spans.test(between)) return alone;
  const isAfterBetween = tokens[number.from - 1]?.text === 'between';
  if (between === 'and' && !isAfterBetween) return alone;
  // "At ten, fifteen percent": the first is a place, unless it is said to be a guess.
  const isGuess = /^(maybe|about|say|around|roughly|probably|like|it|only|perhaps|a)$/;
  if (between.startsWith(',') && tokens[number.from - 1]?.text === 'at') return alone;
  if (between === ',' && !isGuess.test(tokens[number.from - 1]?.text ?? '')) return alone;
  if (other.value <= number.value || other.isFraction !== number.isFraction) return alone;
  if (other.value > (number.isFraction ? 1 : Math.max(2 * number.value, number.value + 20))) return alone;
  const value = (number.value + other.value) / 2;
  return { middle: { ...other, from: number.from, value }, isSpan: true };
}

export function readShare(tokens: readonly Token[], alone: NumberPhrase): PhraseOf<'share'> | null {
  const span = readSpan(tokens, alone);
  const whole = span.isSpan ? readOneShare(tokens, span.middle) : null;
  return whole && !whole.isBare ? whole : readOneShare(tokens, alone);
}

function readOneShare(tokens: readonly Token[], number: NumberPhrase): PhraseOf<'share'> | null {
  const make = (value: number, to: number, isBare: boolean, rule: string): PhraseOf<'share'> | null => {
    const percent = Math.round((isLeftOpen(tokens, number.from, to) ? 100 - value : value) * 10) / 10;
    return percent >= 0 && percent <= 100 ? { family: 'share', percent, isBare, from: number.from, to, rule } : null;
  };
  const percentUnit = phraseAfter(tokens, number.to, unit);
  if (percentUnit) {
    if (phraseAfter(tokens, number.to, notShares) || phraseBefore(tokens, number.from, notBefore)) return null;
    return make(number.value, percentUnit.to, false, '<number> percent');
  }
  // "About like a quarter", "the size of a half dollar": a coin.
  if (!number.isFraction || phraseAfter(tokens, number.to, inchUnit) || phraseBefore(tokens, number.from, coinBefore))
    return null;
  // "On the top half of the pipe, moderate": where it is, not how much.
  if (/^(top|bottom|upper|lower|left|right|first|second|other|front|back)$/.test(tokens[number.from - 1]?.text ?? ''))
    return null;
  const percent = Math.round(number.value * 100);
  const named = phraseAfter(tokens, number.to, after);
  if (named) return make(percent, named.to, false, '<fraction> of the pipe');
  const ends =
    (tokens[number.to - 1]?.breakAfter ?? 'stop') !== 'none' ||
    number.to >= tokens.length ||
    phraseAfter(tokens, number.to, looseEnd) !== null;
  // "Nobody digs for a sixteenth."
  if (number.value < LEAST_BARE) return null;
  if (ends) return make(percent, number.to, true, '<fraction>');
  return phraseBefore(tokens, number.from, before) ? make(percent, number.to, true, 'about <fraction>') : null;
}
