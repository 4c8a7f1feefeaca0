import type { PlainValue } from '../../../shared/schemas/decision.ts';
import { settableFields } from '../set-fields.ts';

/** The fields of a new observation: nothing said yet but what is given. */
export function enteredFields(given: Readonly<Record<string, PlainValue>>): Record<string, PlainValue> {
  return { ...Object.fromEntries(settableFields.map((field) => [field, null])), status: 'present', ...given };
}
