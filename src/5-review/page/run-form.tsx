import type { Changes, PlainValue } from '../../../shared/schemas/decision.ts';
import type { ReviewedRun } from '../../../shared/schemas/reviewed.ts';
import { directions, endReasons } from '../../../shared/vocabulary/attributes.ts';
import { readRunField, settableRunFields } from '../set-fields.ts';
import { confirmItem, openForm } from './actions.ts';
import { asText } from './field-inputs.tsx';
import { FormDeeds } from './form-deeds.tsx';
import { decide, reviewed, unit } from './inspection-state.ts';
import { problem } from './notices.ts';
import { changesBetween, useFieldForm } from './use-field-form.ts';

/** A run: how it was entered, which way, where it ends, and what the counter read at the access. */
export function RunForm({ run }: { run: ReviewedRun }) {
  const before = Object.fromEntries(settableRunFields.map((field) => [field, readRunField(run, field) ?? null]));
  const { texts, form, set } = useFieldForm(before, 'access');
  const save = () => {
    const after = readRun(texts);
    if (!after) {
      problem.value = 'A distance is a number, 0 or more.';
      return;
    }
    openForm.value = null;
    const changes: Changes = changesBetween(before, after);
    confirmItem(changes);
  };
  const join = () => {
    openForm.value = null;
    const addFeet = reviewed.value.runs.find((one) => one.n === run.n - 1)?.end?.at ?? 0;
    void decide({ action: 'join-run', subject: run.subject, addFeet }, 'Joined to the run before.');
  };
  return (
    <form
      ref={form}
      class="fields"
      aria-label={`Run ${run.n}`}
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <label class="field wide">
        <span>Access</span>
        <input
          name="access"
          autocomplete="off"
          value={texts.access}
          placeholder="not said"
          onInput={(e) => set('access')(e.currentTarget.value)}
        />
      </label>
      <Choice
        name="direction"
        title="Direction"
        value={texts.direction ?? ''}
        choices={directions}
        onChange={set('direction')}
      />
      <Choice
        name="endReason"
        title="Ends at"
        value={texts.endReason ?? ''}
        choices={endReasons}
        onChange={set('endReason')}
      />
      <Distance name="endAt" title="End distance" value={texts.endAt ?? ''} onChange={set('endAt')} />
      <Distance
        name="counterStart"
        title="Counter at the access"
        value={texts.counterStart ?? ''}
        onChange={set('counterStart')}
      />
      <p class="wide hint">What the counter read at the access is taken off every distance of the run.</p>
      <FormDeeds save="Save and go on" />
      {run.n > 1 && (
        <button type="button" class="wide" onClick={join}>
          No new run: it goes on from run {run.n - 1}
        </button>
      )}
    </form>
  );
}

function readRun(texts: Readonly<Record<string, string>>): Record<string, PlainValue> | null {
  const number = (text: string | undefined) => (text?.trim() ? Number(text.replace(',', '.')) : null);
  const endAt = number(texts.endAt);
  const counterStart = number(texts.counterStart) ?? 0;
  if (Number.isNaN(endAt) || Number.isNaN(counterStart) || (endAt ?? 0) < 0) return null;
  return {
    access: texts.access?.trim() || null,
    direction: texts.direction || null,
    // The order matters: the counter's start moves the end as it was, then the end is set.
    endReason: texts.endReason || null,
    endAt: texts.endReason ? endAt : null,
    counterStart,
  };
}

function Choice(props: {
  name: string;
  title: string;
  value: string;
  choices: readonly string[];
  onChange: (value: string) => void;
}) {
  return (
    <label class="field">
      <span>{props.title}</span>
      <select name={props.name} value={props.value} onChange={(event) => props.onChange(event.currentTarget.value)}>
        <option value="">not said</option>
        {props.choices.map((choice) => (
          <option key={choice} value={choice}>
            {asText(choice).replaceAll('-', ' ')}
          </option>
        ))}
      </select>
    </label>
  );
}

export function Distance(props: { name: string; title: string; value: string; onChange: (value: string) => void }) {
  return (
    <label class="field">
      <span>{props.title}</span>
      <span class="with-unit">
        <input
          name={props.name}
          inputMode="decimal"
          autocomplete="off"
          value={props.value}
          placeholder="not said"
          onInput={(event) => props.onChange(event.currentTarget.value)}
        />
        <span class="unit">{unit.value}</span>
      </span>
    </label>
  );
}
