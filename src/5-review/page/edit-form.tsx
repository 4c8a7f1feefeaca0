import type { ReviewedObservation } from '../../../shared/schemas/reviewed.ts';
import { valuesOf } from '../set-fields.ts';
import { confirmItem, openForm } from './actions.ts';
import { AttributeInput, fieldsFor, KindInput, RunInput } from './field-inputs.tsx';
import { closeForm } from './keys.ts';
import { changesBetween, useFieldForm } from './use-field-form.ts';

/** Every field of the observation. Saving confirms it and goes on. */
export function EditForm({ item }: { item: ReviewedObservation }) {
  const before = valuesOf(item);
  const doubted = item.openFlags.find((flag) => flag.about)?.about ?? 'at';
  const { texts, form, set, read } = useFieldForm(before, doubted);
  const save = () => {
    const after = read();
    if (!after) return;
    openForm.value = null;
    confirmItem(changesBetween(before, after));
  };
  return (
    <form
      ref={form}
      class="fields"
      aria-label="Edit its fields"
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
      onKeyDown={(event) => {
        // On a list Enter would open it; here it saves, as in every other field.
        if (event.key === 'Enter' && event.target instanceof HTMLSelectElement) {
          event.preventDefault();
          save();
        }
      }}
    >
      <KindInput value={texts.kind ?? ''} onChange={set('kind')} />
      {fieldsFor(texts.kind ?? '', texts).map((field) => (
        <AttributeInput key={field} field={field} value={texts[field] ?? ''} onChange={set(field)} />
      ))}
      <RunInput value={texts.run ?? ''} onChange={set('run')} />
      <div class="deeds">
        <button type="submit" class="main">
          Save and go on <kbd>Enter</kbd>
        </button>
        <button type="button" onClick={closeForm}>
          Leave as it was <kbd>Esc</kbd>
        </button>
      </div>
    </form>
  );
}
