/** The fewest letters a person has to type to get at something: a choice of a list, a stretch of talk in the search. */
import { attributeTitles } from '../../shared/vocabulary/attribute-titles.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import type { Stretch } from '../../src/5-review/mark-transcript.ts';
import type { Field } from './gold-pairs.ts';

export function choicesOfField(field: Field): { value: string; title: string }[] | null {
  if (field === 'kind') return kinds.map(({ name, title }) => ({ value: name, title }));
  if (field === 'run') return Array.from({ length: 9 }, (_, n) => ({ value: String(n + 1), title: String(n + 1) }));
  const choices = attributeTitles[field].choices;
  return choices && [{ value: '', title: 'not said' }, ...choices];
}

/** Those after which a list has only the wanted choice left, or has it first. */
export function enoughOf(choices: readonly { value: string; title: string }[], value: string | number | null): string {
  const title = choices.find((choice) => choice.value === String(value ?? ''))!.title.toLowerCase();
  for (let length = 1; length < title.length; length++) {
    const start = title.slice(0, length);
    if (choices.filter((choice) => choice.title.toLowerCase().startsWith(start)).length === 1) return start;
  }
  return title;
}

export function fewestLetters(stretches: readonly Stretch[], wantedStretch: Stretch): string {
  const text = wantedStretch.text.toLowerCase();
  for (let length = 2; length < text.length; length++) {
    for (let from = 0; from + length <= text.length; from++) {
      const part = text.slice(from, from + length);
      if (!/^[a-z0-9 ]+$/.test(part) || part.trim() !== part) continue;
      const found = stretches.filter((one) => one.text.toLowerCase().includes(part));
      if (found.length === 1) return part;
    }
  }
  return text;
}
