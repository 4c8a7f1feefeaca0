import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Changes, PlainValue } from '../../../shared/schemas/decision.ts';
import { attributeNames } from '../../../shared/vocabulary/attributes.ts';
import { asText, type FieldTexts, fieldsFor, valueFrom } from './field-inputs.tsx';

/** Fields held as text while they are typed, and read back as changes. */
export function useFieldForm(values: Readonly<Record<string, PlainValue>>, focusOn: string | null) {
  const [atFirst] = useState<FieldTexts>(() =>
    Object.fromEntries(Object.entries(values).map(([field, value]) => [field, asText(value)])),
  );
  const [texts, setTexts] = useState(atFirst);
  const shown = fieldsFor(texts.kind ?? '', atFirst);
  // Another kind may have no place for what was filled: that is left out, and said so.
  const leftOut = attributeNames.filter((name) => !shown.includes(name) && (texts[name] ?? '') !== '');
  const form = useRef<HTMLFormElement>(null);
  // Before the next key comes: what is typed right after the form was asked for must land in it.
  useLayoutEffect(() => {
    const wanted = focusOn && form.current?.querySelector<HTMLElement>(`[name="${focusOn}"]`);
    const target = wanted || form.current?.querySelector<HTMLElement>('input, select');
    target?.focus();
    if (target instanceof HTMLInputElement) target.select();
    form.current?.scrollIntoView({ block: 'nearest' });
  }, [focusOn]);
  return {
    texts,
    form,
    shown,
    leftOut,
    set: (field: string) => (text: string) => setTexts((before) => ({ ...before, [field]: text })),
    /** Every field as a value, or null when one cannot be read. */
    read(): Record<string, PlainValue> | null {
      const entries = Object.entries(texts).map(([field, text]) => {
        const isLeftOut = (leftOut as readonly string[]).includes(field);
        return [field, isLeftOut ? null : valueFrom(field, text)] as const;
      });
      const bad = entries.find(([, value]) => value === undefined);
      if (bad) {
        form.current?.querySelector<HTMLElement>(`[name="${bad[0]}"]`)?.focus();
        return null;
      }
      return Object.fromEntries(entries) as Record<string, PlainValue>;
    },
  };
}

/** What differs between the values before and after. */
export function changesBetween(
  before: Readonly<Record<string, PlainValue>>,
  after: Readonly<Record<string, PlainValue>>,
): Changes {
  const changed = Object.entries(after).filter(([field, now]) => before[field] !== now);
  return Object.fromEntries(changed.map(([field, now]) => [field, { was: before[field] ?? null, now }]));
}
