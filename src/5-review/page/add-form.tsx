import { useMemo } from 'preact/hooks';
import type { EnteredObservation } from '../../../shared/schemas/decision.ts';
import type { Heard } from '../../../shared/schemas/draft.ts';
import { guessFinding } from '../guess-finding.ts';
import { addAtSeconds, goToNextOpen, openForm, runAt } from './actions.ts';
import { enteredFields } from './entered-fields.ts';
import { FindingForm } from './finding-form.tsx';
import { HeardWords } from './heard-words.tsx';
import { decide, selected, words } from './inspection-state.ts';
import { closeForm } from './keys.ts';
import { playStretch } from './player.ts';
import { useFieldForm } from './use-field-form.ts';
import { kindTitle } from './words-shown.ts';

/** How much talk around a moment an added observation refers to. */
const secondsBefore = 4;
const secondsAfter = 2;

/** A new observation: from the talk at hand, or from the moment that was playing. */
export function AddForm() {
  const item = selected.value;
  const talk = item && item.what !== 'observation' && item.what !== 'run' && item.what !== 'site' ? item : null;
  const heard = useMemo<Heard>(() => talk?.heard ?? talkAround(addAtSeconds.value), [talk]);
  const guess = useMemo(() => guessFinding(heard.text), [heard]);
  const fields = useFieldForm(
    enteredFields({
      kind: talk?.what === 'absent' ? talk.item.kind : (guess.kind ?? ''),
      run: talk?.what === 'absent' ? talk.item.run : runAt(heard.start),
      at: guess.at,
    }),
    'kind',
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
    if (talk) goToNextOpen();
    else closeForm();
  };
  return (
    <section id="item" class="item" tabIndex={-1} aria-labelledby="item-name">
      <p class="place">{talk ? 'From this talk' : 'From this moment'}</p>
      <h2 id="item-name" class="what">
        <span class="kind">Add a finding</span>
      </h2>
      <HeardWords heard={heard} respelled={[]} />
      <button type="button" class="quiet" onClick={() => playStretch(heard.start, heard.end)}>
        Play it
      </button>
      <FindingForm fields={fields} label="The new finding" save={save} saveLabel="Add it" leaveLabel="Do not add" />
    </section>
  );
}

function talkAround(seconds: number): Heard {
  const start = Math.max(0, seconds - secondsBefore);
  const end = seconds + secondsAfter;
  const said = (words.value?.words ?? []).filter((word) => word.endSeconds > start && word.startSeconds < end);
  return {
    start: said[0]?.startSeconds ?? start,
    end: said.at(-1)?.endSeconds ?? end,
    text: said.map((word) => word.text).join(' '),
  };
}
