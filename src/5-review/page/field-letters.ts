/** The letter that goes straight to a field of the form: one that stands in its title, where it is underlined. */
import { attributeTitles } from '../../../shared/vocabulary/attribute-titles.ts';

export const fieldTitles: Readonly<Record<string, string>> = {
  kind: 'What',
  run: 'Run',
  ...Object.fromEntries(Object.entries(attributeTitles).map(([field, { title }]) => [field, title])),
};

export const fieldLetters: Readonly<Record<string, string>> = {
  kind: 'w',
  at: 'd',
  to: 't',
  status: 's',
  position: 'p',
  clock: 'c',
  degree: 'g',
  percent: 'h',
  inches: 'z',
  material: 'm',
  diameterIn: 'i',
  fromMaterial: 'f',
  toMaterial: 'o',
  serves: 'v',
  angleDeg: 'a',
  run: 'r',
};

/** Takes a key in a form: goes to the field of that letter. A list takes letters for itself, so there it needs Alt. */
export function goToLetter(event: KeyboardEvent, form: HTMLFormElement | null): void {
  if (event.ctrlKey || event.metaKey || !event.code.startsWith('Key')) return;
  if (event.target instanceof HTMLSelectElement && !event.altKey) return;
  const letter = event.code.slice('Key'.length).toLowerCase();
  const field = Object.entries(fieldLetters).find(([, one]) => one === letter)?.[0];
  const input = form?.querySelector<HTMLElement>(`[name="${field}"]`);
  if (!input) return;
  event.preventDefault();
  input.focus();
  if (input instanceof HTMLInputElement) input.select();
}
