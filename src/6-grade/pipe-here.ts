/** What the pipe is at a place, from the confirmed observations that say so, and its true inside diameter. */
import type { PipeHere, Stretch } from '../../shared/schemas/grade.ts';
import { bores, nominalBoreSource } from '../../shared/vocabulary/grading/bores.ts';
import { plays } from '../../shared/vocabulary/grading/roles.ts';
import type { MaterialName } from '../../shared/vocabulary/materials.ts';
import type { GradableObservation } from './grade-input.ts';

export interface PipeChange {
  readonly counterFeet: number;
  readonly material: MaterialName | null;
  readonly nominalIn: number | null;
}

/** The true inside diameter in inches with where it comes from; `null` where no size was said. */
export function trueBore(
  material: MaterialName | null,
  nominalIn: number | null,
): { insideIn: number; source: string } | null {
  if (nominalIn === null) return null;
  const row = bores.find((bore) => bore.material === material && bore.nominalIn === nominalIn);
  return row ? { insideIn: row.insideIn, source: row.source } : { insideIn: nominalIn, source: nominalBoreSource };
}

/**
 * Where the material or the size changes along a run, in order of distance. Only what was confirmed or not flagged and
 * is placed counts. A reducer changes the size; a liner changes the face of the pipe, whose size is then unknown.
 */
export function pipeChanges(observations: readonly GradableObservation[]): PipeChange[] {
  const changes: PipeChange[] = [];
  const placed = observations
    .filter((o) => o.at !== null && o.status === 'present' && o.reviewState !== 'open')
    .sort((a, b) => a.at! - b.at!);
  for (const o of placed) {
    const last = changes.at(-1);
    if (plays('namesPipe', o.kind) && (o.material !== null || o.diameterIn !== null)) {
      const isSame = o.material === null || o.material === last?.material;
      changes.push({
        counterFeet: o.at!,
        material: o.material ?? last?.material ?? null,
        nominalIn: o.diameterIn ?? (isSame ? (last?.nominalIn ?? null) : sizeHere(changes, o.at!)),
      });
    } else if (plays('changesPipe', o.kind)) {
      if (!last && o.fromMaterial !== null) changes.push({ counterFeet: 0, material: o.fromMaterial, nominalIn: null });
      if (o.toMaterial !== null) changes.push({ counterFeet: o.at!, material: o.toMaterial, nominalIn: o.diameterIn });
    } else if (plays('changesSize', o.kind)) {
      changes.push({ counterFeet: o.at!, material: last?.material ?? null, nominalIn: o.diameterIn });
    } else if (plays('startsLiner', o.kind)) {
      changes.push({ counterFeet: o.at!, material: 'liner', nominalIn: null });
    } else if (plays('endsLiner', o.kind) && last?.material === 'liner') {
      changes.push({ counterFeet: o.at!, material: null, nominalIn: null });
    }
  }
  return changes;
}

/** A size said at the very same place still holds when only the material is named again. */
function sizeHere(changes: readonly PipeChange[], counterFeet: number): number | null {
  const last = changes.at(-1);
  return last && last.counterFeet === counterFeet ? last.nominalIn : null;
}

/** The pipe at a counter reading; everything `null` before the first place where it was named. */
export function pipeAt(changes: readonly PipeChange[], counterFeet: number | null): PipeHere {
  const change = counterFeet === null ? undefined : changes.findLast((c) => c.counterFeet <= counterFeet);
  const bore = change ? trueBore(change.material, change.nominalIn) : null;
  return {
    material: change?.material ?? null,
    nominalIn: change?.nominalIn ?? null,
    insideIn: bore?.insideIn ?? null,
    insideSource: bore?.source ?? null,
  };
}

/** The stretches of one material and size from the entry to where the camera came, in feet from the entry. */
export function pipeStretches(changes: readonly PipeChange[], entryFeet: number, reachedFeet: number): Stretch[] {
  const starts = [{ counterFeet: entryFeet, material: null, nominalIn: null }, ...changes];
  const stretches: Stretch[] = [];
  starts.forEach((change, index) => {
    const fromFeet = Math.max(0, change.counterFeet - entryFeet);
    const toFeet = Math.min(reachedFeet, (starts[index + 1]?.counterFeet ?? Infinity) - entryFeet);
    if (toFeet <= fromFeet) return;
    const last = stretches.at(-1);
    if (last && last.material === change.material && last.nominalIn === change.nominalIn) last.toFeet = toFeet;
    else stretches.push({ fromFeet, toFeet, material: change.material, nominalIn: change.nominalIn });
  });
  return stretches;
}
