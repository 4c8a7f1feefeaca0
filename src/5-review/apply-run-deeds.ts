/** Decisions about runs: where the counter starts anew, runs that are one, and distances that follow. */
import type { Changes } from '../../shared/schemas/decision.ts';
import type { ReviewedRun } from '../../shared/schemas/reviewed.ts';
import { findOther } from './find-subject.ts';
import type { Held, ReviewState } from './review-state.ts';
import { changesFit, noteChange, readRunField, setRunField } from './set-fields.ts';
import type { Deed } from './standing-decisions.ts';

type StartRun = Extract<Deed, { action: 'start-run' }>;
type JoinRun = Extract<Deed, { action: 'join-run' }>;

/** Splits a run where the counter runs anew. Later runs move up by one. */
export function startRun(state: ReviewState, deed: StartRun): string | null {
  const held = state.runs.find(({ item, isGone }) => item.n === deed.run && !isGone);
  if (!held) return `There is no run ${deed.run} in which the counter could start anew.`;
  const n = deed.run + 1;
  const by = { person: deed.person, time: deed.time };
  renumber(state, (old) => (old > deed.run ? old + 1 : old));
  const run = held.item;
  const track = run.track ?? [];
  const subject = { what: 'added', id: deed.id } as const;
  const added: ReviewedRun = {
    subject,
    n,
    access: run.access,
    direction: run.direction,
    heard: null,
    end: run.end && { ...run.end, at: less(run.end.at, deed.lessFeet) },
    review: [],
    track: track
      .filter((point) => point.seconds >= deed.atSeconds)
      .map((point) => ({ ...point, feet: point.feet - deed.lessFeet })),
    reviewState: 'confirmed',
    decidedBy: { ...by, decision: deed.id },
    changed: {},
    openFlags: [],
    reopened: [],
    isDrawn: false,
    source: 'added',
    counterStart: 0,
  };
  run.track = track.filter((point) => point.seconds < deed.atSeconds);
  run.end = null;
  for (const { item } of state.observations) {
    if (item.run !== deed.run || item.heard.start < deed.atSeconds) continue;
    item.run = n;
    noteChange(item, 'run', { was: deed.run, now: n }, by);
    shift(item, -deed.lessFeet);
  }
  for (const { item } of state.absent) if (item.run === deed.run && item.heard.start >= deed.atSeconds) item.run = n;
  const place = state.runs.indexOf(held) + 1;
  state.runs.splice(place, 0, { item: added, subject, key: `added|${deed.id}`, wasWrong: false, isGone: false });
  return null;
}

/** Makes a run part of the one before it. Later runs move down by one. */
export function joinRun(state: ReviewState, deed: JoinRun): string | null {
  const held = findOther(state.runs, deed.subject, new Set())?.held;
  if (!held) return 'The run it was about is not in this draft.';
  const run = held.item;
  const before = state.runs.find(({ item, isGone }) => item.n === run.n - 1 && !isGone)?.item;
  if (!before) return 'There is no run before it to go on from.';
  for (const { item } of state.observations) if (item.run === run.n) shift(item, deed.addFeet);
  before.end = run.end && { ...run.end, at: less(run.end.at, -deed.addFeet) };
  before.track = [
    ...(before.track ?? []),
    ...(run.track ?? []).map((point) => ({ ...point, feet: point.feet + deed.addFeet })),
  ];
  held.isGone = true;
  const joined = run.n;
  renumber(state, (old) => (old >= joined ? old - 1 : old));
  return null;
}

/** Sets fields of a run. A new counter start moves every distance of the run. */
export function changeRun(
  state: ReviewState,
  held: Held<ReviewedRun>,
  changes: Changes,
  by: { person: string; time: string },
): string | null {
  const run = held.item;
  if (!changesFit(changes, (field) => readRunField(run, field))) {
    return 'The run reads otherwise now than when this was decided.';
  }
  for (const [field, { now }] of Object.entries(changes)) {
    const was = readRunField(run, field)!;
    if (was === now) continue;
    noteChange(run, field, { was, now }, by);
    if (field === 'counterStart') {
      const move = Number(was) - Number(now);
      for (const { item } of state.observations) {
        if (item.run !== run.n) continue;
        shift(item, move);
        // What is at the access stays at the access.
        if (item.at !== null) item.at = Math.max(0, item.at);
      }
      run.track = run.track?.map((point) => ({ ...point, feet: point.feet + move }));
      if (run.end) run.end = { ...run.end, at: less(run.end.at, -move) };
    }
    setRunField(run, field, now);
  }
  return null;
}

function shift(item: { at: number | null; to: number | null }, feet: number): void {
  item.at = less(item.at, -feet);
  item.to = less(item.to, -feet);
}

/** Sums of feet keep their hundredths and nothing below. */
function less(distance: number | null, feet: number): number | null {
  return distance === null ? null : Math.round((distance - feet) * 100) / 100;
}

function renumber(state: ReviewState, to: (old: number) => number): void {
  for (const { item } of state.runs) item.n = to(item.n);
  for (const { item } of state.observations) item.run = to(item.run);
  for (const { item } of state.absent) item.run = to(item.run);
}
