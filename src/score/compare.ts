/**
 * One draft against its gold. Nothing is tuned here, and a draft that is missing counts as all missed.
 *
 * An observation is right when run, kind and distance (within 0.25 ft) are right; its attributes are then compared
 * one by one. "Silent" means that the draft raised no flag on it: a silent wrong item or a silent miss is what an
 * inspector would sign without having been warned.
 */
import type { Draft, Observation } from '../../shared/schemas/draft.ts';
import { type ComparedField, comparedFields, hourOfPosition } from '../../shared/vocabulary/attributes.ts';
import type { Gold, GoldObservation } from './gold.ts';

const within = { feet: 0.25, percent: 5, inches: 0.26, seconds: 1 } as const;

type Value = string | number | null;
type Either = GoldObservation | Observation;

export interface Counts {
  gold: number;
  pred: number;
  hit: number;
  kindHit: number;
  attr: number;
  attrOk: number;
  flagged: number;
  silentWrong: number;
  unflagged: number;
  silentMiss: number;
  unplaced: number;
  absGold: number;
  absPred: number;
  absHit: number;
  runs: number;
  runsOk: number;
  ends: number;
  endsOk: number;
}

/** What the draft claimed of one observation, and whether all of it is right. */
export interface Claim {
  /** The observation's. */
  readonly id: string;
  readonly confidence: number;
  readonly isRight: boolean;
  readonly isFlagged: boolean;
}

export interface Comparison {
  readonly counts: Counts;
  readonly claims: Claim[];
  /** A line for each miss, each extra and each wrong attribute. */
  readonly notes: string[];
}

export function compareWithGold(gold: Gold, draft: Draft | null): Comparison {
  const golds = gold.observations;
  const claimed = withoutRepeatedPipes(draft?.observations ?? []);
  const right = pairRight(golds, claimed);
  const named = pairUp(golds, claimed, isSameThing);
  const notes: string[] = [];
  const wrong = new Set(right.unusedClaims);
  let attr = 0;
  let attrOk = 0;
  for (const [i, j] of right.pairs) {
    const g = golds[i]!;
    for (const field of comparedFields) {
      const wanted = fieldOf(g, field);
      const got = fieldOf(claimed[j]!, field);
      if (wanted === null && got === null) continue;
      attr++;
      if (isSameValue(field, wanted, got)) attrOk++;
      else {
        wrong.add(j);
        const flagged = isFlagged(claimed[j]!) ? '(flagged) ' : '';
        notes.push(`attribute ${flagged}${field}: ${got} for ${wanted} (${g.kind} at ${g.at ?? '?'})`);
      }
    }
  }
  const warned = [...(draft?.unplaced ?? []), ...claimed.filter(isFlagged)];
  let silentMiss = 0;
  for (const i of right.leftGold) {
    const g = golds[i]!;
    const isSaid = warned.some((item) => overlaps(g.heard, item.heard));
    if (!isSaid) silentMiss++;
    notes.push(`missed ${isSaid ? '(flagged) ' : ''}${g.kind} at ${g.at ?? '?'} run ${g.run}`);
  }
  for (const j of right.unusedClaims) {
    const p = claimed[j]!;
    notes.push(`extra ${isFlagged(p) ? '(flagged) ' : ''}${p.kind} at ${p.at ?? '?'} run ${p.run}: "${p.heard.text}"`);
  }
  const claims = claimed.map((p, j) => ({
    id: p.id,
    confidence: p.confidence,
    isRight: !wrong.has(j),
    isFlagged: isFlagged(p),
  }));
  const unflagged = claims.filter((claim) => !claim.isFlagged);
  const counts: Counts = {
    gold: golds.length,
    pred: claimed.length,
    hit: right.pairs.length,
    kindHit: named.pairs.length,
    attr,
    attrOk,
    flagged: claims.length - unflagged.length,
    silentWrong: unflagged.filter((claim) => !claim.isRight).length,
    unflagged: unflagged.length,
    silentMiss,
    unplaced: draft?.unplaced.length ?? 0,
    ...countAbsent(gold, draft),
    ...countRuns(gold, draft),
  };
  return { counts, claims, notes };
}

/** A pipe named right where the material changes to it says nothing that the change does not say. */
function withoutRepeatedPipes(observations: Observation[]): Observation[] {
  const changes = observations.filter((o) => o.kind === 'material-change');
  const isRepeated = (o: Observation) =>
    o.kind === 'pipe' &&
    changes.some((c) => c.run === o.run && c.toMaterial === o.material && c.at !== null && c.at === o.at);
  return observations.filter((o) => !isRepeated(o));
}

/** Pairs each gold with a claim of its kind, run and distance. Answers in indexes. */
export const pairRight = (golds: GoldObservation[], claimed: Observation[]) =>
  pairUp(golds, claimed, (g, p) => isSameThing(g, p) && isDistanceRight(g, p));

/** Whether a field of a claim is as it should be. */
export const isFieldRight = (field: ComparedField, g: GoldObservation, p: Observation): boolean =>
  isSameValue(field, fieldOf(g, field), fieldOf(p, field));

/** Pairs each gold with at most one claim, the most alike first. Answers in indexes. */
function pairUp(
  golds: GoldObservation[],
  claimed: Observation[],
  fits: (g: GoldObservation, p: Observation) => boolean,
) {
  const candidates: { alike: number; i: number; j: number }[] = [];
  for (const [i, g] of golds.entries()) {
    for (const [j, p] of claimed.entries()) {
      if (!fits(g, p)) continue;
      const agreeing = comparedFields.filter((field) =>
        isSameValue(field, fieldOf(g, field), fieldOf(p, field)),
      ).length;
      candidates.push({ alike: agreeing + (overlaps(g.heard, p.heard) ? 0.5 : 0), i, j });
    }
  }
  candidates.sort((a, b) => b.alike - a.alike);
  const left = new Set(golds.keys());
  const used = new Set<number>();
  const pairs: [number, number][] = [];
  for (const { i, j } of candidates) {
    if (!left.has(i) || used.has(j)) continue;
    left.delete(i);
    used.add(j);
    pairs.push([i, j]);
  }
  return { pairs, leftGold: [...left], unusedClaims: [...claimed.keys()].filter((j) => !used.has(j)) };
}

function isSameThing(g: GoldObservation, p: Observation): boolean {
  return g.kind === p.kind && g.run === p.run;
}

/** Gold without a distance accepts a missing one, or any that is up for review. */
function isDistanceRight(g: GoldObservation, p: Observation): boolean {
  if (g.at == null) return p.at === null || isFlagged(p);
  if (p.at === null) return g.kind === 'pipe' && g.at === 0;
  return isNear(g.at, p.at, within.feet);
}

function fieldOf(item: Either, field: ComparedField): Value {
  if (field === 'status') return item.status ?? 'present';
  if (field !== 'place') return item[field] ?? null;
  if (item.clock != null) return Number(item.clock);
  return item.position ? (hourOfPosition[item.position] ?? item.position) : null;
}

function isSameValue(field: ComparedField, a: Value, b: Value): boolean {
  if (a === null || b === null) return a === b;
  if (field === 'to') return isNear(a, b, within.feet);
  if (field === 'percent') return isNear(a, b, within.percent);
  if (field === 'inches' || field === 'diameterIn') return isNear(a, b, within.inches);
  if (field === 'place') return a === b || (b === 'side' && isLevel(a)) || (a === 'side' && isLevel(b));
  return String(a) === String(b);
}

function isLevel(hour: Value): boolean {
  return hour === 3 || hour === 9;
}

function isNear(a: Value | undefined, b: Value | undefined, tolerance: number): boolean {
  return a != null && b != null && Math.abs(Number(a) - Number(b)) <= tolerance + 1e-9;
}

function isFlagged(item: Observation): boolean {
  return item.review.length > 0;
}

function overlaps([start, end]: readonly [number, number], heard: { start: number; end: number }): boolean {
  return start - within.seconds < heard.end && heard.start - within.seconds < end;
}

function countAbsent(gold: Gold, draft: Draft | null) {
  const key = (item: { run: number; kind: string }) => `${item.run}:${item.kind}`;
  const wanted = new Set(gold.absent.map(key));
  const got = new Set((draft?.absent ?? []).map(key));
  return { absGold: wanted.size, absPred: got.size, absHit: [...got].filter((item) => wanted.has(item)).length };
}

/** Runs are right when there are as many and each has its direction; an end when its distance is. */
function countRuns(gold: Gold, draft: Draft | null) {
  const got = draft?.runs ?? [];
  const ended = gold.runs
    .map((run, i) => ({ wanted: run.end?.at, got: got[i]?.end?.at }))
    .filter((e) => e.wanted != null);
  return {
    runs: gold.runs.length,
    runsOk: gold.runs.filter((run, i) => got.length === gold.runs.length && got[i]?.direction === run.direction).length,
    ends: ended.length,
    endsOk: ended.filter((e) => isNear(e.wanted, e.got, within.feet)).length,
  };
}
