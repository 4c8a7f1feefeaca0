import type { ComponentChildren } from 'preact';
import { AttributeInput, KindInput, RunInput } from './field-inputs.tsx';
import { fieldTitles, goToLetter } from './field-letters.ts';
import { FormDeeds } from './form-deeds.tsx';
import type { useFieldForm } from './use-field-form.ts';

/** Every field of one finding, whether it is changed, added or split off. Enter saves, also on a list, which it would else open. */
export function FindingForm(props: {
  fields: ReturnType<typeof useFieldForm>;
  label: string;
  save: () => void;
  saveLabel: string;
  leaveLabel?: string;
  children?: ComponentChildren;
}) {
  const { texts, form, set, shown, leftOut } = props.fields;
  return (
    <form
      ref={form}
      class="fields"
      aria-label={props.label}
      onSubmit={(event) => {
        event.preventDefault();
        props.save();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && event.target instanceof HTMLSelectElement) {
          event.preventDefault();
          props.save();
        } else goToLetter(event, form.current);
      }}
    >
      {props.children}
      <KindInput value={texts.kind ?? ''} onChange={set('kind')} />
      {shown.map((field) => (
        <AttributeInput key={field} field={field} value={texts[field] ?? ''} onChange={set(field)} />
      ))}
      <RunInput value={texts.run ?? ''} onChange={set('run')} />
      {leftOut.length > 0 && (
        <p class="wide hint" role="status">
          Left out, because this kind has none:{' '}
          {leftOut.map((field) => `${fieldTitles[field]} ${texts[field]}`).join(', ')}.
        </p>
      )}
      <p class="wide hint">A letter goes to the field it is underlined in; from a list, with Alt.</p>
      <FormDeeds save={props.saveLabel} leave={props.leaveLabel} />
    </form>
  );
}
