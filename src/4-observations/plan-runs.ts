/**
 * Decides over the whole talk where runs begin: what is announced and what the counter does are weighed together, and the best
 * arrangement of all is chosen. A start that hardly won, or hardly lost, leaves its run doubtful.
 */
import type { Token } from '../3-phrases/token/token.ts';
import { type Announcement, findAnnouncements } from './announcements.ts';
import type { CloseReading } from './close/read-closely.ts';
import { weighStarts } from './close/weigh-starts.ts';
import { beginCourse, type Course, follow, type Step, stepsOf } from './follow-counter.ts';
import type { Sentence } from './sentence.ts';

/** A camera that has turned back, or come to an end, is likelier to begin anew. */
const TURNED = 1;
/** Little was announced while the camera was on its way: it goes on. */
const ON_THE_WAY = -1.5;
const LITTLE = -1;
/** A run in which nothing was read. */
const EMPTY = -2;
/** Arrangements followed side by side. */
const BEAM = 6;
/** An arrangement must win by this much not to be doubted. */
const CLEAR_MARGIN = 1;
/** How many sentences after an announcement tell whether a run began. */
const JUDGED_SENTENCES = 50;

export interface RunPlan {
  /** Announcements that begin a run after the first, by their first sentence. */
  readonly starts: ReadonlyMap<number, Announcement>;
  /** The first sentences of stretches whose run is in doubt. */
  readonly doubtful: ReadonlySet<number>;
}

/** One arrangement up to some sentence; what came before is told by its parents. */
interface Path {
  readonly course: Course;
  readonly score: number;
  /** The announcement that began a run at this sentence. */
  readonly begun: Announcement | null;
  readonly isFirstRun: boolean;
  readonly parent: Path | null;
}

/** Plans the runs that follow the first one, which begins with sentence `first`. */
export function planRuns(
  sentences: readonly Sentence[],
  tokens: readonly Token[],
  first: number,
  close: CloseReading | null,
): RunPlan {
  const steps = stepsOf(sentences, tokens);
  const possible = weighStarts(findAnnouncements(sentences, steps), sentences, close).filter((one) => one.from > first);
  const byStart = new Map(possible.map((one) => [one.from, one]));
  const start: Path = { course: beginCourse(first, null), score: 0, begun: null, isFirstRun: true, parent: null };
  const chain = chainOf(follows(steps, byStart, start, first, steps.length));
  const chosen = chain.flatMap((path) => (path.begun ? [path.begun] : []));
  const doubtful = new Set<number>();
  for (const one of possible) {
    const before = chain[one.from - first]!;
    const until = Math.min(steps.length, one.from + JUDGED_SENTENCES);
    const judge = (isBegun: boolean): number =>
      follows(steps, byStart, before, one.from, until, { one, isBegun }).score;
    const margin = judge(true) - judge(false);
    if ((chosen.includes(one) ? margin : -margin) < CLEAR_MARGIN) doubtful.add(one.from);
  }
  return { starts: new Map(chosen.map((one) => [one.from, one])), doubtful };
}

/** The path and its parents, the earliest first. */
function chainOf(last: Path): Path[] {
  const chain: Path[] = [];
  for (let path: Path | null = last; path; path = path.parent) chain.push(path);
  return chain.reverse();
}

/** The best path through the steps of a range; one announcement may be made to begin a run, or not to. */
function follows(
  steps: readonly Step[],
  byStart: ReadonlyMap<number, Announcement>,
  from: Path,
  first: number,
  until: number,
  made: { readonly one: Announcement; readonly isBegun: boolean } | null = null,
): Path {
  let paths: Path[] = [from];
  for (let index = first; index < until; index += 1) {
    const step = steps[index]!;
    const announcement = byStart.get(index);
    const decided = announcement !== undefined && made?.one === announcement ? made.isBegun : null;
    const next: Path[] = [];
    for (const path of paths) {
      if (announcement && (decided ?? path.course.hasMoved)) next.push(branch(path, announcement, step));
      if (decided !== true) next.push(goOn(path, step));
    }
    paths = next.sort((a, b) => b.score - a.score).slice(0, BEAM);
  }
  const isAll = until === steps.length;
  const total = (path: Path): number => path.score + (isAll && path.course.count === 0 && !path.isFirstRun ? EMPTY : 0);
  return paths.reduce((best, path) => (total(path) > total(best) ? path : best));
}

function goOn(path: Path, step: Step): Path {
  const { course, cost } = follow(path.course, step);
  return { course, score: path.score - cost, begun: null, isFirstRun: path.isFirstRun, parent: path };
}

function branch(path: Path, announcement: Announcement, step: Step): Path {
  const { course } = path;
  const isTurned = course.way === 'back' || course.isEnded;
  const begun = follow(beginCourse(announcement.from, course), { ...step, isEnd: false });
  return {
    course: begun.course,
    score:
      path.score +
      announcement.score +
      (isTurned ? TURNED : announcement.score < LITTLE ? ON_THE_WAY : 0) -
      begun.cost +
      (course.count === 0 ? EMPTY : 0),
    begun: announcement,
    isFirstRun: false,
    parent: path,
  };
}
