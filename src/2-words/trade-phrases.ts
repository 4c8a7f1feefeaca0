/** The phrases that the beam favours, drawn from the vocabulary; written nowhere else. */
import { everydayWords } from '../../shared/vocabulary/hearing.ts';
import { kinds } from '../../shared/vocabulary/kinds/index.ts';
import { materials } from '../../shared/vocabulary/materials.ts';
import { services } from '../../shared/vocabulary/services.ts';

/** Names as they are printed: abbreviations in capitals. */
export function tradePhrases(): string[] {
  const titles = new Map(materials.map((material) => [material.name, material.title] as const));
  const phrases = new Set<string>();
  for (const entry of [...kinds, ...materials, ...services]) {
    for (const notation of entry.words) for (const text of expand(notation)) add(text);
  }
  for (const title of titles.values()) add(title);
  return [...phrases];

  function add(text: string): void {
    const words = text.split(' ').filter(Boolean);
    if (words.length === 0 || words.length > 4 || words.every((word) => everydayWords.has(word))) return;
    phrases.add(words.map((word) => printed(word, titles)).join(' '));
  }
}

/** "pvc" is printed "PVC": a word that is a material's name and has a title in capitals. */
function printed(word: string, titles: ReadonlyMap<string, string>): string {
  const title = titles.get(word as never);
  if (title && title === title.toUpperCase()) return title;
  return /^(sdr|vcp|abs|cipp|hdpe)$/.test(word) ? word.toUpperCase() : word;
}

/** All phrases of the notation of `words` ("a|b", "word?"); those with "*" or a list in them are no fixed phrase. */
export function expand(notation: string): string[] {
  if (/[*<^$]/.test(notation)) return [];
  let texts = [''];
  for (const slot of notation.toLowerCase().split(/\s+/)) {
    const isOptional = slot.endsWith('?');
    const choices = (isOptional ? slot.slice(0, -1) : slot).split('|');
    texts = texts.flatMap((text) => [...(isOptional ? [text] : []), ...choices.map((choice) => `${text} ${choice}`)]);
  }
  return texts.map((text) => text.trim());
}
