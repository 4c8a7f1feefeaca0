/**
 * Decides over the whole talk where runs begin: what is announced and what the counter does are weighed together, and the best
 * arrangement of all is chosen. A start that hardly won, or hardly lost, leaves its run doubtful.
 */
import type { Token } from '../3-phrases/token/token.ts';
import { type Announcement, findAnnouncements } from './announcements.ts';
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

export interface RunPlan {
  /** Announcements that begin a run after the first, by their first sentence. */
  readonly starts: ReadonlyMap<number, Announcement>;
  /** The first sentences of stretches whose run is in doubt. */
  readonly doubtful: ReadonlySet<number>;
}

interface Path {
  readonly course: Course;
  readonly score: number;
  readonly starts: readonly Announcement[];
}

/** Plans the runs that follow the first one, which begins with sentence `first`. */
export function planRuns(sentences: readonly Sentence[], tokens: readonly Token[], first: number): RunPlan {
  const steps = stepsOf(sentences, tokens);
  const possible = findAnnouncements(sentences, steps).filter((one) => one.from > first);
  const best = follows(steps, possible, first, new Set());
  const doubtful = new Set<number>();
  for (const one of possible) {
    const isChosen = best.starts.includes(one);
    const others = isChosen
      ? follows(steps, possible, first, new Set([one]))
      : follows(steps, possible, first, new Set(), one);
    if (best.score - others.score < CLEAR_MARGIN) doubtful.add(one.from);
  }
  return { starts: new Map(best.starts.map((one) => [one.from, one])), doubtful };
}

/** The best path through all steps; `forbidden` announcements begin nothing, a `forced` one begins a run. */
function follows(
  steps: readonly Step[],
  possible: readonly Announcement[],
  first: number,
  forbidden: ReadonlySet<Announcement>,
  forced: Announcement | null = null,
): Path {
  const byStart = new Map(possible.filter((one) => !forbidden.has(one)).map((one) => [one.from, one]));
  let paths: Path[] = [{ course: beginCourse(first, null), score: 0, starts: [] }];
  for (let index = first; index < steps.length; index += 1) {
    const step = steps[index]!;
    const announcement = byStart.get(index);
    const next: Path[] = [];
    for (const path of paths) {
      if (announcement && (path.course.hasMoved || announcement === forced))
        next.push(branch(path, announcement, step));
      if (announcement === undefined || announcement !== forced) next.push(goOn(path, step));
    }
    paths = next.sort((a, b) => b.score - a.score).slice(0, BEAM);
  }
  const ended = paths.map((path) => ({
    ...path,
    score: path.score + (path.course.count === 0 && path.starts.length > 0 ? EMPTY : 0),
  }));
  return ended.sort((a, b) => b.score - a.score)[0]!;
}

function goOn(path: Path, step: Step): Path {
  const { course, cost } = follow(path.course, step);
  return { ...path, course, score: path.score - cost };
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
    starts: [...path.starts, announcement],
  };
}
