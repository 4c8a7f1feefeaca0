/**
 * What the counter says about runs. Along one push it climbs; pulled back it falls and passes what is known. Readings that climb
 * again from low down, at places where nothing is known, speak for another run, whatever was announced.
 */
import { phrasesOf } from '../3-phrases/phrase.ts';
import type { Token } from '../3-phrases/token/token.ts';
import { endKinds } from './kind-roles.ts';
import { readSignals, type Signals } from './run-signs.ts';
import { type Sentence, tellsOfOther } from './sentence.ts';

/** One place read off the counter, in feet. */
export interface CounterReading {
  readonly feet: number;
  /** The last sentence before that gave the same place; -1 where none did. */
  readonly lastSame: number;
  /** Less for what may be no counter reading. */
  readonly weight: number;
  readonly isBare: boolean;
  readonly isNamed: boolean;
}

/** What one sentence tells of the camera. */
export interface Step {
  readonly signals: Signals;
  readonly readings: readonly CounterReading[];
  readonly isEnd: boolean;
  readonly saysPipe: boolean;
  readonly names: boolean;
  /** The camera is said to go on by some feet. */
  readonly moves: boolean;
}

export interface Course {
  readonly way: 'out' | 'back';
  readonly furthest: number;
  readonly last: number;
  readonly isEnded: boolean;
  /** Whether anything was read or ended since the run began. */
  readonly hasMoved: boolean;
  /** How many readings there were. */
  readonly count: number;
  /** Where the run before had come to when it was left in the middle of its way out. */
  readonly leftAt: number | null;
  /** What did not fit so far. */
  readonly misfit: number;
  readonly start: number;
  /** False for the first run. */
  readonly isLater: boolean;
}

/** How much readings that do not fit weigh. Fitted by hand on the development narrations. */
const costs = {
  belowOnWayOut: 1.2,
  littleBelow: 0.5,
  climbsOnWayBack: 0.8,
  newOnWayBack: 0.3,
  movesOnWayBack: 0.4,
  beyondEnd: 0.5,
  /** A run announced in the middle of a way out, after which the counter goes on from where it was. */
  goesOn: 1.6,
  /** What a run before found at the same place: a summary, more likely than a run. */
  saidBefore: 0.5,
  /** The first reading of a run is far out. */
  startsFar: 0.6,
} as const;
const MOST_MISFIT = 6;
const NEAR_FEET = 1.1;
/** Readings by which it shows whether the counter goes on from where it was. */
const EARLY_READINGS = 3;
/** Readings by which a summary shows. */
const SUMMARY_READINGS = 6;
/** What weighs less moves the camera nowhere. */
const SURE_WEIGHT = 0.5;
/** Beyond this a first reading is far out. */
const FAR_FEET = 25;

/** A bare number this far beyond everything is no reading. */
const JUMP_FEET = 90;
/** A reading that stands out this much from those around it is misheard, or no reading. */
const SPIKE_FEET = 8;

const round = (feet: number): number => Math.round(feet * 2);

/** All sentences as steps of the camera. */
export function stepsOf(sentences: readonly Sentence[], tokens: readonly Token[]): Step[] {
  const lastAt = new Map<string, number>();
  const steps = sentences.map((sentence) => {
    const signals = readSignals(sentence, tokens);
    const isTalk = sentence.isQuestion || tellsOfOther(sentence);
    const kinds = phrasesOf(sentence.phrases, 'thing').map(({ kind }) => kind);
    const names = kinds.length > 0 || sentence.phrases.some(({ family }) => family === 'material');
    const keys = kinds.length > 0 ? kinds : ['any'];
    const readings = phrasesOf(sentence.phrases, 'distance').flatMap(({ distance }) => {
      const isBare = distance.frame !== 'unit';
      const weight = (isTalk ? 0.3 : 1) * (distance.frame === 'bare' && !names ? 0.6 : 1);
      return [distance.feet, distance.toFeet]
        .filter((feet): feet is number => feet !== null && feet > 0)
        .map((feet) => {
          const at = round(feet);
          const before = keys.flatMap((key) => [at - 1, at, at + 1].map((near) => lastAt.get(`${key} ${near}`) ?? -1));
          return { feet, lastSame: Math.max(...before), weight, isBare, isNamed: kinds.length > 0 };
        });
    });
    for (const { feet } of readings)
      for (const key of [...keys, 'any']) lastAt.set(`${key} ${round(feet)}`, sentence.index);
    const isEnd =
      kinds.includes('end-of-line') ||
      (!isTalk && (signals.isFinish || kinds.some((kind) => endKinds[kind] !== undefined)));
    const saysPipe = sentence.phrases.some(({ family }) => family === 'diameter' || family === 'material');
    const moves = phrasesOf(sentence.phrases, 'relative').some(
      ({ relative }) => relative.shape === 'offset' && relative.anchor === null && (relative.feet ?? 0) > 0,
    );
    return { signals, readings, isEnd, saysPipe, names, moves };
  });
  return withoutSpikes(steps);
}

/** "Eight feet, and a bend of forty five", with fifteen after it: what leaps up and is not gone on from counts for nothing. */
function withoutSpikes(steps: readonly Step[]): Step[] {
  const all: { isEnd: boolean; feet: number; readings: CounterReading[] }[] = [];
  for (const step of steps)
    for (const reading of step.readings) {
      const last = all.at(-1);
      if (last && last.feet === reading.feet) {
        last.readings.push(reading);
        last.isEnd ||= step.isEnd;
      } else all.push({ isEnd: step.isEnd, feet: reading.feet, readings: [reading] });
    }
  const spikes = new Set<CounterReading>();
  all.forEach(({ isEnd, feet, readings }, index) => {
    const before = all[index - 1]?.feet ?? 0;
    const after = all[index + 1]?.feet;
    const later = all[index + 2]?.feet ?? after;
    if (after === undefined || later === undefined || isEnd) return;
    const leaps = [before, after, later].every((other) => feet > other + SPIKE_FEET);
    if (leaps && Math.min(after, later) >= before - NEAR_FEET) for (const reading of readings) spikes.add(reading);
  });
  return steps.map((step) => ({ ...step, readings: step.readings.filter((reading) => !spikes.has(reading)) }));
}

export const beginCourse = (start: number, before: Course | null): Course => ({
  way: 'out',
  furthest: 0,
  last: 0,
  isEnded: false,
  hasMoved: false,
  count: 0,
  leftAt: before && before.way === 'out' && !before.isEnded ? before.furthest : null,
  misfit: 0,
  start,
  isLater: before !== null,
});

/** The same thing at the same place was named before the run began. */
const isRepeat = (reading: CounterReading, course: Course): boolean =>
  reading.isNamed && course.isLater && reading.lastSame >= 0 && reading.lastSame < course.start;

/** The course after one more sentence, and what it cost. */
export function follow(course: Course, step: Step): { course: Course; cost: number } {
  let { way, furthest, last, isEnded, hasMoved, count, misfit, leftAt } = course;
  let cost = 0;
  for (const reading of step.readings) {
    const { feet, weight } = reading;
    if (reading.isBare && feet > furthest + JUMP_FEET) continue;
    if (count === 0 && leftAt !== null && feet < leftAt - NEAR_FEET) leftAt = null;
    const isKnown = reading.lastSame >= course.start;
    const isBehind = way === 'back' || isEnded;
    let misfits = 0;
    if (count < EARLY_READINGS && leftAt !== null && feet > leftAt - NEAR_FEET)
      misfits = costs.goesOn / (1 + 2 * count);
    else if (count === 0) misfits = feet > FAR_FEET ? costs.startsFar : 0;
    else if (feet > furthest + NEAR_FEET) {
      // A summary may name what an earlier run found.
      if (isBehind && reading.lastSame >= 0) continue;
      if (isEnded) misfits = costs.beyondEnd;
      way = 'out';
      isEnded = false;
    } else if (!isBehind) {
      if (feet < furthest - NEAR_FEET && !isKnown)
        misfits = feet > furthest * 0.7 ? costs.littleBelow : costs.belowOnWayOut;
    } else if (!isKnown) misfits = feet > last + NEAR_FEET ? costs.climbsOnWayBack : costs.newOnWayBack;
    if (count < SUMMARY_READINGS && isRepeat(reading, course)) misfits += costs.saidBefore;
    cost += misfits * weight;
    last = feet;
    count += 1;
    if (weight < SURE_WEIGHT) continue;
    furthest = Math.max(furthest, feet);
    hasMoved ||= furthest > 2;
  }
  if (step.moves && step.names && (way === 'back' || isEnded)) cost += costs.movesOnWayBack;
  if (step.moves) hasMoved = true;
  if (step.isEnd && count > 0) {
    isEnded = true;
    hasMoved = true;
  }
  if ((step.signals.isPullBack || step.signals.isSummary) && hasMoved) way = 'back';
  cost = Math.min(cost, Math.max(0, MOST_MISFIT - misfit));
  misfit += cost;
  return { course: { ...course, way, furthest, last, isEnded, hasMoved, count, misfit, leftAt }, cost };
}
