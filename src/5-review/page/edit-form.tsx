import type { ReviewedObservation } from '../../../shared/schemas/reviewed.ts';
import { valuesOf } from '../set-fields.ts';
import { confirmItem, openForm } from './actions.ts';
import { FindingForm } from './finding-form.tsx';
import { changesBetween, useFieldForm } from './use-field-form.ts';

/** Every field of the observation. Saving confirms it and goes on. */
export function EditForm({ item }: { item: ReviewedObservation }) {
  const before = valuesOf(item);
  const fields = useFieldForm(before, 'at');
  const save = () => {
    const after = fields.read();
    if (!after) return;
    openForm.value = null;
    confirmItem(changesBetween(before, after));
  };
  return <FindingForm fields={fields} label="Edit its fields" save={save} saveLabel="Save and go on" />;
}
