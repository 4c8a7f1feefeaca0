/**
 * A list of spoken phrases, written as running text: semicolons or line ends part them. Word lists are read far more often than they
 * are edited, and one phrase a line makes a list nobody can see whole. A group of words that many phrases share is written once
 * and filled in: `${parts} missing`.
 */
export function spoken(text: TemplateStringsArray, ...groups: readonly string[]): readonly string[] {
  return text.raw
    .map((piece, index) => piece + (groups[index] ?? ''))
    .join('')
    .split(/[;\n]/)
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== '');
}
