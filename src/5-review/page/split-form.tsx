import { useState } from 'preact/hooks';
import type { EnteredObservation } from '../../../shared/schemas/decision.ts';
import type { ReviewedObservation } from '../../../shared/schemas/reviewed.ts';
import { valuesOf } from '../set-fields.ts';
import { goToNextOpen, openForm } from './actions.ts';
import { FindingForm } from './finding-form.tsx';
import { decide } from './inspection-state.ts';
import { useFieldForm } from './use-field-form.ts';
import { kindTitle } from './words-shown.ts';

/** Two things were taken for one: the first stays as it is shown, the second is entered here. */
export function SplitForm({ item }: { item: ReviewedObservation }) {
  const fields = useFieldForm(valuesOf(item), 'at');
  const [isSaving, setSaving] = useState(false);
  const save = () => {
    const values = fields.read();
    if (!values || isSaving) return;
    setSaving(true);
    openForm.value = null;
    const observation = { ...values, atBasis: null, heard: item.heard } as unknown as EnteredObservation;
    void decide(
      { action: 'split', subject: item.subject, changes: {}, observation },
      `Split: ${kindTitle(observation.kind)} is one of its own.`,
    );
    goToNextOpen();
  };
  return (
    <FindingForm
      fields={fields}
      label="The second thing"
      save={save}
      saveLabel="Split and go on"
      leaveLabel="Leave as it was"
    >
      <p class="wide">There are two things here. The one above stays; what is the second?</p>
    </FindingForm>
  );
}
