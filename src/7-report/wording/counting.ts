/** Counting and listing: number words, singular and plural, "a, b and c". */
import type { Kind } from '../../../shared/vocabulary/kind.ts';
import { kinds } from '../../../shared/vocabulary/kinds/index.ts';

const numberWords = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "three", "12". */
export function count(n: number): string {
  return numberWords[n] ?? String(n);
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a, b and c". */
export function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** `plural(1, 'run', 'runs')` is "one run". */
export function plural(n: number, one: string, many: string): string {
  return `${count(n)} ${n === 1 ? one : many}`;
}

export function kindNamed(name: string): Kind {
  return kinds.find((kind) => kind.name === name)!;
}

/** The name inside a sentence: "cracked pipe", but "ABS" keeps its capitals. */
export function lowerTitle(kind: Kind): string {
  return lower(kind.title);
}

function lower(text: string): string {
  return /^[A-Z]{2}/.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}

/** Grease, debris, roots: what is not counted by pieces has one word for one and for many. */
function isMass(kind: Kind): boolean {
  return lower(kind.title) === lower(kind.plural);
}

/** "a belly", "roots", "an open joint". */
export function oneOf(kind: Kind): string {
  const name = lowerTitle(kind);
  if (isMass(kind)) return name;
  return `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${name}`;
}

/** "a belly", "three cracks", "roots in two places". */
export function several(kind: Kind, n: number): string {
  if (n === 1) return oneOf(kind);
  return isMass(kind) ? `${lowerTitle(kind)} in ${count(n)} places` : `${count(n)} ${lower(kind.plural)}`;
}
