/**
 * Places on the counter: one number read as a distance, or as a way from somewhere ("four feet past the wye").
 * The surest frame wins: a foot unit, then "counter says", then "at", then a bare number that nothing else claims.
 */
import { type NumberPhrase, readNumber } from '../number/read-number.ts';
import { phraseAfter, phraseBefore, phraseSet } from '../number/surroundings.ts';
import type { DistanceFrame, Respelling } from '../phrase.ts';
import type { Token } from '../token/token.ts';
import { endsAfter, isDepth, isOtherAmount, isPulledBack, isSizePair, isSizeStep, readInside } from './around-place.ts';
import { goesOnUntil, isEndLed, isOtherEnd } from './end-words.ts';
import { beginsAtStart } from './from-start.ts';
import {
  afterBarePlace,
  changeAfter,
  counterBefore,
  endBefore,
  moreAfter,
  placeBefore,
  rateBefore,
  spanBefore,
} from './lexicon.ts';
import { opensPlace, opensRange } from './opens-place.ts';
import { readBareWay } from './read-bare-way.ts';
import { another, isEndOfClause, readFeet, readRelative } from './read-feet.ts';
import { bareStepTo, beforeSoft, isStep } from './read-step.ts';
import { isCleanFor, isTravelled } from './travel.ts';

/** The longest lateral a push camera is run in, in feet: a bare number above it is no place. */
const LONGEST_RUN_FEET = 400;

export interface Place {
  readonly from: number;
  readonly to: number;
  readonly feet: number;
  readonly frame: DistanceFrame;
  /** +1 or -1 when the number is a way from somewhere. */
  readonly sign: 1 | -1 | null;
  /** Whether words naming the anchor follow. */
  readonly needsAnchor: boolean;
  /** Counted from where the anchor begins ("two feet into the liner"), not from where it ends. */
  readonly isInside?: boolean;
  readonly isEnd: boolean;
  /** Whether it is the end of a stretch that begins where the run does. */
  readonly isFromStart?: boolean;
  readonly respelled?: Respelling;
}

const moreFeet = phraseSet(moreAfter);
const change = phraseSet(changeAfter);
const place = phraseSet(placeBefore);
const firmPlace = phraseSet(
  placeBefore.filter((words) => /\bat\b|station|from|between|until|till|starting|starts|begin|mark/.test(words)),
);
const counter = phraseSet(counterBefore);
const end = phraseSet(endBefore);

const rate = phraseSet(rateBefore);
const span = phraseSet(spanBefore);

interface PlaceContext {
  readonly tokens: readonly Token[];
  /** Whether some known thing, material, position or degree starts at a token, or ends at it. */
  readonly startsPhraseAt: (index: number) => boolean;
  readonly endsPhraseAt: (index: number) => boolean;
}

/** What opens the next thing said of what is there: "at 18 taking up half the pipe", "at 18 about three inches across". */
const goesOnToSay = /^(about|maybe|roughly|approximately|almost|nearly|probably|half|a|an|\w{3,}ing)$/;

/** The place a number stands for, or null when it is none. */
export function readPlace(context: PlaceContext, number: NumberPhrase): Place | null {
  const { tokens } = context;
  if (number.value > LONGEST_RUN_FEET || number.isFourFigure) return null;
  if (isDepth(tokens, number) || isSizeStep(tokens, number) || isSizePair(tokens, number)) return null;
  const respelling = number.respelled ? { respelled: number.respelled } : {};
  const isEnd =
    !isOtherEnd(tokens, number.from) &&
    ((phraseBefore(tokens, beforeSoft(tokens, number.from), end) !== null && !goesOnUntil(tokens, number.from)) ||
      isEndLed(tokens, number.from) ||
      endsAfter(tokens, number.to));
  const more = phraseAfter(tokens, number.to, moreFeet);
  if (more && !number.isFraction) {
    const relative = readRelative(tokens, number.from, more.to);
    return {
      from: number.from,
      to: relative?.to ?? more.to,
      feet: number.value,
      frame: 'unit',
      sign: relative?.sign ?? 1,
      needsAnchor: relative?.needsAnchor ?? false,
      isEnd,
      ...respelling,
    };
  }
  const feet = readFeet(tokens, number);
  if (!number.isFraction && beginsAtStart(tokens, number.from, feet?.to ?? number.to, feet !== null)) {
    const frame = feet ? 'unit' : 'at';
    const value = feet?.feet ?? number.value;
    const to = feet?.to ?? number.to;
    return { from: number.from, to, feet: value, frame, sign: null, needsAnchor: false, isEnd, isFromStart: true };
  }
  if (feet) {
    // "For about a foot in there I couldn't see": how long it lasts.
    if (/^for /.test(phraseBefore(tokens, number.from, span)?.text ?? '')) return null;
    // "Back up two feet": how far, not where.
    if (isPulledBack(tokens, number.from)) return null;
    const inside = readInside(tokens, feet.to);
    if (inside !== null && !number.isVague)
      return {
        from: number.from,
        to: inside,
        feet: feet.feet,
        frame: 'unit',
        sign: 1,
        needsAnchor: true,
        isInside: true,
        isEnd: false,
        ...respelling,
      };
    // "From 52 feet on" counts from the start.
    const isFrom =
      /^(from|starting|beginning)$/.test(tokens[number.from - 1]?.text ?? '') &&
      !/stop|comma|question/.test(tokens[number.from - 1]?.breakAfter ?? 'stop');
    const relative = isFrom ? null : readRelative(tokens, number.from, feet.to);
    if (
      !relative &&
      (isTravelled(tokens, number.from) ||
        isCleanFor(tokens, number.from, feet.to) ||
        isStep(tokens, number.from, feet.to))
    )
      return {
        from: number.from,
        to: feet.to,
        feet: feet.feet,
        frame: 'unit',
        sign: 1,
        needsAnchor: false,
        isEnd: false,
        ...respelling,
      };
    if (!relative && phraseBefore(tokens, number.from, span)) return null;
    if (!relative && number.isVague) return null;
    if (!relative && number.isFraction) return null;
    const value = /change/.test(tokens[feet.to - 1]?.text ?? '') ? Math.floor(feet.feet) : feet.feet;
    return {
      from: number.from,
      to: relative?.to ?? feet.to,
      feet: value,
      frame: 'unit',
      sign: relative?.sign ?? null,
      needsAnchor: relative?.needsAnchor ?? false,
      isEnd,
      ...respelling,
    };
  }
  if (number.isFraction || isOtherAmount(tokens, number)) return null;
  const way = readBareWay(tokens, number);
  if (way !== null)
    return {
      from: number.from,
      to: way.to,
      feet: number.value,
      frame: 'bare',
      sign: way.sign,
      needsAnchor: way.needsAnchor,
      ...(way.isInside ? { isInside: true } : {}),
      isEnd: false,
      ...respelling,
    };
  if (number.isVague) return null;
  const stepTo = bareStepTo(tokens, number);
  if (stepTo !== null)
    return {
      from: number.from,
      to: stepTo,
      feet: number.value,
      frame: 'bare',
      sign: 1,
      needsAnchor: false,
      isEnd: false,
      ...respelling,
    };
  // "Go another five and there's roots": the unit is left out.
  const isMore =
    phraseBefore(tokens, number.from, another) !== null &&
    isTravelled(tokens, number.from) &&
    (isEndOfClause(tokens, number.to) || /^(and|then|to|there|here|on)$/.test(tokens[number.to]?.text ?? ''));
  if (isMore)
    return {
      from: number.from,
      to: number.to,
      feet: number.value,
      frame: 'bare',
      sign: 1,
      needsAnchor: false,
      isEnd: false,
      ...respelling,
    };
  // "between those two": things are counted.
  const before = tokens[number.from - 1];
  if (before && !isEndOfClause(tokens, number.from) && /^(those|these|them|all|both)$/.test(before.text)) return null;
  const tail = phraseAfter(tokens, number.to, change);
  const to = tail?.to ?? number.to;
  const value = tail ? Math.floor(number.value) : number.value;
  const made = (frame: DistanceFrame): Place => ({
    from: number.from,
    to,
    feet: value,
    frame,
    sign: null,
    needsAnchor: false,
    isEnd,
    ...respelling,
  });
  if (phraseBefore(tokens, number.from, counter)) return made('counter');
  // "One plus twelve" is a station and nothing else.
  if (tokens.slice(number.from, number.to).some(({ text }) => /\+|^plus$/.test(text))) return made('at');
  if (phraseBefore(tokens, number.from, rate) && !phraseBefore(tokens, number.from, place)) return null;
  const isDecimal = number.value % 1 !== 0 && /\.\d/.test(tokens[number.from]?.text ?? '');
  const follows =
    isDecimal ||
    isEndOfClause(tokens, to) ||
    afterBarePlace.has(tokens[to]?.text ?? '') ||
    goesOnToSay.test(tokens[to]?.text ?? '') ||
    startsPhraseSoon(context, to) ||
    opensRange(tokens, to, value) ||
    isByThing(tokens, to) ||
    tail !== null;
  // "All plastic since forty five."
  const isSince = tokens[number.from - 1]?.text === 'since' && context.endsPhraseAt(number.from - 1);
  // "Held at twelve by more of it": whatever is said next, unless it is measured in something else.
  const isMeasured = otherMeasure.test(tokens[to]?.text ?? '') || (!follows && readNumber(tokens, to) !== null);
  if (tokens[number.from - 1]?.text === 'at' && !isMeasured) return made('at');
  if (isSince || phraseBefore(tokens, number.from, firmPlace)) return follows ? made('at') : null;
  // "one" is a pronoun far more often than a place; a bare nought is talk about the counter.
  if (number.value <= 1 && number.to - number.from === 1) return null;
  // Small bare numbers count things more often than feet.
  const isFirm =
    isEndOfClause(tokens, to) ||
    startsPhraseSoon(context, to) ||
    opensRange(tokens, to, value) ||
    /^(there|here|and|feet|to|through|thru|until|till|out|up|also|too|again)$/.test(tokens[to]?.text ?? '') ||
    // "Six it changes to four inch": the number opens what is said.
    (isEndOfClause(tokens, number.from) &&
      /^(it|we|i|you|that|this|she|he|they|the|my|your|our)$/.test(tokens[to]?.text ?? ''));
  if (value < 10 && (!isFirm || tokens[to]?.text === 'more')) return null;
  const opens =
    opensPlace(tokens, number.from, context.endsPhraseAt) ||
    /^(there|here)$/.test(tokens[to]?.text ?? '') ||
    phraseBefore(tokens, number.from, place) !== null ||
    isEnd;
  return opens && follows ? made('bare') : null;
}

/** "Held up at eight by a wad of roots", and not "eight by ten". */
const isByThing = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'by' &&
  /^(a|an|the|this|that|these|those|some|more|what|something|roots?)$/.test(tokens[at + 1]?.text ?? '');

/** What else is counted at so many of it. */
const otherMeasure =
  /^(inch|inches|o'clock|%|percent|degrees?|years?|months?|days?|hours?|minutes?|seconds?|dollars|bucks|grand|hundred|thousand|am|pm|a_m|p_m|times|different|other|more|of|miles?|gallons?|pounds?|or|joints?|places?|spots?|houses?|street|road|avenue|lane|drive|court|\d\S*)$/;

/** How many free words may stand between a bare number and the thing it places ("15 fresh air vent"). */
const SOON_TOKENS = 3;

function startsPhraseSoon(context: PlaceContext, at: number): boolean {
  for (let index = at; index <= at + SOON_TOKENS; index += 1) {
    if (context.startsPhraseAt(index)) return true;
    if ((context.tokens[index]?.breakAfter ?? 'stop') !== 'none') return false;
  }
  return false;
}
