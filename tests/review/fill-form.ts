/// <reference lib="dom" />
/** Filling the form of a finding by keyboard. */

import { fieldLetters } from '../../src/5-review/page/field-letters.ts';
import type { GoldObservation } from '../../src/score/gold.ts';
import { choicesOfField, enoughOf } from './fewest-letters.ts';
import { type Field, fields, wanted } from './gold-pairs.ts';
import type { Hands } from './hands.ts';

/** Goes to a field by Tab or by its letter, and enters a value: digits, or letters until the list shows the choice. */
export async function fill({ page, press, type }: Hands, field: Field, value: string | number | null): Promise<void> {
  const steps = await page.evaluate((name) => {
    const inputs = [...document.querySelectorAll<HTMLElement>('form.fields [name]')];
    return (
      inputs.findIndex((one) => one.getAttribute('name') === name) -
      inputs.indexOf(document.activeElement as HTMLElement)
    );
  }, field);
  const isInList = await page.evaluate(() => document.activeElement instanceof HTMLSelectElement);
  const letter = fieldLetters[field];
  if (steps === 1) await press('Tab');
  else if (steps !== 0) await press(isInList ? `Alt+${letter}` : letter!);
  const choices = choicesOfField(field);
  if (!choices) return value === null ? press('Delete') : type(String(value));
  for (const one of enoughOf(choices, value)) {
    const shown = await page.evaluate(() => (document.activeElement as HTMLSelectElement).value);
    if (shown === String(value ?? '')) return;
    await type(one);
  }
}

/** Makes the form of a new finding say what the gold says, and saves it. */
export async function fillNew(hands: Hands, g: GoldObservation): Promise<void> {
  const { page, press } = hands;
  await page.waitForSelector('form[aria-label="The new finding"]');
  const shownKind = await page.inputValue('form.fields [name=kind]');
  if (shownKind !== g.kind) await fill(hands, 'kind', g.kind);
  const texts = await page.$$eval('form.fields [name]', (inputs) =>
    inputs.map((input) => [(input as HTMLInputElement).name, (input as HTMLInputElement).value] as const),
  );
  const shown = new Map<string, string>(texts);
  if (shown.has('run') && shown.get('run') !== String(g.run)) await fill(hands, 'run', g.run);
  for (const field of fields) {
    const value = wanted(g, field);
    if (!isSameText(shown.get(field) ?? '', value)) await fill(hands, field, value);
  }
  await press('Enter');
  await page.waitForSelector('form.fields', { state: 'detached' });
}

export function isSameText(text: string, value: string | number | null): boolean {
  return typeof value === 'number' && text !== ''
    ? Math.abs(Number(text) - value) <= 0.25
    : text === String(value ?? '');
}
