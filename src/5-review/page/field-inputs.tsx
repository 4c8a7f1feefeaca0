import type { PlainValue } from '../../../shared/schemas/decision.ts';
import { attributeTitles, type Choice } from '../../../shared/vocabulary/attribute-titles.ts';
import { attributeNames } from '../../../shared/vocabulary/attributes.ts';
import { kinds } from '../../../shared/vocabulary/kinds/index.ts';
import { FieldTitle } from './field-title.tsx';
import { reviewed, unit } from './inspection-state.ts';

/** The settable fields as text, the way inputs hold them; '' means that nothing was said. */
export type FieldTexts = Record<string, string>;

type AttributeField = keyof typeof attributeTitles;

/** Which fields the form shows for a kind: those the kind takes; before a kind is chosen, and for the kind the form began with, also what was filled then. */
export function fieldsFor(kind: string, atFirst: FieldTexts): AttributeField[] {
  const takes: readonly string[] = kinds.find((candidate) => candidate.name === kind)?.takes ?? [];
  const wasFilled = (name: AttributeField) => kind === (atFirst.kind ?? '') && (atFirst[name] ?? '') !== '';
  const rest = attributeNames.filter((name) => takes.includes(name) || wasFilled(name));
  return ['at', ...rest.filter((name) => name === 'to'), 'status', ...rest.filter((name) => name !== 'to')];
}

export function asText(value: PlainValue | undefined): string {
  return value === null || value === undefined ? '' : String(value);
}

/** Reads a text back as a value; undefined when it is no such value. A comma counts as a decimal point. */
export function valueFrom(field: string, text: string): PlainValue | undefined {
  const trimmed = text.trim();
  if (field === 'kind') return trimmed === '' ? undefined : trimmed;
  if (field === 'run') return Number(trimmed) || undefined;
  const about = attributeTitles[field as AttributeField];
  if (trimmed === '') return field === 'status' ? undefined : null;
  if (!about || about.choices) return trimmed;
  const number = Number(trimmed.replace(',', '.'));
  const isIn = Number.isFinite(number) && number >= (about.min ?? -Infinity) && number <= (about.max ?? Infinity);
  return isIn ? number : undefined;
}

const kindChoices: Choice[] = kinds.map(({ name, title }) => ({ value: name, title }));
const groups = [
  { group: 'fitting', title: 'Pipe and fittings' },
  { group: 'defect', title: 'Defects' },
  { group: 'limit', title: 'Limits of the inspection' },
] as const;

export function KindInput({ value, onChange }: { value: string; onChange: (value: string) => void }) {
  return (
    <label class="field wide">
      <span>
        <FieldTitle field="kind" />
      </span>
      <select name="kind" value={value} required onChange={(event) => onChange(event.currentTarget.value)}>
        {value === '' && <option value="">Choose…</option>}
        {groups.map(({ group, title }) => (
          <optgroup key={group} label={title}>
            {kindChoices
              .filter((choice) => kinds.find(({ name }) => name === choice.value)?.group === group)
              .map((choice) => (
                <option key={choice.value} value={choice.value}>
                  {choice.title}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}

export function RunInput({ value, onChange }: { value: string; onChange: (value: string) => void }) {
  if (reviewed.value.runs.length < 2) return null;
  return (
    <label class="field">
      <span>
        <FieldTitle field="run" />
      </span>
      <select name="run" value={value} onChange={(event) => onChange(event.currentTarget.value)}>
        {reviewed.value.runs.map((run) => (
          <option key={run.n} value={String(run.n)}>
            {run.n}
            {run.access ? `, ${run.access}` : ''}
          </option>
        ))}
      </select>
    </label>
  );
}

export function AttributeInput({
  field,
  value,
  onChange,
}: {
  field: AttributeField;
  value: string;
  onChange: (value: string) => void;
}) {
  const { unit: unitOf, choices } = attributeTitles[field];
  const shownUnit = unitOf === 'distance' ? unit.value : unitOf;
  const isBad = valueFrom(field, value) === undefined;
  return (
    <div class={`field${isBad ? ' bad' : ''}`}>
      <label for={`field-${field}`}>
        <FieldTitle field={field} />
      </label>
      {choices ? (
        <select
          id={`field-${field}`}
          name={field}
          value={value}
          onChange={(event) => onChange(event.currentTarget.value)}
        >
          {field !== 'status' && <option value="">not said</option>}
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.title}
            </option>
          ))}
        </select>
      ) : (
        <span class="with-unit">
          <input
            id={`field-${field}`}
            name={field}
            inputMode="decimal"
            autocomplete="off"
            value={value}
            placeholder="not said"
            aria-invalid={isBad}
            onInput={(event) => onChange(event.currentTarget.value)}
          />
          {shownUnit && <span class="unit">{shownUnit}</span>}
        </span>
      )}
    </div>
  );
}
