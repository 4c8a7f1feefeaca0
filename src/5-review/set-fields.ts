/** The fields a person may set, read and written by name, with what was there before kept on record. */
import type { Changes, PlainValue } from '../../shared/schemas/decision.ts';
import type { ReviewedObservation, ReviewedRun } from '../../shared/schemas/reviewed.ts';
import { attributeNames } from '../../shared/vocabulary/attributes.ts';

/** Every field of an observation that a person can set, in the order the page shows them. */
export const settableFields = ['kind', 'at', 'to', 'status', 'run', ...attributeNames.slice(1), 'clockTo'] as const;
export type SettableField = (typeof settableFields)[number];

/** `at` and `reason` of a run's end are set on their own, and so is the reading of the counter at the access. */
export const settableRunFields = ['access', 'direction', 'endAt', 'endReason', 'counterStart'] as const;
export type SettableRunField = (typeof settableRunFields)[number];

/** What a confirmation puts on record: every settable field as it stands. */
export function valuesOf(observation: ReviewedObservation): Record<string, PlainValue> {
  return Object.fromEntries(settableFields.map((field) => [field, readField(observation, field) ?? null]));
}

export function readField(observation: ReviewedObservation, field: string): PlainValue | undefined {
  if (!(settableFields as readonly string[]).includes(field)) return undefined;
  return observation[field as SettableField] ?? null;
}

export function readRunField(run: ReviewedRun, field: string): PlainValue | undefined {
  switch (field as SettableRunField) {
    case 'access':
      return run.access;
    case 'direction':
      return run.direction;
    case 'endAt':
      return run.end?.at ?? null;
    case 'endReason':
      return run.end?.reason ?? null;
    case 'counterStart':
      return run.counterStart;
    default:
      return undefined;
  }
}

/** True when every change starts from what is there, or is there already. */
export function changesFit(changes: Changes, read: (field: string) => PlainValue | undefined): boolean {
  return Object.entries(changes).every(([field, { was, now }]) => {
    const value = read(field);
    return value !== undefined && (value === was || value === now);
  });
}

type WithChanged = { changed: ReviewedObservation['changed'] };

/** Notes the first value a field had; a field set back to it is no longer noted. */
export function noteChange(
  item: WithChanged,
  field: string,
  { was, now }: { was: PlainValue; now: PlainValue },
  by: { person: string; time: string },
): void {
  const first = item.changed[field]?.was ?? was;
  const { [field]: _, ...others } = item.changed;
  item.changed = field in item.changed && first === now ? others : { ...item.changed, [field]: { was: first, ...by } };
}

/** Sets fields of an observation; a distance set by hand loses what was said about how it was worked out. */
export function setFields(item: ReviewedObservation, changes: Changes, by: { person: string; time: string }): void {
  for (const [field, change] of Object.entries(changes)) {
    const was = readField(item, field);
    if (was === undefined || was === change.now) continue;
    noteChange(item, field, { was, now: change.now }, by);
    Object.assign(item, { [field]: change.now });
    if (field === 'at') {
      item.atBasis = null;
      delete item.atPlusMinus;
    }
  }
}

export function setRunField(run: ReviewedRun, field: string, now: PlainValue): void {
  switch (field as SettableRunField) {
    case 'access':
    case 'direction':
    case 'counterStart':
      Object.assign(run, { [field]: now });
      break;
    case 'endAt':
      run.end = { reason: 'other', ...run.end, at: now as number | null };
      break;
    case 'endReason':
      run.end =
        now === null ? null : { at: null, ...run.end, reason: now as NonNullable<ReviewedRun['end']>['reason'] };
      break;
  }
}
