import { useState } from 'preact/hooks';
import type { EnteredObservation } from '../../../shared/schemas/decision.ts';
import type { ReviewedObservation } from '../../../shared/schemas/reviewed.ts';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { findingsIn } from '../offer-choices.ts';
import { valuesOf } from '../set-fields.ts';
import { goToNextOpen, openForm } from './actions.ts';
import { enteredFields } from './entered-fields.ts';
import { FindingForm } from './finding-form.tsx';
import { decide, hints, reviewed } from './inspection-state.ts';
import { useFieldForm } from './use-field-form.ts';

/** Two things were taken for one: the first stays as it is shown, the second is entered here. */
export function SplitForm({ item }: { item: ReviewedObservation }) {
  // The other thing its words name, if any is understood: with its own values, and its own part of the words.
  const [other] = useState(() => findingsIn(item.heard, reviewed.value, hints.value)[0]?.finding ?? null);
  const fields = useFieldForm(
    other
      ? enteredFields({
          ...other.values,
          kind: other.kind ?? item.kind,
          status: other.status,
          at: other.at,
          run: item.run,
        })
      : valuesOf(item),
    other && other.kind === null ? 'kind' : 'at',
  );
  const [isSaving, setSaving] = useState(false);
  const save = () => {
    const values = fields.read();
    if (!values || isSaving) return;
    setSaving(true);
    openForm.value = null;
    const observation = {
      ...values,
      atBasis: null,
      heard: other?.heard ?? item.heard,
    } as unknown as EnteredObservation;
    void decide(
      { action: 'split', subject: item.subject, changes: {}, observation },
      `Split: ${kindTitle(observation.kind)} is one of its own.`,
    );
    goToNextOpen();
  };
  return (
    <FindingForm fields={fields} label="The second thing" save={save} saveLabel="Split and go on">
      <p class="wide">There are two things here. The one above stays; what is the second?</p>
    </FindingForm>
  );
}
