import { useState } from 'preact/hooks';
import type { EnteredObservation } from '../../../shared/schemas/decision.ts';
import type { ReviewedObservation } from '../../../shared/schemas/reviewed.ts';
import { valuesOf } from '../set-fields.ts';
import { goToNextOpen, openForm } from './actions.ts';
import { AttributeInput, fieldsFor, KindInput, RunInput } from './field-inputs.tsx';
import { decide } from './inspection-state.ts';
import { closeForm } from './keys.ts';
import { useFieldForm } from './use-field-form.ts';
import { kindTitle } from './words-shown.ts';

/** Two things were taken for one: the first stays as it is shown, the second is entered here. */
export function SplitForm({ item }: { item: ReviewedObservation }) {
  const { texts, form, set, read } = useFieldForm(valuesOf(item), 'at');
  const [isSaving, setSaving] = useState(false);
  const save = () => {
    const values = read();
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
    <form
      ref={form}
      class="fields"
      aria-label="The second thing"
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && event.target instanceof HTMLSelectElement) {
          event.preventDefault();
          save();
        }
      }}
    >
      <p class="wide">There are two things here. The one above stays; what is the second?</p>
      <KindInput value={texts.kind ?? ''} onChange={set('kind')} />
      {fieldsFor(texts.kind ?? '', texts).map((field) => (
        <AttributeInput key={field} field={field} value={texts[field] ?? ''} onChange={set(field)} />
      ))}
      <RunInput value={texts.run ?? ''} onChange={set('run')} />
      <div class="deeds">
        <button type="submit" class="main">
          Split and go on <kbd>Enter</kbd>
        </button>
        <button type="button" onClick={closeForm}>
          Leave as it was <kbd>Esc</kbd>
        </button>
      </div>
    </form>
  );
}
