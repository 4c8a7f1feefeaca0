import { useState } from 'preact/hooks';
import type { EnteredObservation } from '../../../shared/schemas/decision.ts';
import { kindTitle } from '../../../shared/vocabulary/kind-titles.ts';
import { runAt } from '../run-at.ts';
import { goToNextOpen, openForm } from './actions.ts';
import { enteredFields } from './entered-fields.ts';
import { FindingForm } from './finding-form.tsx';
import { HeardWords } from './heard-words.tsx';
import { decide, reviewed, selected } from './inspection-state.ts';
import { closeForm } from './keys.ts';
import { playStretch } from './player.ts';
import { adding } from './start-form.ts';
import { useFieldForm } from './use-field-form.ts';

/** A new observation: filled as far as its words are understood, for the person to look at and correct. */
export function AddForm() {
  const [{ heard, hint, talk }] = useState(adding.value);
  const absent = talk?.what === 'absent' ? talk.item : null;
  const kind = absent?.kind ?? hint?.kind ?? '';
  const fields = useFieldForm(
    enteredFields({
      ...hint?.values,
      kind,
      status: hint?.status ?? 'present',
      at: hint?.at ?? null,
      run: absent?.run ?? runAt(reviewed.value, heard.start),
    }),
    kind === '' ? 'kind' : 'at',
  );
  const save = () => {
    const values = fields.read();
    if (!values) return;
    openForm.value = null;
    const observation = { ...values, atBasis: null, heard } as unknown as EnteredObservation;
    void decide(
      { action: 'add', from: talk?.item.subject ?? null, observation },
      `Added: ${kindTitle(observation.kind)}.`,
    );
    if (talk && selected.value) goToNextOpen();
    else closeForm();
  };
  return (
    <section id="item" class="item" tabIndex={-1} aria-labelledby="item-name">
      <p class="place">{talk ? 'From this talk' : 'From these words'}</p>
      <h2 id="item-name" class="what">
        <span class="kind">Add a finding</span>
      </h2>
      <HeardWords heard={heard} respelled={[]} />
      <button type="button" class="quiet" onClick={() => playStretch(heard.start, heard.end)}>
        Play it
      </button>
      <FindingForm fields={fields} label="The new finding" save={save} saveLabel="Add it" leaveLabel="Do not add">
        {hint && hint.at !== null && !hint.isPlaced && (
          <p class="wide why">The distance was said before these words: look whether it is meant here.</p>
        )}
      </FindingForm>
    </section>
  );
}
