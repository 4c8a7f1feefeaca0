/**
 * Ways from somewhere whose unit is left out: "three past the wye", "five further", "four in from the edge", "seven later",
 * "six more, a wye". After a number alone only words that hardly follow a place are believed.
 */
import { type NumberPhrase, readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import { type Token, textOf } from '../token/token.ts';
import { isEndOfClause } from './read-feet.ts';

export interface BareWay {
  readonly to: number;
  readonly sign: 1 | -1;
  readonly needsAnchor: boolean;
  readonly isInside: boolean;
}

/** Nobody counts further than this, in feet, from what was named. */
const FARTHEST_FEET = 40;

const that = 'it|that|there|this|them|those|here';
const onward = phraseSet([
  'further|farther',
  'further|farther on|along|down|up|in|out',
  'feet? later',
  'beyond',
  'past|beyond|after it|that|there|this|them|those',
  `down|up|on|out|along from ${that}`,
  `downstream|upstream of|from ${that}`,
  'on from it',
  'on past it|that|there|this',
  'more than that',
  'more on|along from it|that|there',
]);
const onwardFrom = phraseSet([
  'past|beyond',
  'after the|that|this',
  'down|up|on|out|along from',
  'downstream of|from',
  'further|farther on|along|than|down from?',
  'past where',
  'on past',
  'on the far|street side of',
  'out? the far|other side of',
  'from the|that|this',
]);
const short = phraseSet([`short|shy|ahead|upstream|this side of ${that}`, `before ${that}`, `back from ${that}`]);
const shortOf = phraseSet(['short|shy|ahead|upstream of', 'this side of', 'back from', 'before the|that|this']);
const inside = phraseSet([
  'in from the|that|this edge|end|start|lip|mouth|beginning of?',
  'in from the|that|this',
  'into the|that|this|our',
  'inside the|that|this',
  'into it|that',
]);

/** What makes a number a place, whatever stands behind it: "at fifteen, past the wye". */
const placing =
  /^(at|says|reads|is|'s|are|'re|to|from|on|until|till|counter|footage|station|than|call|mark|say|'m|half|quarter|page|number|by|of|between|hit|hits|just|around|about|near|every|each)$/;
const softly = /^(just|around|about|maybe|like|only|some|roughly|say|another)$/;

/** What ends the words of a way when the number is of the clock on the wall ("ten past two"). */
const timeOf = /^(midnight|noon|lunch|lunchtime|dinner|now|the hour|o'clock|a|an|my|your|\d+)$/;

/** "Twenty from the house": paced out above ground. */
const aboveGround =
  /^from (the|that|this) (house|street|road|curb|kerb|wall|fence|tree|top|bottom|property|sidewalk|corner|front|back|city|county|crown|ceiling|floor)/;

export function readBareWay(tokens: readonly Token[], number: NumberPhrase): BareWay | null {
  if (number.value > FARTHEST_FEET || number.value <= 0) return null;
  if (isPlacedBy(tokens, number.from)) return null;
  const found = longest([
    way(tokens, number.to, onward, 1, false),
    way(tokens, number.to, onwardFrom, 1, true),
    way(tokens, number.to, short, -1, false),
    way(tokens, number.to, shortOf, -1, true),
    way(tokens, number.to, inside, 1, true, true),
    moreOf(tokens, number),
  ]);
  if (found === null) return null;
  if (aboveGround.test(textOf(tokens, found.to - 1, found.to + 2))) return null;
  const next = tokens[found.to];
  const isOfTime = next === undefined || timeOf.test(next.text) || readNumber(tokens, found.to) !== null;
  return found.needsAnchor && (isOfTime || isEndOfClause(tokens, found.to)) ? null : found;
}

/** Whether a word before the number says that it is a place; "just", "about" and the like are looked through. */
function isPlacedBy(tokens: readonly Token[], at: number): boolean {
  let before = at - 1;
  while (before >= 0 && tokens[before]!.breakAfter === 'none' && softly.test(tokens[before]!.text)) before -= 1;
  const lead = tokens[before];
  return lead !== undefined && lead.breakAfter === 'none' && placing.test(lead.text) && !isCopula(tokens, before);
}

/** "It's about seven past the sand": after these words a way is as likely as a place. */
const isCopula = (tokens: readonly Token[], at: number): boolean =>
  /^(is|'s)$/.test(tokens[at]?.text ?? '') && /^(it|that|there|then)$/.test(tokens[at - 1]?.text ?? '');

function way(
  tokens: readonly Token[],
  at: number,
  set: ReadonlySet<string>,
  sign: 1 | -1,
  needsAnchor: boolean,
  isInside = false,
): BareWay | null {
  const match = phraseAfter(tokens, at, set);
  if (match === null) return null;
  const isWhole = / (it|that)$/.test(match.text) && isInside;
  // The word that opens the anchor ("past the") is no part of the way, so that its name is read whole.
  const opens = / (the|that|this|our)$/.exec(match.text);
  const to = needsAnchor && opens && !isWhole ? match.to - 1 : match.to;
  // "Past that toilet" names what it is past; "past that there's" does not.
  if (!needsAnchor && / (that|this|those)$/.test(match.text) && namesThing(tokens, match.to)) return null;
  return { to, sign, needsAnchor, isInside };
}

const namesThing = (tokens: readonly Token[], at: number): boolean =>
  !isEndOfClause(tokens, at) &&
  !/^(there|here|i|we|it|is|'s|you|he|she|they|at|the|a|an|and|another|that|then|some|more|my|no|comes|goes|looks|on|in|to|big|little|small)$/.test(
    tokens[at]?.text ?? '',
  );

const longest = (ways: readonly (BareWay | null)[]): BareWay | null =>
  ways.reduce((best, one) => (one !== null && (best === null || one.to > best.to) ? one : best), null);

const another = phraseSet(['go|come|add|push|give|feed it? another?', 'plus another?', 'and plus another?']);
const goesOn =
  /^(a|an|the|and|there|then|it|we|i|you|another|that|this|before|until|till|to|gets|puts|brings|takes|makes|into|where)$/;

/** "Six more, a wye", "and five more brings us to the main", "add four": feet are counted on, not things. */
function moreOf(tokens: readonly Token[], number: NumberPhrase): BareWay | null {
  const isAdded = phraseBefore(tokens, number.from, another) !== null;
  if (isAdded && isEndOfClause(tokens, number.to))
    return { to: number.to, sign: 1, needsAnchor: false, isInside: false };
  if (tokens[number.to]?.text !== 'more' || isEndOfClause(tokens, number.to)) return null;
  const to = number.to + 1;
  const opens = opensClause(tokens, number.from);
  const next = tokens[to]?.text ?? '';
  // "Two more, at 24 and 26" counts things.
  const goes = isEndOfClause(tokens, to) ? !/^(at|of|on|both|one|these|those)$/.test(next) : goesOn.test(next);
  return (opens || isAdded) && goes ? { to, sign: 1, needsAnchor: false, isInside: false } : null;
}

const opensClause = (tokens: readonly Token[], from: number): boolean => {
  const lead = /^(and|then|so|okay|now|another|about|maybe|just)$/.test(tokens[from - 1]?.text ?? '') ? from - 1 : from;
  return isEndOfClause(tokens, lead);
};
